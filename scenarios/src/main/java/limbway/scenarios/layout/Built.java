package limbway.scenarios.layout;

import java.util.Optional;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.scenarios.entry.SupportEntry;

/** A declared support with its place in space. */
sealed interface Built {

    /** A pole, trunk, beam or rope. */
    record Member(SupportEntry entry, Support support, Optional<Crown> crown) implements Built {}

    /** A deck. */
    record Deck(SupportEntry entry, Platform platform) implements Built {}

    /** What was declared. */
    SupportEntry entry();
}
