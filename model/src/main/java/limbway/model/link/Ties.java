package limbway.model.link;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.enclosure.SupportScale;
import limbway.model.energy.Elasticities;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;
import limbway.model.strength.BearingLoad;
import limbway.model.strength.Strengths;

/**
 * The places of an enclosure to which something can be tied: poles and trunks at round heights, beams along their length,
 * and the corners and sides of rigid decks.
 *
 * <p>Each place is computed from the very words that a scenario would use, so that a line that is pasted there puts the link
 * where it was judged.
 */
final class Ties {

    /** Rope is tied so far in from the edge of a deck, as a share of the way from its middle; assumption. */
    private static final double INWARDS = 0.9;

    private static final int DECIMALS = 2;

    private final Enclosure enclosure;
    private final LinkLimits limits;
    private final double heaviestKg;
    private final BearingLoad loads = new BearingLoad(Strengths.standard(), Elasticities.standard());
    private final List<Tie> found = new ArrayList<>();
    private int tooWeak;

    private Ties(Enclosure enclosure, LinkLimits limits, double heaviestKg) {
        this.enclosure = enclosure;
        this.limits = limits;
        this.heaviestKg = heaviestKg;
    }

    static Ties of(Enclosure enclosure, LinkLimits limits, double heaviestKg) {
        Ties ties = new Ties(enclosure, limits, heaviestKg);
        for (Support support : enclosure.supports()) {
            if (ties.mayCarry(support.kind())) {
                ties.along(support);
            }
        }
        for (Platform platform : enclosure.platforms()) {
            if (platform.kind() == PlatformKind.DECK) {
                ties.round(platform);
            }
        }
        return ties;
    }

    List<Tie> found() {
        return List.copyOf(found);
    }

    /** Number of supports and decks that are known not to bear the heaviest animal. */
    int tooWeak() {
        return tooWeak;
    }

    private boolean mayCarry(SupportKind kind) {
        return switch (kind) {
            case POLE, TRUNK, BEAM -> true;
            case BRANCH, ROPE -> limits.onRopes();
            case LADDER -> false;
        };
    }

    private void along(Support support) {
        if (loads.of(support).heaviestKg() < heaviestKg) {
            tooWeak++;
            return;
        }
        SupportScale scale = new SupportScale(support, enclosure.ground().terrain());
        if (support.kind().isUpright()) {
            upright(scale);
            return;
        }
        double lengthM = support.axis().lengthM();
        for (int i = 0; i * limits.spacingM() <= lengthM; i++) {
            double alongM = rounded(i * limits.spacingM());
            found.add(new Tie(support.id(), support.id() + " at " + text(alongM), scale.at(alongM)));
        }
    }

    private void upright(SupportScale scale) {
        Support pole = scale.support();
        double highestM = pole.axis().end().zM() - scale.groundM();
        for (int i = 0; i * limits.spacingM() < highestM; i++) {
            double heightM = rounded(i * limits.spacingM());
            if (scale.levelM(heightM) >= pole.axis().start().zM() && heightM < highestM) {
                found.add(new Tie(pole.id(), pole.id() + " at " + text(heightM), scale.at(heightM)));
            }
        }
        found.add(new Tie(pole.id(), pole.id() + " top", pole.axis().end()));
    }

    private void round(Platform deck) {
        if (deck.bearsKg().orElse(Double.POSITIVE_INFINITY) < heaviestKg) {
            tooWeak++;
            return;
        }
        List<Corner> corners = deck.outline().corners();
        Point middle = deck.centre();
        for (int i = 0; i < corners.size(); i++) {
            Point corner = corners.get(i).atHeight(deck.zM());
            Point next = corners.get((i + 1) % corners.size()).atHeight(deck.zM());
            offset(deck, middle, corner.minus(middle).times(INWARDS));
            offset(deck, middle, corner.plus(next).times(1.0 / 2).minus(middle).times(INWARDS));
        }
    }

    private void offset(Platform deck, Point middle, Point away) {
        double eastM = rounded(away.xM());
        double northM = rounded(away.yM());
        Point at = middle.plus(new Point(eastM, northM, 0));
        if (deck.outline().covers(at.xM(), at.yM())) {
            found.add(new Tie(deck.id(), deck.id() + " at [" + text(eastM) + ", " + text(northM) + "]", at));
        }
    }

    private static double rounded(double metres) {
        return BigDecimal.valueOf(metres)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .doubleValue();
    }

    private static String text(double metres) {
        return BigDecimal.valueOf(metres).stripTrailingZeros().toPlainString();
    }
}
