package limbway.sim.animal;

import java.util.List;
import java.util.stream.Stream;

import limbway.model.parameter.Parameter;

/**
 * Every number that decides how an animal spends its day.
 *
 * @param needs how hunger, thirst and fatigue grow and how much they press
 * @param choice how places are weighed against each other
 * @param intake how food and water are taken
 * @param rest how long an animal rests
 * @param heat how heat troubles it
 * @param night when it leaves its nest and when it goes back
 */
public record DaySettings(
        NeedSettings needs,
        ChoiceSettings choice,
        IntakeSettings intake,
        RestSettings rest,
        HeatNeedSettings heat,
        NightSettings night) {

    /**
     * The defaults.
     *
     * @return settings with every parameter at its default
     */
    public static DaySettings standard() {
        return new DaySettings(
                NeedSettings.standard(),
                ChoiceSettings.standard(),
                IntakeSettings.standard(),
                RestSettings.standard(),
                HeatNeedSettings.standard(),
                NightSettings.standard());
    }

    /**
     * The settings as parameters.
     *
     * @return one parameter for each number, group after group
     */
    public List<Parameter> parameters() {
        return Stream.of(
                        needs.parameters(),
                        choice.parameters(),
                        intake.parameters(),
                        rest.parameters(),
                        heat.parameters(),
                        night.parameters())
                .flatMap(List::stream)
                .toList();
    }

    /**
     * The same settings with other numbers of choice.
     *
     * @param other the group to use instead
     * @return a copy
     */
    public DaySettings with(ChoiceSettings other) {
        return new DaySettings(needs, other, intake, rest, heat, night);
    }
}
