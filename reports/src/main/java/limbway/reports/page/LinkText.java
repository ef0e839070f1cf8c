package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.alteration.FreeNames;
import limbway.model.link.Candidate;
import limbway.model.link.Candidates;
import limbway.model.link.Limit;
import limbway.reports.chart.DataTable;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.reports.words.Likelihood;
import limbway.sim.experiment.link.Fragile;
import limbway.sim.experiment.link.FreshCheck;
import limbway.sim.experiment.link.LivedDifference;
import limbway.sim.experiment.link.Proposal;
import limbway.sim.experiment.statistics.Interval;

/** A search for links in words, the same on the terminal and on the page. */
public final class LinkText {

    private static final double POINTS = 100;

    private LinkText() {}

    /**
     * What was looked at.
     *
     * @param report what was found
     * @return one sentence
     */
    public static String looked(LinkReport report) {
        Candidates all = report.found().candidates();
        return number(all.all().size()) + " of " + number(all.pairs())
                + " pairs of places keep within the limits; each was "
                + "priced for the " + Figures.decimals(report.found().tripsPerDay(), 0) + " trips of a day"
                + (report.found().sets() > 0
                        ? ", and " + number(report.found().sets())
                                + " sets of several that gain more together were compiled"
                        : "")
                + ".";
    }

    /**
     * What each limit took away.
     *
     * @param candidates what was looked at
     * @return a clause
     */
    public static String refused(Candidates candidates) {
        List<String> parts = new ArrayList<>();
        for (Map.Entry<Limit, Integer> entry : candidates.refused().entrySet()) {
            if (entry.getValue() > 0) {
                parts.add(number(entry.getValue()) + " " + entry.getKey().words());
            }
        }
        if (candidates.tooWeak() > 0) {
            parts.add(number(candidates.tooWeak()) + " supports or decks that do not bear the heaviest animal");
        }
        return parts.isEmpty() ? "nothing" : String.join(", ", parts);
    }

    /**
     * A proposal as a sentence. Of one that was checked under fresh chance it tells that, and not what made it come first.
     *
     * @param proposal some links and what they do
     * @return one sentence
     */
    public static String sentence(Proposal proposal) {
        List<String> links = proposal.links().stream().map(LinkText::link).toList();
        boolean one = links.size() == 1;
        String what = capital(String.join(" together with ", links));
        if (proposal.lived().isEmpty()) {
            return what + (one ? " is" : " are") + " expected to raise the off-ground share of today's trips by "
                    + points(proposal.expected().offGroundShare()) + " points; about "
                    + Figures.decimals(proposal.expected().flippedTripsPerDay(), 1)
                    + " trips a day leave the ground. It was not lived with.";
        }
        LivedDifference told = told(proposal).orElseThrow();
        return what
                + told.offGround()
                        .map(gain -> moves(one, gain))
                        .orElse((one ? " has" : " have") + " no off-ground share to tell, because nobody travels")
                + trips(told);
    }

    /** What is told of a proposal that was lived with: the check under fresh chance, if it has a share to tell. */
    private static Optional<LivedDifference> told(Proposal proposal) {
        return proposal.fresh()
                .map(FreshCheck::difference)
                .filter(again -> again.offGround().isPresent())
                .or(proposal::lived);
    }

    private static String moves(boolean one, Interval gain) {
        if (isUnsure(gain)) {
            return (one ? " changes" : " change") + " the off-ground share by no more than chance may: "
                    + IntervalText.points(gain.mean(), gain.lo(), gain.hi()) + " points";
        }
        boolean up = gain.mean() > 0;
        return (up ? one ? " raises" : " raise" : one ? " lowers" : " lower") + " the off-ground share by "
                + interval(gain, up ? 1 : -1) + " points";
    }

    private static boolean isUnsure(Interval found) {
        return found.lo().isPresent()
                && found.lo().getAsDouble() <= 0
                && found.hi().getAsDouble() >= 0;
    }

    /** Trips that leave the ground or go to it; where they go another way than the share of the metres, why that may be. */
    private static String trips(LivedDifference told) {
        Interval fewer = told.fewerGroundTrips();
        String many = Figures.decimals(Math.abs(fewer.mean()), 0);
        if (many.equals("0")) {
            return "; as many trips a day touch the ground as before.";
        }
        if (isUnsure(fewer)) {
            return "; how many trips a day touch the ground differs by no more than chance may.";
        }
        boolean one = many.equals("1");
        boolean leave = fewer.mean() > 0;
        String words = leave
                ? many + (one ? " trip a day leaves" : " trips a day leave") + " the ground"
                : many + (one ? " more trip a day touches" : " more trips a day touch") + " the ground";
        boolean contrary = told.offGround()
                .filter(gain -> !isUnsure(gain))
                .filter(gain -> gain.mean() > 0 != leave)
                .isPresent();
        return contrary
                ? ", although " + words + ": the share goes by metres of travel, not by trips."
                : "; " + words + ".";
    }

    /**
     * Whether a gain that the search found held up under fresh chance.
     *
     * @param proposal a proposal
     * @return one sentence, or empty where it was not checked
     */
    public static String heldUp(Proposal proposal) {
        if (proposal.fresh().isEmpty()) {
            return "";
        }
        FreshCheck fresh = proposal.fresh().get();
        String searched = proposal.lived()
                .flatMap(LivedDifference::offGround)
                .map(found -> "; in the search it gave " + IntervalText.points(found.mean(), found.lo(), found.hi())
                        + " points.")
                .orElse(".");
        if (fresh.difference().offGround().isEmpty()) {
            return "It did not hold up on fresh chance: nobody travels there" + searched;
        }
        return (proposal.heldUp() ? "It held up on fresh chance" : "It did not hold up on fresh chance") + " ("
                + adjusted(fresh) + ")" + searched;
    }

    private static String adjusted(FreshCheck fresh) {
        return fresh.checked() == 1
                ? Likelihood.p(fresh.pHolm())
                : "Holm-adjusted for the " + fresh.checked() + " checked: " + Likelihood.p(fresh.pHolm());
    }

    private static String link(Candidate link) {
        return Figures.one(link.kind().word()) + " of " + Figures.path(link.lengthM()) + " from "
                + link.from().words() + " to " + link.to().words();
    }

    /**
     * The lines to paste below {@code changes} of a variant.
     *
     * @param report what was found
     * @param proposal a proposal
     * @return one line for each link
     */
    public static List<String> lines(LinkReport report, Proposal proposal) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < proposal.links().size(); i++) {
            lines.add(proposal.links().get(i).scenarioLine(FreeNames.ofLink(report.enclosure(), i)));
        }
        return lines;
    }

    /**
     * What may fail, as a sentence.
     *
     * @param one a support and what is lost with it
     * @return one sentence
     */
    public static String sentence(Fragile one) {
        String with = one.fall().with().isEmpty()
                ? ""
                : ", and with it " + String.join(", ", one.fall().with()) + ",";
        String lost = one.fall().lost().isEmpty()
                ? ""
                : "; " + String.join(", ", one.fall().lost())
                        + (one.fall().lost().size() == 1 ? " is" : " are") + " then used from the ground";
        String much = one.lived()
                .map(lived -> lived.offGround()
                        .map(gain -> moves(true, gain))
                        .orElse(" leaves no off-ground share to tell, because nobody travels"))
                .orElse(" is expected to cost " + points(-one.expected().offGroundShare())
                        + " points of the off-ground share of today's trips");
        return "If " + one.fall().cause() + " fails" + with + (with.isEmpty() ? ", that" : " that") + much + lost + ".";
    }

    /**
     * All proposals as a table.
     *
     * @param proposals best first
     * @return one row for each
     */
    public static DataTable table(List<Proposal> proposals) {
        List<List<String>> rows = new ArrayList<>();
        for (Proposal proposal : proposals) {
            List<String> ends = proposal.links().stream()
                    .map(link -> link.from().words() + " to " + link.to().words())
                    .toList();
            double lengthM =
                    proposal.links().stream().mapToDouble(Candidate::lengthM).sum();
            rows.add(List.of(
                    String.join(" and ", ends),
                    proposal.fresh().map(LinkText::verdict).orElse("not checked"),
                    proposal.lived().map(LinkText::points).orElse("not tried"),
                    signed(proposal.expected().offGroundShare()),
                    Figures.path(lengthM),
                    proposal.lived()
                            .map(lived -> trips(lived.fewerGroundTrips().mean()))
                            .orElse("not tried"),
                    trips(proposal.expected().flippedTripsPerDay())));
        }
        return new DataTable(
                List.of(
                        "link",
                        "points on fresh chance",
                        "points when lived with in the search",
                        "expected points",
                        "length",
                        "trips a day that leave the ground in the search",
                        "expected trips a day"),
                rows);
    }

    private static String trips(double fewer) {
        return Figures.decimals(fewer, 1).replace('-', '\u2212');
    }

    private static String verdict(FreshCheck fresh) {
        return points(fresh.difference()) + (fresh.heldUp() ? ": held up" : ": did not hold up");
    }

    /**
     * What may fail as a table.
     *
     * @param fragile worst first
     * @return one row for each
     */
    public static DataTable falls(List<Fragile> fragile) {
        List<List<String>> rows = new ArrayList<>();
        for (Fragile one : fragile) {
            rows.add(List.of(
                    one.fall().cause(),
                    one.fall().with().isEmpty()
                            ? "nothing"
                            : String.join(", ", one.fall().with()),
                    one.fall().lost().isEmpty()
                            ? "none"
                            : String.join(", ", one.fall().lost()),
                    signed(one.expected().offGroundShare()),
                    one.lived().map(LinkText::points).orElse("not tried")));
        }
        return new DataTable(
                List.of(
                        "if this fails",
                        "falls with it",
                        "places lost",
                        "expected points",
                        "points when lived without"),
                rows);
    }

    private static String points(LivedDifference difference) {
        return difference
                .offGround()
                .map(gain -> IntervalText.points(gain.mean(), gain.lo(), gain.hi()))
                .orElse("nobody travels");
    }

    private static String signed(double share) {
        return IntervalText.points(share, OptionalDouble.empty(), OptionalDouble.empty())
                .split(" ", 2)[0];
    }

    private static String interval(Interval gain, int sign) {
        String mean = points(sign * gain.mean());
        if (gain.lo().isEmpty()) {
            return mean + " (one repetition: no interval)";
        }
        double lo = sign > 0 ? gain.lo().getAsDouble() : -gain.hi().getAsDouble();
        double hi = sign > 0 ? gain.hi().getAsDouble() : -gain.lo().getAsDouble();
        return mean + " (" + points(lo) + " to " + points(hi) + ")";
    }

    private static String points(double share) {
        return Figures.decimals(POINTS * share, 1);
    }

    private static String number(int count) {
        return Figures.count(count);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
