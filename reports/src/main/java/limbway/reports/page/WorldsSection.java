package limbway.reports.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.Picture;
import limbway.reports.chart.WorldsChart;
import limbway.reports.data.WorldsTables;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.words.Decimals;
import limbway.reports.words.Figures;
import limbway.sim.experiment.worlds.InputEffect;
import limbway.sim.experiment.worlds.PairFound;
import limbway.sim.experiment.worlds.Reversal;
import limbway.sim.experiment.worlds.TotalEffect;
import limbway.sim.experiment.worlds.WorldsFound;

/** Plausible worlds as a part of a comparison. */
public final class WorldsSection {

    /** Where the section can be jumped to, and the name of the entry for other programs. */
    public static final String ID = "worlds";

    private static final int MOST_ROWS = 10;
    private static final int MOST_PICTURES = 6;

    private final WorldsFound found;
    private final List<DesignCriterion> criteria;
    private final WorldsText text;

    private WorldsSection(WorldsFound found, List<DesignCriterion> criteria) {
        this.found = found;
        this.criteria = criteria;
        this.text = new WorldsText(found, criteria);
    }

    /**
     * Tells what plausible worlds say.
     *
     * @param found what was found
     * @param criteria what the layouts are compared by, in the same order
     * @param answer what other programs read
     * @return lines, pictures, tables and files
     */
    public static Supplement of(WorldsFound found, List<DesignCriterion> criteria, Map<String, Object> answer) {
        WorldsSection section = new WorldsSection(found, criteria);
        return new Supplement(
                ID,
                "Does it hold whatever is assumed? Plausible worlds",
                section.text.sentences(),
                section.pictures(),
                section.tables(),
                answer,
                WorldsTables.of(found));
    }

    private List<Picture> pictures() {
        List<Picture> pictures = new ArrayList<>();
        for (PairFound pair : found.pairs()) {
            if (pair.criterion() == 0 && pictures.size() < MOST_PICTURES) {
                pictures.add(WorldsChart.of(
                        "worlds-" + (pictures.size() + 1),
                        "What turns the difference: " + text.pairName(pair),
                        found,
                        pair,
                        criteria.get(0).isShare(),
                        effects(pair)));
            }
        }
        return pictures;
    }

    private Map<String, DataTable> tables() {
        Map<String, DataTable> tables = new LinkedHashMap<>();
        tables.put("Who has more, over all plausible worlds", shares());
        for (PairFound pair : found.pairs()) {
            if (pair.criterion() == 0) {
                tables.put("The numbers that explain most of the spread, " + text.pairName(pair), effects(pair));
            }
        }
        if (!found.totals().isEmpty()) {
            tables.put(
                    "What the strongest numbers do together, "
                            + text.pairName(found.pairs().get(0)),
                    totals());
        }
        return tables;
    }

    private DataTable shares() {
        List<List<String>> rows = new ArrayList<>();
        for (PairFound pair : found.pairs()) {
            DesignCriterion criterion = criteria.get(pair.criterion());
            rows.add(List.of(
                    text.pairName(pair),
                    criterion.words(),
                    Figures.percent(pair.share().share()) + " ("
                            + Figures.percent(pair.share().lo()) + " to "
                            + Figures.percent(pair.share().hi()) + ")",
                    pair.more() + " / " + pair.less() + " / " + pair.equal(),
                    WorldsText.amount(criterion, pair.quantiles().get(2)),
                    WorldsText.amount(criterion, pair.quantiles().get(0)) + " to "
                            + WorldsText.amount(criterion, pair.quantiles().get(4)),
                    pair.chanceShare().isPresent()
                            ? Figures.percent(pair.chanceShare().getAsDouble())
                            : "unknown"));
        }
        return new DataTable(
                List.of(
                        "layouts",
                        "measure",
                        "worlds in which the first has more",
                        "more / less / equal",
                        "middle difference",
                        "nine of ten worlds",
                        "chance in the spread"),
                rows);
    }

    private DataTable effects(PairFound pair) {
        DesignCriterion criterion = criteria.get(pair.criterion());
        List<List<String>> rows = new ArrayList<>();
        for (InputEffect effect : pair.effects().stream().limit(MOST_ROWS).toList()) {
            rows.add(List.of(
                    WorldsText.meaning(effect.input()),
                    WorldsText.range(effect.input()),
                    WorldsText.value(
                            effect.input().parameter(),
                            effect.input().parameter().value()),
                    Decimals.fixed(effect.index().index(), 3) + (effect.index().isAboveFloor() ? "" : " (by accident)"),
                    WorldsText.amount(criterion, effect.whereLow()),
                    WorldsText.amount(criterion, effect.whereHigh()),
                    reversal(pair, effect),
                    effect.input().parameter().name()));
        }
        return new DataTable(
                List.of(
                        "what is not known",
                        "range",
                        "assumed",
                        "explains of the spread",
                        "difference where it is low",
                        "difference where it is high",
                        "reversal",
                        "name"),
                rows);
    }

    private static String reversal(PairFound pair, InputEffect effect) {
        return pair.reversals().stream()
                .filter(reversal -> reversal.input().equals(effect.input()))
                .findFirst()
                .map(WorldsSection::reversal)
                .orElse("not looked for");
    }

    private static String reversal(Reversal reversal) {
        return reversal.turn()
                .map(turn -> (turn.above() ? "above " : "below ")
                        + WorldsText.value(reversal.input().parameter(), turn.value())
                        + (turn.confirmed().isPresent() ? "" : ", not confirmed"))
                .orElse("none");
    }

    private DataTable totals() {
        List<List<String>> rows = new ArrayList<>();
        for (TotalEffect effect : found.totals()) {
            rows.add(List.of(
                    WorldsText.meaning(effect.input()),
                    Decimals.fixed(effect.first(), 3),
                    Decimals.fixed(effect.total(), 3) + " ± " + Decimals.fixed(effect.totalError(), 3),
                    Integer.toString(effect.points()),
                    effect.input().parameter().name()));
        }
        return new DataTable(
                List.of("what is not known", "explains by itself", "and with others", "points", "name"), rows);
    }
}
