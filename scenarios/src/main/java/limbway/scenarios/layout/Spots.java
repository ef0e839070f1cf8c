package limbway.scenarios.layout;

import java.util.Optional;

import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportScale;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Terrain;
import limbway.scenarios.entry.PlaceWords.Along;
import limbway.scenarios.entry.PlaceWords.Offset;
import limbway.scenarios.entry.PlaceWords.OnNamed;
import limbway.scenarios.entry.PlaceWords.Share;
import limbway.scenarios.entry.PlaceWords.Whole;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Finds spots on supports and decks, such as {@code mast-1 at 6.5} or {@code rope-1 middle}. */
final class Spots {

    /** How far a number may lie beyond an end through rounding [m]. */
    private static final double ROUNDING_M = 1e-6;

    private final Terrain terrain;
    private final Problems problems;

    Spots(Terrain terrain, Problems problems) {
        this.terrain = terrain;
        this.problems = problems;
    }

    /** The spot in space, or empty after a problem. */
    Optional<Located> on(Built carrier, OnNamed words, String what) {
        Optional<Point> point = carrier instanceof Built.Deck deck
                ? onDeck(deck, words, what)
                : onMember(((Built.Member) carrier), words, what);
        return point.map(p -> new Located(p, words.id()));
    }

    private Optional<Point> onDeck(Built.Deck deck, OnNamed words, String what) {
        Platform platform = deck.platform();
        Point middle = platform.centre();
        if (words.spot() instanceof Whole) {
            return Optional.of(middle);
        }
        if (!(words.spot() instanceof Offset offset)) {
            problems.add(Problem.at(words.place(), what + " does not say a spot on a platform")
                    .found(deck.entry().what())
                    .allowed("its name alone for the middle, or \"" + words.id()
                            + " at [0.5, -0.3]\", in quotation marks"));
            return Optional.empty();
        }
        Point point = middle.plus(new Point(offset.eastM(), offset.northM(), 0));
        if (!platform.outline().covers(point.xM(), point.yM())) {
            problems.add(Problem.at(
                            words.place(), what + " lies beside " + deck.entry().what())
                    .found(Wording.number(offset.eastM()) + " m east and " + Wording.number(offset.northM())
                            + " m north of its middle")
                    .mend("stay within its edge"));
            return Optional.empty();
        }
        return Optional.of(point);
    }

    private Optional<Point> onMember(Built.Member member, OnNamed words, String what) {
        Support support = member.support();
        boolean upright = support.kind().isUpright();
        if (words.spot() instanceof Along along) {
            return upright
                    ? atHeight(member, along.alongM(), words, what)
                    : atLength(member, along.alongM(), words, what);
        }
        if (words.spot() instanceof Share share) {
            Polyline axis = support.axis();
            return Optional.of(share.share() == 1 ? axis.end() : axis.atLength(share.share() * axis.lengthM()));
        }
        problems.add(Problem.at(
                        words.place(),
                        what + " does not say where on " + member.entry().what())
                .allowed(
                        upright
                                ? "a height above the ground, or top"
                                : "a distance from its start, middle, or a percentage")
                .mend("for example: " + words.id() + (upright ? " at 3.5" : " at 50 %")));
        return Optional.empty();
    }

    private Optional<Point> atHeight(Built.Member member, double heightM, OnNamed words, String what) {
        Point foot = member.support().axis().start();
        Point top = member.support().axis().end();
        SupportScale scale = new SupportScale(member.support(), terrain);
        double groundM = scale.groundM();
        double zM = scale.levelM(heightM);
        if (zM < foot.zM() - ROUNDING_M || zM > top.zM() + ROUNDING_M) {
            String side = zM > top.zM() ? " is above the top of " : " is below the foot of ";
            problems.add(Problem.at(words.place(), what + side + member.entry().what())
                    .found(Wording.measure(heightM, "m"))
                    .allowed(Wording.measure(foot.zM() - groundM, "m") + " to "
                            + Wording.measure(top.zM() - groundM, "m") + ", declared at "
                            + member.entry().place())
                    .mend("put it lower, or make " + words.id() + " higher"));
            return Optional.empty();
        }
        return Optional.of(scale.at(heightM));
    }

    private Optional<Point> atLength(Built.Member member, double alongM, OnNamed words, String what) {
        double lengthM = member.support().axis().lengthM();
        if (alongM > lengthM + ROUNDING_M) {
            problems.add(Problem.at(
                            words.place(),
                            what + " is beyond the end of " + member.entry().what())
                    .found(Wording.measure(alongM, "m"))
                    .allowed("0 m to " + Wording.measure(lengthM, "m") + " from its start, declared at "
                            + member.entry().place())
                    .mend("write a shorter distance, or a percentage"));
            return Optional.empty();
        }
        return Optional.of(new SupportScale(member.support(), terrain).at(alongM));
    }
}
