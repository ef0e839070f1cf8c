package limbway.reports.lesson;

import java.util.List;
import java.util.Optional;

import limbway.model.explain.flip.PriceTurn;
import limbway.model.shade.ShadeYear;
import limbway.reports.measure.Audit;
import limbway.reports.measure.Measures;
import limbway.reports.measure.NeedsAlone;
import limbway.sim.habitat.Habitat;

/**
 * What a lesson is made from.
 *
 * @param layouts what came out of the layouts that were lived in, the one that is taught first
 * @param alone the layout that is taught with needs and energy alone
 * @param audit what can be said against it
 * @param shade its rest platforms through a year; empty where fewer than two stand there
 * @param trip the trip; empty where no two places are joined
 * @param isWished whether somebody chose the trip
 * @param changes changes that were made, to choose between
 * @param turns assumed costs on which the way of the trip hangs
 */
public record LessonSource(
        List<Measures> layouts,
        NeedsAlone alone,
        Audit audit,
        Optional<ShadeYear> shade,
        Optional<TaughtTrip> trip,
        boolean isWished,
        List<TriedChange> changes,
        List<PriceTurn> turns) {

    /** Keeps copies of the lists. */
    public LessonSource {
        layouts = List.copyOf(layouts);
        changes = List.copyOf(changes);
        turns = List.copyOf(turns);
    }

    /** What came out of the layout that is taught. */
    Measures taught() {
        return layouts.get(0);
    }

    /** The layout that is taught. */
    Habitat habitat() {
        return taught().outcome().habitat();
    }
}
