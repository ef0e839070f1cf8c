package limbway.sim.animal;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import limbway.model.parameter.Parameter;

/**
 * Every number that decides how an animal spends its day.
 *
 * @param needs how hunger, thirst and fatigue grow and how much they press
 * @param choice how places are weighed against each other
 * @param intake how food and water are taken
 * @param memory what it remembers of food
 * @param rest how long an animal rests
 * @param heat how heat troubles it
 * @param night when it leaves its nest and when it goes back
 * @param company how animals contend for a stall
 * @param worth what places are worth beyond needs
 * @param scales over what distances and times that worth grows or fades
 */
public record DaySettings(
        NeedSettings needs,
        ChoiceSettings choice,
        IntakeSettings intake,
        MemorySettings memory,
        RestSettings rest,
        HeatNeedSettings heat,
        NightSettings night,
        CompanySettings company,
        WorthSettings worth,
        WorthScales scales) {

    /**
     * The defaults.
     *
     * @return settings with every parameter at its default
     */
    public static DaySettings standard() {
        return new DaySettings(
                NeedSettings.GROUP.standard(),
                ChoiceSettings.GROUP.standard(),
                IntakeSettings.GROUP.standard(),
                MemorySettings.GROUP.standard(),
                RestSettings.GROUP.standard(),
                HeatNeedSettings.GROUP.standard(),
                NightSettings.GROUP.standard(),
                CompanySettings.GROUP.standard(),
                WorthSettings.GROUP.standard(),
                WorthScales.GROUP.standard());
    }

    /**
     * The settings as parameters.
     *
     * @return one parameter for each number, group after group
     */
    public List<Parameter> parameters() {
        return Stream.of(
                        NeedSettings.GROUP.of(needs),
                        ChoiceSettings.GROUP.of(choice),
                        IntakeSettings.GROUP.of(intake),
                        MemorySettings.GROUP.of(memory),
                        RestSettings.GROUP.of(rest),
                        HeatNeedSettings.GROUP.of(heat),
                        NightSettings.GROUP.of(night),
                        CompanySettings.GROUP.of(company),
                        WorthSettings.GROUP.of(worth),
                        WorthScales.GROUP.of(scales))
                .flatMap(List::stream)
                .toList();
    }

    /**
     * The same settings with some numbers changed.
     *
     * @param values new values by the names of parameters; names that are none of these are passed over
     * @return a changed copy
     */
    public DaySettings with(Map<String, Double> values) {
        return new DaySettings(
                NeedSettings.GROUP.with(needs, values),
                ChoiceSettings.GROUP.with(choice, values),
                IntakeSettings.GROUP.with(intake, values),
                MemorySettings.GROUP.with(memory, values),
                RestSettings.GROUP.with(rest, values),
                HeatNeedSettings.GROUP.with(heat, values),
                NightSettings.GROUP.with(night, values),
                CompanySettings.GROUP.with(company, values),
                WorthSettings.GROUP.with(worth, values),
                WorthScales.GROUP.with(scales, values));
    }

    /**
     * The same settings with nothing that counts but needs and energy.
     *
     * @return a copy in which every term of worth is 0
     */
    public DaySettings withoutWorth() {
        return new DaySettings(needs, choice, intake, memory, rest, heat, night, company, WorthSettings.none(), scales);
    }
}
