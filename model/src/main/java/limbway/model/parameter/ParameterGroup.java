package limbway.model.parameter;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * A record of numbers, each of them a parameter: says what they are, makes the record from its defaults and changes it by
 * the names of its parameters.
 *
 * @param <R> the record; its components are {@code double}, {@code int} (rounded) or {@code boolean} (true from 0.5)
 */
public final class ParameterGroup<R extends Record> {

    private final Class<R> type;
    private final List<Parameter> defaults;

    private ParameterGroup(Class<R> type, List<Parameter> defaults) {
        this.type = type;
        this.defaults = defaults;
    }

    /**
     * The parameters of a record.
     *
     * @param type the record; its components are {@code double}, {@code int} (rounded) or {@code boolean} (true from 0.5)
     * @param defaults one parameter for each component, in their order, with the default as its value
     * @param <R> the record
     * @return the group
     * @throws IllegalArgumentException if the number of parameters is not that of the components
     */
    public static <R extends Record> ParameterGroup<R> of(Class<R> type, Parameter... defaults) {
        int components = type.getRecordComponents().length;
        if (components != defaults.length) {
            throw new IllegalArgumentException("parameters of " + type.getSimpleName() + ": " + defaults.length
                    + ", allowed " + components + ", one for each component");
        }
        return new ParameterGroup<>(type, List.of(defaults));
    }

    /**
     * The record with every number at its default.
     *
     * @return the record
     */
    public R standard() {
        return make(defaults.stream().mapToDouble(Parameter::value).toArray());
    }

    /**
     * The record with some of its numbers changed.
     *
     * @param settings the record to start from
     * @param values new values by the names of parameters; names of other groups are passed over
     * @return a changed copy
     */
    public R with(R settings, Map<String, Double> values) {
        double[] numbers = numbers(settings);
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = values.getOrDefault(defaults.get(i).name(), numbers[i]);
        }
        return make(numbers);
    }

    /**
     * The numbers of a record as parameters.
     *
     * @param settings the record
     * @return one parameter for each component, in their order, with the value in use
     */
    public List<Parameter> of(R settings) {
        double[] numbers = numbers(settings);
        List<Parameter> used = new ArrayList<>();
        for (int i = 0; i < numbers.length; i++) {
            used.add(defaults.get(i).withValue(numbers[i]));
        }
        return List.copyOf(used);
    }

    private double[] numbers(R settings) {
        RecordComponent[] components = type.getRecordComponents();
        double[] numbers = new double[components.length];
        try {
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = number(components[i].getAccessor().invoke(settings));
            }
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot read " + type, e);
        }
        return numbers;
    }

    private R make(double[] numbers) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        Object[] values = new Object[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            values[i] = value(types[i], numbers[i]);
        }
        try {
            Constructor<R> constructor = type.getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException("cannot make " + type, e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " needs a public constructor of " + numbers.length + " numbers", e);
        }
    }

    private static double number(Object value) {
        return value instanceof Boolean yes ? (yes ? 1 : 0) : ((Number) value).doubleValue();
    }

    private static Object value(Class<?> type, double number) {
        if (type == int.class) {
            return (int) Math.round(number);
        }
        if (type == boolean.class) {
            return number >= 0.5;
        }
        return number;
    }
}
