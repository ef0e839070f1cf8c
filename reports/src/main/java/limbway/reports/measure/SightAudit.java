package limbway.reports.measure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import limbway.model.enclosure.Resource;
import limbway.model.graph.RouteGraph;
import limbway.model.study.Viewpoint;
import limbway.sim.habitat.Habitat;
import limbway.sim.habitat.Passages;
import limbway.sim.habitat.PlaceCharacter;

/**
 * Whether showing the animals costs them cover, and whether all can withdraw. A place counts by the best of the holds from
 * which it is used.
 *
 * @source a retreat area is asked for by the US National Research Council (1998), The Psychological Well-Being of Nonhuman
 *     Primates, pp. 105-106; room in it for every animal at once is common practice, no source; what counts as cover is an
 *     assumption
 */
final class SightAudit {

    /** Share of the sky that must be hidden for a place to count as covered. Assumption. */
    private static final double COVERED = 0.3;

    private final Habitat habitat;
    private final List<Viewpoint> viewpoints;
    private final List<Finding> findings = new ArrayList<>();
    private final List<String> covered = new ArrayList<>();
    private final List<String> hidden = new ArrayList<>();
    private final List<String> open = new ArrayList<>();
    private final Set<String> seenFrom = new LinkedHashSet<>();
    private boolean hasBoth;
    private int room;

    SightAudit(Habitat habitat) {
        this.habitat = habitat;
        viewpoints = habitat.layout().keeping().viewpoints();
    }

    List<Finding> findings() {
        if (viewpoints.isEmpty()) {
            return List.of();
        }
        List<Resource> resources = habitat.graph().resources();
        for (int number = 0; number < resources.size(); number++) {
            if (resources.get(number).kind().isRestingPlace() && habitat.graph().useHolds(number).length > 0) {
                look(number, resources.get(number));
            }
        }
        boolean anyRest = !covered.isEmpty() || !hidden.isEmpty() || !open.isEmpty();
        if (anyRest && !hasBoth) {
            coverOrSight();
        }
        if (anyRest && room < habitat.animals().size()) {
            tooFewHidden();
        }
        return findings;
    }

    private void look(int number, Resource place) {
        RouteGraph graph = habitat.graph();
        PlaceCharacter places = habitat.character();
        Passages any = habitat.passages(habitat.bodies().get(0)).get(0);
        boolean isCovered = false;
        boolean isHidden = false;
        for (int hold : graph.useHolds(number)) {
            int start = any.startAt(hold);
            boolean coveredHere = places.cover(start) >= COVERED;
            boolean hiddenHere = true;
            for (int viewpoint = 0; viewpoint < viewpoints.size(); viewpoint++) {
                if (places.isSeen(viewpoint, start)) {
                    hiddenHere = false;
                    seenFrom.add(viewpoints.get(viewpoint).id());
                }
            }
            isCovered |= coveredHere;
            isHidden |= hiddenHere;
            hasBoth |= coveredHere && hiddenHere;
        }
        if (isCovered) {
            covered.add(place.id());
        }
        if (isHidden) {
            hidden.add(place.id());
            room += place.stalls();
        }
        if (!isCovered && !isHidden) {
            open.add(place.id());
        }
    }

    private void coverOrSight() {
        String from = names(new ArrayList<>(seenFrom));
        String text;
        if (covered.isEmpty() && hidden.isEmpty()) {
            text = "every place to rest (" + names(open) + ") lies in the open and is seen by visitors from " + from;
        } else if (covered.isEmpty()) {
            text = "every place to rest that visitors cannot see (" + names(hidden) + ") lies in the open";
        } else if (hidden.isEmpty()) {
            text = "every place to rest under cover (" + names(covered) + ") is seen by visitors, who look in from "
                    + from;
        } else {
            text = "every place to rest under cover (" + names(covered) + ") is seen by visitors, who look in from "
                    + from
                    + ", and every one out of their sight (" + names(hidden)
                    + ") lies in the open: an animal must choose between cover and being out of sight";
        }
        List<String> all = new ArrayList<>(new LinkedHashSet<>(join()));
        findings.add(Finding.alone(
                "cover-or-sight",
                Weight.CAUTION,
                names(all),
                covered.size(),
                "places",
                text,
                "screen a covered place from " + everyViewpoint() + ", or put a roof over one that they cannot see"));
    }

    private String everyViewpoint() {
        return names(viewpoints.stream().map(Viewpoint::id).toList());
    }

    private List<String> join() {
        List<String> all = new ArrayList<>(covered);
        all.addAll(hidden);
        all.addAll(open);
        return all;
    }

    private void tooFewHidden() {
        int animals = habitat.animals().size();
        String which = hidden.isEmpty() ? "" : " (" + names(hidden) + ")";
        String text = "places to rest that visitors at " + everyViewpoint() + " cannot see" + which
                + " have room for " + room + " of " + animals + (animals == 1 ? " animal" : " animals")
                + ": housing guidance asks for a retreat (National Research Council 1998), and room for all at once is common "
                + "practice (no source)";
        findings.add(Finding.alone(
                "few-out-of-sight",
                room == 0 ? Weight.CAUTION : Weight.NOTE,
                names(hidden),
                room,
                "places",
                text,
                "add places to rest behind screens, leaves or walls for " + (animals - room) + " more"));
    }

    private static String names(List<String> places) {
        return String.join(", ", places);
    }
}
