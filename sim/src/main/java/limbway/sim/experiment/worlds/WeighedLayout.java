package limbway.sim.experiment.worlds;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.body.Body;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.RouteGraph;
import limbway.model.study.Animal;
import limbway.model.study.Climate;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.sim.experiment.Assumptions;
import limbway.sim.habitat.Habitat;

/**
 * A layout for animals of uncertain mass.
 *
 * <p>Mass decides only over the sways, leaps and drops that get a move: heavier bodies add sways and lose leaps and drops,
 * never the other way. Where the graph of the lightest bodies is that of the heaviest, it is therefore that of all between,
 * and is compiled once; else the layout is compiled anew for every world.
 */
final class WeighedLayout {

    private final Study study;
    private final Variant layout;
    private final Assumptions base;
    private Habitat compiled;
    private Optional<Boolean> graphIsFixed = Optional.empty();

    WeighedLayout(Study study, Variant layout, Assumptions base) {
        this.study = study;
        this.layout = layout;
        this.base = base;
    }

    String name() {
        return layout.name();
    }

    /** The layout made ready under some values of the inputs. */
    Habitat habitat(Map<String, Double> values, Assumptions assumed) {
        List<Animal> animals = PlausibleInputs.animals(study, values);
        Optional<Climate> climate = PlausibleInputs.climate(study, values);
        if (animals.equals(study.animals()) || isGraphFixed()) {
            return asStated().inhabited(animals, climate, assumed.energy(), assumed.sharpness());
        }
        return new Habitat(layout, animals, climate, assumed.energy(), assumed.sharpness());
    }

    private synchronized Habitat asStated() {
        if (compiled == null) {
            compiled = new Habitat(layout, study.animals(), study.climate(), base.energy(), base.sharpness());
        }
        return compiled;
    }

    synchronized boolean isGraphFixed() {
        if (graphIsFixed.isEmpty()) {
            graphIsFixed = Optional.of(
                    areSame(compile(1 - PlausibleInputs.MASS_SHARE), compile(1 + PlausibleInputs.MASS_SHARE)));
        }
        return graphIsFixed.get();
    }

    private RouteGraph compile(double factor) {
        List<Body> bodies =
                study.bodies().stream().map(body -> body.timesMass(factor)).toList();
        return RouteGraph.compile(layout.enclosure(), GraphSettings.forBodies(bodies));
    }

    private static boolean areSame(RouteGraph one, RouteGraph other) {
        boolean same = one.holdCount() == other.holdCount() && one.moveCount() == other.moveCount();
        for (int hold = 0; same && hold < one.holdCount(); hold++) {
            same = one.place(hold).equals(other.place(hold));
        }
        for (int move = 0; same && move < one.moveCount(); move++) {
            same = one.from(move) == other.from(move)
                    && one.to(move) == other.to(move)
                    && one.mode(move) == other.mode(move)
                    && one.lengthM(move) == other.lengthM(move)
                    && one.gapM(move) == other.gapM(move);
        }
        return same;
    }
}
