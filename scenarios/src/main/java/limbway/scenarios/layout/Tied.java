package limbway.scenarios.layout;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.enclosure.SupportKind;
import limbway.scenarios.entry.PlaceWords;
import limbway.scenarios.entry.PlaceWords.OnNamed;
import limbway.scenarios.entry.SupportEntry;
import limbway.scenarios.entry.SupportEntry.DeckBySize;
import limbway.scenarios.entry.SupportEntry.Span;

/** Which supports are tied, so that no animal can swing them: something hangs on them by name. */
final class Tied {

    private Tied() {}

    /** Names of the supports that carry others, and of the branches whose tip is tied to something. */
    static Set<String> among(List<SupportEntry> supports) {
        Set<String> tied = new TreeSet<>();
        for (SupportEntry entry : supports) {
            if (entry instanceof Span span) {
                add(span.from(), tied);
                add(span.to(), tied);
                if (span.kind() == SupportKind.BRANCH && span.to() instanceof OnNamed) {
                    tied.add(span.id());
                }
            } else if (entry instanceof DeckBySize deck) {
                add(deck.middle(), tied);
            }
        }
        return tied;
    }

    private static void add(PlaceWords words, Set<String> tied) {
        if (words instanceof OnNamed named) {
            tied.add(named.id());
        }
    }
}
