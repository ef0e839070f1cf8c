package limbway.scenarios.entry;

import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.Material;
import limbway.model.enclosure.SupportKind;
import limbway.scenarios.entry.SupportEntry.Length;
import limbway.scenarios.entry.SupportEntry.Sag;
import limbway.scenarios.entry.SupportEntry.Slack;
import limbway.scenarios.entry.SupportEntry.Span;
import limbway.scenarios.entry.SupportEntry.Stated;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads what goes from one place to another: beams, branches, ropes, ladders. */
final class SpanReader {

    /** Sag of a rope that does not say its own, as a share of its span: assumption, see the format's documentation. */
    private static final double USUAL_SAG_PERCENT = 5;

    /** Thickness of the tip of a branch that does not say its own, as a share of that at its base: assumption. */
    private static final double USUAL_TIP_SHARE = 0.5;

    private final PlaceReader places;

    SpanReader(Problems problems) {
        this.places = new PlaceReader(problems);
    }

    Optional<Span> read(Fields fields, String id, SupportKind kind, Material usual) {
        Optional<PlaceWords> from = fields.read("from", node -> places.anywhere(node, "start of " + fields.what(), 2));
        Optional<PlaceWords> to = fields.read("to", node -> places.anywhere(node, "end of " + fields.what(), 2));
        double diameterM = fields.number(Quantity.DIAMETER);
        double tipDiameterM =
                StatedReader.tipDiameterM(fields, diameterM, kind == SupportKind.BRANCH ? USUAL_TIP_SHARE : 1);
        Slack slack = kind == SupportKind.ROPE ? slack(fields) : new Sag(0);
        Material material = fields.material(usual);
        Stated stated = StatedReader.stated(fields);
        PlaceWords none = PlaceReader.standIn(fields.place());
        return fields.build(() -> new Span(
                id,
                fields.what(),
                fields.place(),
                kind,
                from.orElse(none),
                to.orElse(none),
                diameterM,
                tipDiameterM,
                slack,
                material,
                stated));
    }

    private static Slack slack(Fields fields) {
        OptionalDouble sagPercent = fields.number("sag", Quantity.SAG);
        OptionalDouble lengthM = fields.number("length", Quantity.LENGTH);
        if (fields.find("sag").isPresent() && fields.find("length").isPresent()) {
            fields.fault(Problem.at(
                            fields.find("length").orElseThrow().place(),
                            fields.what() + " says both its sag and its length")
                    .allowed("one of: sag, length")
                    .mend("take one of them out: each follows from the other"));
        }
        return lengthM.isPresent()
                ? new Length(fields.find("length").orElseThrow().place(), lengthM.getAsDouble())
                : new Sag(sagPercent.orElse(USUAL_SAG_PERCENT) / 100);
    }
}
