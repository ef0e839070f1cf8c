package limbway.reports.command;

import java.util.List;
import java.util.OptionalDouble;

import limbway.model.enclosure.Enclosure;
import limbway.model.study.Variant;
import limbway.reports.words.Figures;
import limbway.sim.experiment.placement.CandidatePlace;
import limbway.sim.experiment.placement.CandidatePlaces;
import limbway.sim.experiment.placement.PlacingTask;

/** The candidates before any is left out: neither too few nor too many. Cheap, so it is looked at before anything is compiled. */
final class PlaceSpots {

    private static final double USUAL_SPACING_M = 1;

    /** So many candidates are few enough for one graph. */
    private static final int MOST = 2_000;

    /** The greatest spacing that the command takes [m]. */
    private static final int GREATEST_SUGGESTED_M = 20;

    private PlaceSpots() {}

    static double spacingM(PlaceWish wish) {
        return wish.spacingM().orElse(USUAL_SPACING_M);
    }

    static List<CandidatePlace> of(PlaceWish wish, Variant layout) throws Refusal {
        List<CandidatePlace> all = wish.given().orElseGet(() -> made(wish.task(), layout.enclosure(), spacingM(wish)));
        if (all.isEmpty()) {
            throw nothing(wish);
        }
        if (all.size() > MOST) {
            throw tooMany(wish, layout.enclosure(), all.size());
        }
        if (all.size() == 1) {
            throw Refusal.of(
                    "there is only one candidate, so there is nothing to choose",
                    all.get(0).told(),
                    "two or more",
                    "give more candidates, or write the move into a variant and compare");
        }
        if (all.size() < wish.task().count()) {
            throw Refusal.of(
                    "more places are asked for than there are candidates",
                    wish.task().count() + " places, " + all.size() + " candidates",
                    "at most " + all.size() + " places",
                    "give more candidates, or ask for fewer places");
        }
        return all;
    }

    private static List<CandidatePlace> made(PlacingTask task, Enclosure enclosure, double spacingM) {
        return task.withDeck() ? CandidatePlaces.firm(enclosure, spacingM) : CandidatePlaces.along(enclosure, spacingM);
    }

    private static Refusal nothing(PlaceWish wish) {
        if (wish.given().isPresent()) {
            return Refusal.of(
                    "placing names no candidate that stands in this layout",
                    "no candidates",
                    "two or more",
                    "name candidates that this layout has, or make them with --spacing");
        }
        boolean deck = wish.task().withDeck();
        double spacingM = spacingM(wish);
        return Refusal.of(
                deck
                        ? "there is nothing firm that a deck could stand on"
                        : "there is nothing that a place could be put on",
                (deck ? "no pole, trunk or beam" : "no support and no platform") + " longer than "
                        + Figures.metres(spacingM) + ", the distance of candidates",
                deck ? "poles, trunks or beams" : "supports or platforms",
                "add some to the scenario, lower --spacing, or give candidates under placing");
    }

    private static Refusal tooMany(PlaceWish wish, Enclosure enclosure, int count) {
        OptionalDouble enough = wish.given().isPresent() ? OptionalDouble.empty() : enoughM(wish, enclosure, count);
        return Refusal.of(
                "there are too many candidates",
                Figures.count(count)
                        + (wish.given().isPresent() ? "" : ", one every " + Figures.metres(spacingM(wish))),
                "at most " + Figures.count(MOST),
                enough.isPresent()
                        ? "--spacing " + Figures.decimals(enough.getAsDouble(), 1)
                                + " makes few enough; or give the best under " + "placing in the scenario"
                        : "give the best under placing in the scenario");
    }

    /** The least spacing, to the half metre, with which there are few enough. */
    private static OptionalDouble enoughM(PlaceWish wish, Enclosure enclosure, int count) {
        // their number falls about as the spacing grows on supports, faster on platforms: never slower
        double guessM = 0.5 * Math.floor(2 * spacingM(wish) * Math.sqrt((double) count / MOST));
        for (double spacingM = Math.max(0.5, guessM); spacingM <= GREATEST_SUGGESTED_M; spacingM += 0.5) {
            if (spacingM > spacingM(wish)
                    && made(wish.task(), enclosure, spacingM).size() <= MOST) {
                return OptionalDouble.of(spacingM);
            }
        }
        return OptionalDouble.empty();
    }
}
