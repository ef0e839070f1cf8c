package limbway.reports.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.reports.measure.placement.LivedLayout;
import limbway.reports.measure.placement.PlacedLayout;
import limbway.reports.measure.placement.PlacingAnswer;
import limbway.reports.measure.placement.PlacingCriteria;
import limbway.sim.experiment.statistics.Interval;

/** What came of placing as tables. */
public final class PlaceTables {

    private static final int DECIMALS = 6;

    private PlaceTables() {}

    /**
     * The layouts that were lived in with their measures, and where each place is.
     *
     * @param answer what came out
     * @param animals names of the animals, in the order of the study
     * @return two tables
     */
    public static List<CsvTable> of(PlacingAnswer answer, List<String> animals) {
        return List.of(measures(answer, animals), places(answer));
    }

    private static CsvTable measures(PlacingAnswer answer, List<String> animals) {
        CsvTable table = new CsvTable(
                "placings",
                "one measure of one layout that was lived in; fresh is under chance that the search never met",
                List.of(
                        Field.text("layout", "letter of the layout, A is the best; before is the layout as it stands"),
                        Field.text("chance", "search or fresh"),
                        Field.text("measure", "offground_distance, waiting_at_food_min or travel_kj"),
                        Field.text("animal", "name of the animal; empty for the mean animal"),
                        Field.whole("replications", "repetitions that the mean rests on"),
                        Field.number("mean", "mean [share, minutes, kJ]"),
                        Field.number("lo", "lower end of its 95 % interval"),
                        Field.number("hi", "upper end of its 95 % interval"),
                        Field.yesNo(
                                "on_front",
                                "whether no other is as good in the three measures of the mean animal and better in one"),
                        Field.yesNo(
                                "hardest",
                                "whether this animal spends more on moving here than in any other layout lived in")));
        for (PlacedLayout layout : answer.layouts()) {
            rows(table, layout.letter(), "search", layout.lived(), animals, layout.onFront(), layout.hardestFor());
        }
        rows(table, "before", "search", answer.before(), animals, false, List.of());
        rows(
                table,
                answer.best().letter(),
                "fresh",
                answer.fresh(),
                animals,
                answer.best().onFront(),
                answer.best().hardestFor());
        rows(table, "before", "fresh", answer.freshBefore(), animals, false, List.of());
        return table;
    }

    private static void rows(
            CsvTable table,
            String layout,
            String chance,
            LivedLayout lived,
            List<String> animals,
            boolean onFront,
            List<Integer> hardestFor) {
        for (int criterion = 0; criterion < lived.criteria(); criterion++) {
            Optional<Interval> found = lived.by(criterion);
            int animal = criterion - PlacingCriteria.FIRST_ANIMAL;
            String measure = PlacingCriteria.NAMES.get(animal < 0 ? criterion : PlacingCriteria.ENERGY);
            table.row(
                    layout,
                    chance,
                    measure,
                    animal < 0 ? "" : animals.get(animal),
                    lived.values().size(),
                    CsvTable.number(optional(found.map(Interval::mean)), DECIMALS),
                    CsvTable.number(found.map(Interval::lo).orElse(OptionalDouble.empty()), DECIMALS),
                    CsvTable.number(found.map(Interval::hi).orElse(OptionalDouble.empty()), DECIMALS),
                    onFront,
                    hardestFor.contains(animal));
        }
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static CsvTable places(PlacingAnswer answer) {
        CsvTable table = new CsvTable(
                "places",
                "where a place is in a layout that was lived in",
                List.of(
                        Field.text("layout", "letter of the layout, A is the best"),
                        Field.text("place", "name of the place"),
                        Field.text("at", "where it is, as the scenario says it"),
                        Field.number("x_m", "metres east"),
                        Field.number("y_m", "metres north"),
                        Field.number("z_m", "metres up"),
                        Field.number("expected_offground", "share of travel off the ground expected of the layout")));
        for (PlacedLayout layout : answer.layouts()) {
            List<String> ids = new ArrayList<>(answer.task().ids());
            for (int i = 0; i < ids.size(); i++) {
                var spot = layout.placing().spots().get(i);
                table.row(
                        layout.letter(),
                        ids.get(i),
                        spot.words(),
                        CsvTable.number(spot.at().xM(), 3),
                        CsvTable.number(spot.at().yM(), 3),
                        CsvTable.number(spot.at().zM(), 3),
                        CsvTable.number(layout.expected().offGround(), DECIMALS));
            }
        }
        return table;
    }
}
