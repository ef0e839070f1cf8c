package limbway.model.study;

import java.util.List;

/**
 * What people do in and around an enclosure, the same every day.
 *
 * @param feedings what the keepers put out, in order of time
 * @param bedding bedding put out, in order of time
 * @param closures when places are shut or cleaned
 * @param staff when staff stand where animals see them
 * @param viewpoints from where visitors look in
 */
public record Keeping(
        List<Feeding> feedings,
        List<BeddingRound> bedding,
        List<Closure> closures,
        List<Attendance> staff,
        List<Viewpoint> viewpoints) {

    /** Keeps copies of the lists. */
    public Keeping {
        feedings = List.copyOf(feedings);
        bedding = List.copyOf(bedding);
        closures = List.copyOf(closures);
        staff = List.copyOf(staff);
        viewpoints = List.copyOf(viewpoints);
    }

    /**
     * Food and nothing else.
     *
     * @param feedings what the keepers put out, in order of time
     * @return nobody looks in, nothing is shut
     */
    public static Keeping feeding(List<Feeding> feedings) {
        return new Keeping(feedings, List.of(), List.of(), List.of(), List.of());
    }
}
