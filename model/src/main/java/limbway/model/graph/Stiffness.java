package limbway.model.graph;

import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.Support;
import limbway.model.energy.BeamBending;
import limbway.model.energy.Elasticities;
import limbway.model.energy.Elasticity;
import limbway.model.energy.FlexiblePole;
import limbway.model.energy.SaggingRope;
import limbway.model.geometry.Point;

/**
 * The force for each metre that a piece of support gives way where an animal holds it.
 *
 * <p>Poles, trunks and branches are fixed at their foot, beams and ropes at both ends; a stated stiffness is that of the
 * tip or the middle and grows towards the fixed ends as the formulas say, but no further than half a metre from them: a
 * body holds with several limbs. Ladders and hanging ropes do not give.
 */
final class Stiffness {

    static final double RIGID = Double.POSITIVE_INFINITY;

    /** A rope steeper than this hangs; it swings aside but carries weight without giving. */
    private static final double HANGING_SINE = 0.87;

    /** A body's weight is spread so far along what it holds [m]: an assumption. */
    private static final double SPREAD_M = 0.5;

    private final Elasticities elasticities;

    Stiffness(Elasticities elasticities) {
        this.elasticities = elasticities;
    }

    /** Stiffness at a share of a piece [N/m], above 0. */
    double at(Piece piece, double share) {
        double memberM = piece.course().memberM();
        double spreadM = Math.min(SPREAD_M, memberM / 4);
        double alongM = Math.max(spreadM, piece.course().atM(share));
        double betweenM = Math.min(memberM - spreadM, alongM);
        return switch (piece.stock().kind()) {
            case POLE, TRUNK, BRANCH -> fixedAtFoot(piece, alongM, memberM);
            case BEAM -> betweenEnds(piece, betweenM / memberM, memberM);
            case ROPE -> rope(piece.stock(), betweenM / memberM);
            case LADDER -> RIGID;
        };
    }

    private double fixedAtFoot(Piece piece, double alongM, double memberM) {
        OptionalDouble stated = piece.stock().bearing().stiffnessNPerM();
        Optional<Elasticity> stuff = elasticities.of(piece.stock().material());
        if (stated.isEmpty() && stuff.isEmpty()) {
            return RIGID;
        }
        if (stated.isPresent()) {
            double ratio = memberM / alongM;
            return stated.getAsDouble() * ratio * ratio * ratio;
        }
        return pole(piece, alongM, stuff.orElseThrow()).stiffnessNPerM();
    }

    /** The part of a pole, trunk or branch between its foot and a distance along it. */
    static FlexiblePole pole(Piece piece, double alongM, Elasticity stuff) {
        Support stock = piece.stock();
        return new FlexiblePole(alongM, stock.diameterM(), stock.diameterAtM(alongM), stuff);
    }

    private double betweenEnds(Piece piece, double share, double memberM) {
        OptionalDouble stated = piece.stock().bearing().stiffnessNPerM();
        Optional<Elasticity> stuff = elasticities.of(piece.stock().material());
        double inner = 4 * share * (1 - share);
        if (stated.isEmpty() && stuff.isEmpty()) {
            return RIGID;
        }
        double middle = stated.isPresent()
                ? stated.getAsDouble()
                : BeamBending.restingNPerM(memberM, piece.diameterM(), stuff.orElseThrow());
        return middle / (inner * inner);
    }

    private double rope(Support rope, double share) {
        Point start = rope.axis().start();
        Point end = rope.axis().end();
        double spanM = start.distanceM(end);
        if (Math.abs(end.zM() - start.zM()) > HANGING_SINE * spanM) {
            return RIGID;
        }
        OptionalDouble stated = rope.bearing().stiffnessNPerM();
        if (stated.isPresent()) {
            return stated.getAsDouble() / (4 * share * (1 - share));
        }
        // of a parabola, length = span + 8/3 sag² / span
        double spareM = Math.max(0, rope.axis().lengthM() - spanM);
        double sagM = Math.sqrt(spareM * spanM * 3 / 8);
        return SaggingRope.stiffnessNPerM(spanM, sagM, rope.diameterM(), elasticities.ropeYoungPa(), share);
    }
}
