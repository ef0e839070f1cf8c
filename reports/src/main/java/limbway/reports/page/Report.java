package limbway.reports.page;

import java.util.List;

import limbway.reports.data.RunInfo;
import limbway.reports.measure.Audit;
import limbway.reports.measure.Measures;
import limbway.reports.measure.NeedsAlone;
import limbway.reports.measure.RouteCards;

/**
 * Everything the report page shows.
 *
 * @param info how the run was made
 * @param measures what came out of the layout in question
 * @param others what came out of the other layouts, in the order of the scenario; may be empty
 * @param alone the layouts with needs and energy alone, that in question first; empty if that is what was asked, and
 *     shorter if the run was stopped early
 * @param leftOut names of layouts that should have been run too, and were not because the run was stopped early
 * @param audit what was found before the run
 * @param cards the trips of the layout in question
 */
public record Report(
        RunInfo info,
        Measures measures,
        List<Measures> others,
        List<NeedsAlone> alone,
        List<String> leftOut,
        Audit audit,
        RouteCards cards) {

    /** Keeps copies of the lists. */
    public Report {
        others = List.copyOf(others);
        alone = List.copyOf(alone);
        leftOut = List.copyOf(leftOut);
    }
}
