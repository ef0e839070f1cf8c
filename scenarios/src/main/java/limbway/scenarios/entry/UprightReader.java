package limbway.scenarios.entry;

import java.util.Optional;

import limbway.model.enclosure.Material;
import limbway.model.enclosure.SupportKind;
import limbway.scenarios.entry.PlaceWords.Coordinates;
import limbway.scenarios.entry.SupportEntry.CrownSize;
import limbway.scenarios.entry.SupportEntry.Lean;
import limbway.scenarios.entry.SupportEntry.Stated;
import limbway.scenarios.entry.SupportEntry.Upright;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads poles and trunks. */
final class UprightReader {

    private static final Lean UPRIGHT = new Lean(0, 0);

    private final Problems problems;
    private final PlaceReader places;
    private final Values values;
    private final FoliageReader crowns;

    UprightReader(Problems problems) {
        this.problems = problems;
        this.places = new PlaceReader(problems);
        this.values = new Values(problems);
        this.crowns = new FoliageReader(problems);
    }

    Optional<Upright> read(Fields fields, String id, SupportKind kind, Quantity thickness, Material usual) {
        Optional<Coordinates> foot = fields.read("at", node -> places.coordinates(node, "foot of " + fields.what(), 2));
        double heightM = fields.number(Quantity.HEIGHT);
        double diameterM = fields.number(thickness);
        double tipDiameterM = StatedReader.tipDiameterM(fields, diameterM, 1);
        Material material = fields.material(usual);
        Optional<Lean> lean = fields.read("lean", node -> lean(node, fields));
        Optional<CrownSize> crown = crown(fields, heightM);
        Stated stated = StatedReader.stated(fields);
        return fields.build(() -> new Upright(
                id,
                fields.what(),
                fields.place(),
                kind,
                foot.orElse(PlaceReader.standIn(fields.place())),
                heightM,
                diameterM,
                tipDiameterM,
                material,
                lean.orElse(UPRIGHT),
                crown,
                stated));
    }

    private Optional<Lean> lean(Node node, Fields pole) {
        return values.mapping(node, "lean of " + pole.what()).flatMap(mapping -> {
            Fields fields = Fields.of(mapping, Form.LEAN, problems);
            double fromUprightDeg = fields.number(Quantity.LEAN);
            double towardsDeg = fields.number(Quantity.BEARING);
            return fields.build(() -> new Lean(fromUprightDeg, towardsDeg));
        });
    }

    private Optional<CrownSize> crown(Fields fields, double heightM) {
        Optional<Node> radius = fields.find(Quantity.CROWN_RADIUS.key());
        Optional<Node> base = fields.find(Quantity.CROWN_BASE.key());
        if (radius.isEmpty() && base.isEmpty()) {
            fields.refuse(FoliageReader.KEYS, "where there is no crown");
            return Optional.empty();
        }
        if (radius.isEmpty() || base.isEmpty()) {
            String missing = radius.isEmpty() ? Quantity.CROWN_RADIUS.key() : Quantity.CROWN_BASE.key();
            fields.fault(Problem.at(radius.or(() -> base).get().place(), fields.what() + " has half a crown")
                    .allowed("both crown-radius and crown-base, or none of them")
                    .mend("add " + missing + ": ..."));
            return Optional.empty();
        }
        return Optional.of(crowns.size(fields, heightM));
    }
}
