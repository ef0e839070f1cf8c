package limbway.reports.patterns;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

import limbway.model.enclosure.Support;
import limbway.sim.habitat.Habitat;

/** Thickness of the supports that animals travel on. */
final class SupportsUsed {

    private final Map<String, Double> diameterM = new HashMap<>();

    private SupportsUsed() {}

    /** Mean diameter of what is travelled on, by length; the thicker of two of a kind and span is the stiffer. */
    static Measurement diameterM(Run run, String body) {
        SupportsUsed used = new SupportsUsed();
        Predicate<Piece> along = piece -> piece.travels() && piece.body().equals(body) && used.of(piece) > 0;
        ToDoubleFunction<Piece> length = piece -> piece.habitat().graph().lengthM(piece.move());
        return Shares.weighted(run, along, length, used::of);
    }

    private double of(Piece piece) {
        Habitat habitat = piece.habitat();
        return diameterM.computeIfAbsent(habitat.graph().support(piece.toHold()), id -> find(habitat, id));
    }

    private static double find(Habitat habitat, String id) {
        return habitat.layout().enclosure().supports().stream()
                .filter(support -> support.id().equals(id))
                .mapToDouble(Support::diameterM)
                .findFirst()
                .orElse(0);
    }
}
