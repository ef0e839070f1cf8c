package limbway.sim.experiment.worlds;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import limbway.model.body.Body;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.model.study.Animal;
import limbway.model.study.Climate;
import limbway.model.study.Study;
import limbway.model.weather.ShiftedWeather;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.screening.Factor;

/**
 * What may be otherwise than the scenario says: every number of the model that is not published and has a range, the mass of
 * each body, and how warm it is.
 */
public final class PlausibleInputs {

    /** Name of the input that makes the air warmer or colder. */
    public static final String WARMER = "weather.warmer";

    /** By how much a body may be lighter or heavier than stated, as a share of its mass. Assumption. */
    public static final double MASS_SHARE = 0.15;

    /** By how much all temperatures of the air may be off [K]. Assumption. */
    public static final double WARMER_K = 3;

    private static final String MASS = "mass.";
    private static final String MASS_SOURCE =
            "flanged males of the wild: 74 +/- 9.8 kg, a spread of 13 % (Rayadin and Spehar 2015, doi 10.1002/ajpa.22709); "
                    + "taken for every body";
    private static final String WARMER_SOURCE = "a cool or a warm spell; no measurement was looked up";

    private PlausibleInputs() {}

    /**
     * The inputs of a study.
     *
     * @param study who lives there and under what weather
     * @param assumptions the numbers of a run
     * @param withWorth false to leave out what is 0 where every term of worth is
     * @return doubtful numbers, then masses in the order of the bodies, then the weather where the scenario has one
     */
    public static List<Factor> of(Study study, Assumptions assumptions, boolean withWorth) {
        List<Factor> all = new ArrayList<>(Factor.doubtful(assumptions));
        all.removeIf(factor -> !withWorth && isWorth(factor, assumptions));
        for (Body body : study.bodies()) {
            all.add(new Factor(new Parameter(
                    massOf(body),
                    "mass of the " + body.name() + " over what is stated",
                    "1",
                    1,
                    1 - MASS_SHARE,
                    1 + MASS_SHARE,
                    Standing.ASSUMPTION,
                    MASS_SOURCE)));
        }
        if (study.climate().isPresent()) {
            all.add(new Factor(new Parameter(
                    WARMER,
                    "air warmer than stated",
                    "K",
                    0,
                    -WARMER_K,
                    WARMER_K,
                    Standing.ASSUMPTION,
                    WARMER_SOURCE)));
        }
        return List.copyOf(all);
    }

    /** Whether it makes no difference where every term of worth is 0. */
    private static boolean isWorth(Factor factor, Assumptions assumptions) {
        String name = factor.parameter().name();
        return without(assumptions, name, factor.parameter().low())
                .equals(without(assumptions, name, factor.parameter().high()));
    }

    private static Assumptions without(Assumptions assumptions, String name, double value) {
        return assumptions.with(Map.of(name, value)).withoutWorth();
    }

    static boolean isOwn(String name) {
        return name.startsWith(MASS) || name.equals(WARMER);
    }

    static List<Animal> animals(Study study, Map<String, Double> values) {
        return study.animals().stream()
                .map(animal -> new Animal(
                        animal.name(),
                        animal.body().timesMass(values.getOrDefault(massOf(animal.body()), 1.0)),
                        animal.rank(),
                        animal.follows(),
                        animal.group()))
                .toList();
    }

    static java.util.Optional<Climate> climate(Study study, Map<String, Double> values) {
        double warmerK = values.getOrDefault(WARMER, 0.0);
        return warmerK == 0
                ? study.climate()
                : study.climate()
                        .map(stated -> new Climate(new ShiftedWeather(stated.weather(), warmerK), stated.sunlitWayW()));
    }

    private static String massOf(Body body) {
        return MASS + body.name();
    }
}
