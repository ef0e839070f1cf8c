package limbway.scenarios.entry;

import java.util.Optional;

import limbway.model.enclosure.Material;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.SupportKind;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Problems;

/** Reads the entries under {@code supports}. */
final class SupportReader {

    private final Problems problems;
    private final UprightReader uprights;
    private final SpanReader spans;
    private final DeckReader decks;

    SupportReader(Problems problems) {
        this.problems = problems;
        this.uprights = new UprightReader(problems);
        this.spans = new SpanReader(problems);
        this.decks = new DeckReader(problems);
    }

    /** Reads one support; {@code form} is one of {@link Form#SUPPORTS}. */
    Optional<? extends SupportEntry> read(MappingNode node, Form form) {
        Fields fields = Fields.of(node, form, problems);
        String id = fields.id();
        return switch (form) {
            case POLE -> uprights.read(fields, id, SupportKind.POLE, Quantity.DIAMETER, Material.TIMBER);
            case TRUNK -> uprights.read(fields, id, SupportKind.TRUNK, Quantity.TRUNK_DIAMETER, Material.BARK);
            case BEAM -> spans.read(fields, id, SupportKind.BEAM, Material.TIMBER);
            case BRANCH -> spans.read(fields, id, SupportKind.BRANCH, Material.BARK);
            case ROPE -> spans.read(fields, id, SupportKind.ROPE, Material.FIBRE_ROPE);
            case LADDER -> spans.read(fields, id, SupportKind.LADDER, Material.TIMBER);
            case PLATFORM -> decks.read(fields, id, PlatformKind.DECK);
            case HAMMOCK -> decks.read(fields, id, PlatformKind.HAMMOCK);
            default -> throw new IllegalArgumentException("form = " + form + ", allowed " + Form.SUPPORTS);
        };
    }
}
