package limbway.reports.page;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.reports.chart.Picture;
import limbway.reports.chart.PictureFormat;
import limbway.reports.data.CsvTable;
import limbway.reports.measure.criterion.Criteria;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.worlds.ByLayout;
import limbway.sim.experiment.worlds.PlausibleWorlds;
import limbway.sim.experiment.worlds.WorldModel;
import limbway.sim.experiment.worlds.WorldProgress;
import limbway.sim.experiment.worlds.WorldSettings;
import limbway.sim.experiment.worlds.WorldsFound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What is said of worlds whose differences are a made-up function of their inputs, so that it can be checked by hand. */
@Tag("derived")
class WorldsSectionTest {

    private static final List<DesignCriterion> CRITERIA = new Criteria()
            .all().stream()
                    .filter(c ->
                            List.of("offground_distance", "waiting_at_food_min").contains(c.name()))
                    .toList();

    private static final List<Factor> INPUTS = List.of(
            factor("energy.clamber-multiplier", "clambering over walking, per level metre", "1", 2, 1, 5),
            factor("idle", "what does nothing; said at length", "min", 30, 10, 60));

    private static Factor factor(String name, String meaning, String unit, double value, double low, double high) {
        return new Factor(new Parameter(name, meaning, unit, value, low, high, Standing.ASSUMPTION, "invented"));
    }

    /** High has more off the ground by 0.1 for each unit of the multiplier below a limit; and waits 3 minutes longer. */
    private static WorldModel model(double limit) {
        return (values, first, count, stop) -> {
            double multiplier = values.getOrDefault("energy.clamber-multiplier", 2.0);
            if (multiplier > 4.9) {
                return new WorldModel.Lived.Refused("too dear");
            }
            double[][][] found = new double[2][count][];
            for (int i = 0; i < count; i++) {
                found[0][i] = new double[] {0.5 + 0.1 * (limit - multiplier), 8};
                found[1][i] = new double[] {0.5, 5};
            }
            return new WorldModel.Lived.Values(new ByLayout(found));
        };
    }

    private static Supplement told(double limit, int totals) {
        WorldsFound found = PlausibleWorlds.run(
                        INPUTS,
                        List.of("high", "low"),
                        CRITERIA.stream().map(DesignCriterion::name).toList(),
                        model(limit),
                        new WorldSettings(200, 2, 3, 4, totals, 1, 2),
                        quiet())
                .orElseThrow();
        return WorldsSection.of(found, CRITERIA, Map.of("worlds", 200));
    }

    private static WorldProgress quiet() {
        return new WorldProgress() {
            @Override
            public void finished(Stage stage, int done, int total) {
                // nobody looks
            }

            @Override
            public boolean wantsStop() {
                return false;
            }
        };
    }

    @Test
    void theShareAndTheReversalAreSaidInPlainWords() {
        List<String> said = told(2.9, 0).sentences();
        // 1 to 5 in 200 strata of 0.02: 5 above 4.9 are refused, 95 of 195 lie below 2.9; low has more in the other 100
        assertEquals(
                "In 200 plausible worlds 2 numbers that are not known differ all together, each over its range: costs, "
                        + "needs, worth of places, masses. 5 of them the model refuses, because their values do not go "
                        + "together; they are left out.",
                said.get(0));
        // Wilson at 100 of 195: middle (100 + 1.92)/(195 + 3.84) = 51.3 %, half sqrt(1.96^2 49.97 %^2...) = 7.0 points
        assertTrue(
                said.get(1)
                        .startsWith(
                                "low has more than high in 51 % (44 to 58 %) of the worlds: share of travel off the "
                                        + "ground, by distance. The difference is +"),
                said.get(1));
        assertTrue(
                said.get(2)
                        .startsWith(
                                "high less low: most of what can be told apart in the spread of the difference comes "
                                        + "from clambering over walking, per level metre (9"),
                said.get(2));
        assertTrue(said.get(2).endsWith("Chance within the worlds makes 0 % of the spread."), said.get(2));
        assertEquals(
                "high less low: The reversal comes where clambering over walking, per level metre is above 2.9, "
                        + "everything else as assumed (assumed is 2, tried were 1 to 5); there low has more; other chance "
                        + "agrees at 2.82 and 2.98. With everything else as assumed there is no reversal within the range "
                        + "of what does nothing (10 to 60 min).",
                said.get(3));
        assertEquals(4, said.size());
    }

    @Test
    void whereOneAlwaysHasMoreThatIsSaid() {
        List<String> said = told(9, 0).sentences();
        assertTrue(
                said.get(1)
                        .startsWith("high has more than low in every one of the 195 worlds (at least 98 % of all such "
                                + "worlds): share of travel off the ground, by distance."),
                said.get(1));
        assertTrue(said.get(3).contains("there is no reversal within the range of clambering"), said.get(3));
    }

    @Test
    void tablesHoldEveryWorldAndEveryInput() {
        Supplement part = told(2.9, 20);
        CsvTable worlds = part.data().get(0);
        assertEquals("worlds", worlds.name());
        assertEquals(1 + 195, worlds.text().lines().count());
        assertTrue(worlds.text().startsWith("world,energy.clamber-multiplier,idle\n1,"), worlds.text());
        CsvTable differences = part.data().get(1);
        assertEquals(1 + 2 * 195, differences.text().lines().count());
        // each difference follows from its world
        String[] world = worlds.text().lines().skip(1).findFirst().orElseThrow().split(",", -1);
        String[] difference =
                differences.text().lines().skip(1).findFirst().orElseThrow().split(",", -1);
        assertEquals("high", difference[1]);
        assertEquals(0.1 * (2.9 - Double.parseDouble(world[1])), Double.parseDouble(difference[4]), 1.1e-6);
        String inputs = part.data().get(2).text();
        assertTrue(inputs.contains("high,low,offground_distance,energy.clamber-multiplier,1,1.0,5.0,2.0,0.9"), inputs);
        assertTrue(inputs.contains(",true,true\n"), inputs);
        assertEquals(3, part.tables().size());
        List<String> waits = part.tables()
                .get("Who has more, over all plausible worlds")
                .rows()
                .get(1);
        assertEquals("195 / 0 / 0", waits.get(3));
        assertEquals("+3 min/day", waits.get(4));
    }

    @Test
    void theChartIsTheSameTwiceAndMarksTheReversal() {
        Picture picture = told(2.9, 0).pictures().get(0);
        String svg = PictureFormat.svg(picture);
        assertEquals(svg, PictureFormat.svg(told(2.9, 0).pictures().get(0)));
        assertTrue(svg.contains(">2.9<"), "the value of the reversal stands below its line");
        assertTrue(svg.contains("high has more") && svg.contains("low has more"));
        assertEquals(1, told(9, 0).pictures().size());
    }
}
