package limbway.scenarios.survey;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import limbway.model.parameter.Parameter;

/** Height and crown of a tree from the diameter of its stem. */
public final class Allometry {

    /** Range of diameters behind the height curve [cm], from memory. */
    private static final double LEAST_CM = 5;

    private static final double MOST_CM = 212;

    private final Map<Coefficient, Double> values;

    private Allometry(Map<Coefficient, Double> values) {
        this.values = values;
    }

    /**
     * An allometry in which some coefficients are replaced.
     *
     * @param replaced values to use instead of the defaults
     * @return the allometry
     */
    public static Allometry with(Map<Coefficient, Double> replaced) {
        Map<Coefficient, Double> values = new EnumMap<>(Coefficient.class);
        for (Coefficient coefficient : Coefficient.values()) {
            values.put(coefficient, coefficient.usual().value());
        }
        values.putAll(replaced);
        return new Allometry(values);
    }

    /**
     * Height of a tree: {@code ln H = a - E + b ln D + c (ln D)^2}.
     *
     * @param diameterM diameter at breast height [m], above 0
     * @return height of the median tree [m]
     * @source Chave et al. 2014, doi 10.1111/gcb.12629, equation 6a (from memory); tropical trees of three continents
     * @validity stems of 5 to 212 cm (from memory), see {@link #covers}; the scatter between trees, some 25 %, is left out
     */
    public double heightM(double diameterM) {
        double lnD = StrictMath.log(100 * diameterM);
        return StrictMath.exp(value(Coefficient.HEIGHT_CONSTANT)
                - value(Coefficient.HEIGHT_STRESS)
                + value(Coefficient.HEIGHT_SLOPE) * lnD
                + value(Coefficient.HEIGHT_CURVE) * lnD * lnD);
    }

    /**
     * Radius of a crown: a power of the diameter.
     *
     * @param diameterM diameter at breast height [m], above 0
     * @return radius [m]
     * @source assumption
     */
    public double crownRadiusM(double diameterM) {
        return value(Coefficient.CROWN_RADIUS_FACTOR)
                * StrictMath.pow(100 * diameterM, value(Coefficient.CROWN_RADIUS_EXPONENT));
    }

    /**
     * Height of the lowest branches: a share of the tree's height.
     *
     * @param heightM height of the tree [m]
     * @return height of the lowest branches [m]
     * @source assumption
     */
    public double crownBaseM(double heightM) {
        return value(Coefficient.CROWN_BASE_SHARE) * heightM;
    }

    /**
     * Whether the height curve was fitted to stems so thick.
     *
     * @param diameterM diameter [m]
     * @return true within the range of the source
     */
    public static boolean covers(double diameterM) {
        return diameterM * 100 >= LEAST_CM && diameterM * 100 <= MOST_CM;
    }

    /**
     * The coefficients in use.
     *
     * @param used which of them took part
     * @return parameters in the order of {@link Coefficient}
     */
    public List<Parameter> parameters(Predicate<Coefficient> used) {
        return values.entrySet().stream()
                .filter(entry -> used.test(entry.getKey()))
                .map(entry -> entry.getKey().usual().withValue(entry.getValue()))
                .toList();
    }

    private double value(Coefficient coefficient) {
        return values.get(coefficient);
    }
}
