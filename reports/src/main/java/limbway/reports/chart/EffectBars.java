package limbway.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import limbway.reports.measure.Movers;
import limbway.reports.words.Decimals;
import limbway.sim.experiment.screening.Effect;
import limbway.sim.experiment.statistics.Interval;

/** Draws the assumptions that move an answer most. */
public final class EffectBars {

    private static final int MOST = 10;
    private static final double POINTS = 100;

    private EffectBars() {}

    /**
     * Mean absolute effects, greatest on top.
     *
     * @param id file name without ending
     * @param title what it shows
     * @param movers the effects
     * @param table the numbers behind it
     * @return the picture
     */
    public static Picture of(String id, String title, Movers movers, DataTable table) {
        List<Bars.Bar> bars = new ArrayList<>();
        for (Effect effect : movers.effects().stream().limit(MOST).toList()) {
            OptionalDouble error = effect.standardError();
            bars.add(new Bars.Bar(
                    effect.factor().parameter().meaning() + ":\u00a0"
                            + Decimals.fixed(POINTS * effect.meanAbsolute(), 1),
                    new Interval(
                            effect.meanAbsolute(),
                            error.isPresent()
                                    ? OptionalDouble.of(Movers.ERRORS * error.getAsDouble())
                                    : OptionalDouble.empty(),
                            effect.n()),
                    movers.isMover(effect) ? Style.OFF_GROUND : Style.GRID));
        }
        return new Picture(
                id,
                title,
                "Bars, one for each assumption, greatest on top, with two standard errors to either side. Dark bars move the "
                        + "answer; light ones do not, or the walks do not tell.",
                Style.WIDTH_PX,
                Bars.heightPx(bars.size()),
                Bars.painter("mean absolute effect [points]", bars, POINTS),
                table);
    }
}
