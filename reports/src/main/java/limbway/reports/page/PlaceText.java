package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.reports.chart.DataTable;
import limbway.reports.measure.placement.LivedLayout;
import limbway.reports.measure.placement.PlacedLayout;
import limbway.reports.measure.placement.PlacingAnswer;
import limbway.reports.measure.placement.PlacingCriteria;
import limbway.reports.words.Effort;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.experiment.placement.CandidatePlace;
import limbway.sim.experiment.placement.PlacingRule;
import limbway.sim.experiment.placement.PlacingTask;
import limbway.sim.experiment.statistics.Interval;

/** What came of placing, in sentences for keepers. */
public final class PlaceText {

    private static final double ON_GROUND_M = 0.05;

    private PlaceText() {}

    /**
     * Which place should be where.
     *
     * @param report what to tell
     * @param layout one of the layouts
     * @return for example {@code moving hatch from the ground at [28, 10] to mast-3 at 5.5 m}
     */
    public static String moves(PlaceReport report, PlacedLayout layout) {
        PlacingTask task = report.answer().task();
        List<String> parts = new ArrayList<>();
        List<String> stay = new ArrayList<>();
        for (int i = 0; i < task.ids().size(); i++) {
            String id = task.ids().get(i);
            if (layout.placing().stays(report.before(), i)) {
                stay.add(id);
                continue;
            }
            String to = told(report, layout.placing().spots().get(i));
            parts.add(task.adds() ? id + " on " + to : id + " from " + from(report, id) + " to " + to);
        }
        return (task.adds() ? "adding " : "moving ")
                + list(parts)
                + (stay.isEmpty() ? "" : ", while " + list(stay) + (stay.size() == 1 ? " stays" : " stay"));
    }

    private static String list(List<String> parts) {
        return parts.size() == 1
                ? parts.get(0)
                : String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1);
    }

    /** Where a candidate is; the height beside a distance along something that is not upright. */
    private static String told(PlaceReport report, CandidatePlace candidate) {
        boolean lying = report.before().enclosure().supports().stream()
                .filter(support -> support.id().equals(candidate.on()))
                .anyMatch(support -> support.kind() != SupportKind.POLE && support.kind() != SupportKind.TRUNK);
        return candidate.told() + (lying ? " (" + Figures.decimals(heightM(report, candidate.at()), 1) + " m up)" : "");
    }

    private static double heightM(PlaceReport report, Point at) {
        return report.before().enclosure().ground().terrain().aboveM(at);
    }

    private static String from(PlaceReport report, String id) {
        Resource now = report.before().enclosure().resources().stream()
                .filter(resource -> resource.id().equals(id))
                .findFirst()
                .orElseThrow();
        Point at = now.at();
        double heightM = heightM(report, at);
        String plan = "[" + Figures.decimals(at.xM(), 2) + ", " + Figures.decimals(at.yM(), 2) + "]";
        if (!now.on().isEmpty()) {
            return now.on() + " at a height of " + Figures.metres(heightM);
        }
        return heightM <= ON_GROUND_M
                ? "the ground at " + plan
                : "a height of " + Figures.metres(heightM) + " at " + plan;
    }

    /**
     * The answer in short.
     *
     * @param report what to tell
     * @return sentences
     */
    public static String sentence(PlaceReport report) {
        PlacingAnswer answer = report.answer();
        PlacedLayout best = answer.best();
        if (!answer.isBetter()) {
            return "The best of " + count(answer.layouts().size(), "layout")
                    + " lived in cannot be told to be better than the layout as it stands. It is "
                    + moves(report, best) + ": " + share(answer.fresh()) + " of the travel is then off the ground, "
                    + share(answer.freshBefore()) + " as it stands.";
        }
        return "Best of " + count(answer.layouts().size(), "layout") + " lived in: " + moves(report, best) + ". Then "
                + share(answer.fresh()) + " of the travel is off the ground; as it stands "
                + share(answer.freshBefore())
                + ".";
    }

    /**
     * Whether it held up under fresh chance.
     *
     * @param report what to tell
     * @return a sentence
     */
    public static String heldUp(PlaceReport report) {
        PlacingAnswer answer = report.answer();
        String gain = answer.gain()
                .map(found -> IntervalText.points(found.mean(), found.lo(), found.hi()))
                .orElse("no travel, no difference");
        return "Under chance that the search never met, in "
                + Figures.count(answer.fresh().values().size())
                + " repetitions of each: " + gain + " points over the layout as it stands"
                + (answer.isBetter() ? "; it held up." : ".");
    }

    /**
     * Which figures are of which chance.
     *
     * @param report what to tell
     * @return a sentence
     */
    public static String chances(PlaceReport report) {
        PlacingAnswer answer = report.answer();
        return "The figures above are of fresh chance; those of the table of layouts are of the chance of the search, in which the "
                + "best was chosen, and so differ a little: as it stands "
                + share(answer.before()) + " there, " + share(answer.freshBefore()) + " under fresh chance.";
    }

    /**
     * How sure the selection is.
     *
     * @param report what to tell
     * @return sentences
     */
    public static String guarantee(PlaceReport report) {
        PlacingAnswer answer = report.answer();
        int layouts = answer.layouts().size();
        String points = Figures.decimals(100 * report.info().indifference(), 1) + " points";
        String sure = Figures.decimals(100 * report.info().probability(), 1) + " %";
        if (layouts == 1) {
            return "Only one layout was lived in, so there was nothing to select.";
        }
        if (answer.selected().reached()) {
            return "If the best of these " + layouts + " leads by " + points
                    + " or more, it is the one chosen with a probability of at least " + sure
                    + ", as far as repetitions are near normal; one that is worse by less may be chosen. "
                    + count(answer.selected().used(), "repetition") + " went into that.";
        }
        int left = answer.selected().left().size();
        String ended = "Not sure to " + sure + ": the budget of "
                + Figures.count(report.info().budget()) + " repetitions ended with " + left
                + " layouts left. For the best to be chosen with that probability if it leads by " + points
                + " or more, ";
        long needed = needed(report);
        return ended
                + (Effort.isAbsurd(needed)
                        ? Effort.repetitions(needed)
                                + " might be needed; ask for less: a greater --indifference or a lower --confidence."
                        : "up to " + Figures.count(answer.selected().atMost())
                                + " repetitions of each of them would do: --budget " + needed + ".");
    }

    /**
     * A budget with which the selection is sure to end.
     *
     * @param report what to tell
     * @return repetitions of all layouts together
     */
    public static long needed(PlaceReport report) {
        var selected = report.answer().selected();
        long more = (long) selected.left().size() * selected.atMost();
        long dropped = 0;
        for (int i = 0; i < selected.replications().size(); i++) {
            dropped += selected.left().contains(i) ? 0 : selected.replications().get(i);
        }
        return dropped + more;
    }

    /**
     * How the candidates came about.
     *
     * @param report what to tell
     * @return sentences
     */
    public static String candidates(PlaceReport report) {
        var info = report.info();
        List<String> out = new ArrayList<>();
        info.out().forEach((rule, count) -> out.add(Figures.count(count) + " by " + words(rule)));
        if (info.unreachable() > 0) {
            out.add(Figures.count(info.unreachable()) + " because not every body gets there and back");
        }
        String made = info.spacingM()
                        .map(spacing -> Figures.count(info.candidates()) + " candidates stand every "
                                + Figures.metres(spacing) + " along supports"
                                + (report.answer().task().withDeck() ? "" : " and on platforms"))
                        .orElse(Figures.count(info.candidates()) + " candidates are given by the scenario")
                + (info.staying() == 0
                        ? ""
                        : ", beside " + count(info.staying(), "place") + " that may stay as "
                                + (info.staying() == 1 ? "it is" : "they are"));
        return made + (out.isEmpty() ? "" : "; left out: " + String.join(", ", out)) + ". "
                + (info.judgedAll()
                        ? "All " + Figures.count(info.judged())
                                + (report.answer().task().count() == 1 ? " of them were" : " combinations were")
                        : Figures.count(info.judged()) + " of too many combinations were")
                + " judged by expected travel, and the best "
                + report.answer().layouts().size() + " lived in."
                + (info.rules().keeperReachM().isEmpty() && !info.rules().hoist()
                        ? " Nobody said how high keepers reach: --keeper-reach or --hoist."
                        : "");
    }

    private static String words(PlacingRule rule) {
        return switch (rule) {
            case KEEPER_REACH -> "the reach of keepers";
            case LOAD -> "load";
            case SHADED -> "sun at feeding hours";
            case HEAT -> "heat at feeding hours";
            case HOT_WIRE -> "hot wire";
            case BARRIER_DISTANCE -> "nearness to barriers";
            case FREE_SPACE -> "lack of room for the deck";
            case WAY_OUT -> "nearness of the deck to a way out";
        };
    }

    /**
     * The layouts that were lived in.
     *
     * @param report what to tell
     * @return one row for each, best first, then the layout as it stands
     */
    public static DataTable table(PlaceReport report) {
        List<String> headers =
                new ArrayList<>(List.of("layout", "off the ground", "places", "expected", "waiting", "moving"));
        headers.addAll(report.animals());
        headers.add("front");
        headers.add("repetitions");
        List<List<String>> rows = new ArrayList<>();
        for (PlacedLayout layout : report.answer().layouts()) {
            List<String> row = new ArrayList<>(List.of(
                    layout.letter() + (layout.kept() ? "" : " (dropped)"),
                    share(layout.lived()),
                    places(report, layout),
                    Figures.percent(layout.expected().offGround())));
            measured(layout.lived(), layout.hardestFor(), row);
            row.add(layout.onFront() ? "yes" : "no");
            row.add(Figures.count(layout.lived().values().size()));
            rows.add(row);
        }
        List<String> before =
                new ArrayList<>(List.of("as it stands", share(report.answer().before()), "", ""));
        measured(report.answer().before(), List.of(), before);
        before.add("");
        before.add(Figures.count(report.answer().before().values().size()));
        rows.add(before);
        return new DataTable(headers, rows);
    }

    private static void measured(LivedLayout lived, List<Integer> hardestFor, List<String> row) {
        row.add(Figures.decimals(lived.mean(PlacingCriteria.WAITING), 1) + " min");
        for (int c = PlacingCriteria.ENERGY; c < lived.criteria(); c++) {
            row.add(Figures.decimals(lived.mean(c), 0) + " kJ"
                    + (hardestFor.contains(c - PlacingCriteria.FIRST_ANIMAL) ? " (most)" : ""));
        }
    }

    /**
     * Where the places are in a layout.
     *
     * @param report what to tell
     * @param layout one of the layouts
     * @return for example {@code hatch: mast-3 at 5.5 m; tray: deck-1}
     */
    public static String places(PlaceReport report, PlacedLayout layout) {
        List<String> parts = new ArrayList<>();
        List<String> ids = report.answer().task().ids();
        for (int i = 0; i < ids.size(); i++) {
            parts.add(ids.get(i) + ": "
                    + (layout.placing().stays(report.before(), i)
                            ? "as it is"
                            : told(report, layout.placing().spots().get(i))));
        }
        return String.join("; ", parts);
    }

    /**
     * The share of travel off the ground.
     *
     * @param lived what was found
     * @return for example {@code 74 % (70 to 78 %)}
     */
    public static String share(LivedLayout lived) {
        Optional<Interval> found = lived.by(PlacingCriteria.OFF_GROUND);
        return found.map(interval -> IntervalText.percent(interval.mean(), interval.lo(), interval.hi()))
                .orElse(IntervalText.percent(0, OptionalDouble.empty(), OptionalDouble.empty()));
    }

    private static String count(int number, String noun) {
        return Figures.count(number) + " " + noun + (number == 1 ? "" : "s");
    }
}
