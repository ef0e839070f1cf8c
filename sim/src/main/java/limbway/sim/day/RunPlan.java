package limbway.sim.day;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import limbway.model.body.Body;
import limbway.model.enclosure.Resource;
import limbway.model.graph.RouteGraph;
import limbway.model.study.Animal;
import limbway.sim.animal.Ape;
import limbway.sim.animal.Appraisal;
import limbway.sim.animal.Company;
import limbway.sim.animal.DaySettings;
import limbway.sim.animal.HeatCurve;
import limbway.sim.animal.Needs;
import limbway.sim.animal.Outlook;
import limbway.sim.animal.Physiology;
import limbway.sim.animal.Resting;
import limbway.sim.animal.Worth;
import limbway.sim.chance.Chance;
import limbway.sim.habitat.Habitat;
import limbway.sim.habitat.KeepersHours;
import limbway.sim.habitat.Passages;
import limbway.sim.habitat.SunlitWays;

/** What all replications of a run share: the layout, what bodies expect of it, the light and the keepers' hours. */
public final class RunPlan {

    private final Habitat habitat;
    private final DaySettings settings;
    private final int days;
    private final int warmUpDays;
    private final Almanac almanac;
    private final List<Delivery> deliveries;
    private final double[] ordinaryJ;
    private final Map<Body, Physiology> physiologies = new LinkedHashMap<>();
    private final List<List<Outlook>> outlooks;
    private final Map<Body, Worth> worths = new LinkedHashMap<>();
    private final Appraisal appraisal;
    private final Resting resting;
    private final HeatCurve heatCurve;

    /**
     * Prepares a run.
     *
     * @param habitat the layout and the group
     * @param settings how animals spend their day
     * @param date calendar date of day 1
     * @param days number of days that count, 1 or more
     */
    public RunPlan(Habitat habitat, DaySettings settings, LocalDate date, int days) {
        this(habitat, settings, date, days, 0);
    }

    /**
     * Prepares a run that begins before its first day.
     *
     * @param habitat the layout and the group
     * @param settings how animals spend their day
     * @param firstDay calendar date of day 1
     * @param countedDays number of days that count, 1 or more
     * @param warmUpDays number of days that are lived before day 1, 0 or more
     */
    public RunPlan(Habitat habitat, DaySettings settings, LocalDate firstDay, int countedDays, int warmUpDays) {
        this.habitat = habitat;
        this.settings = settings;
        this.warmUpDays = warmUpDays;
        LocalDate date = firstDay.minusDays(warmUpDays);
        days = warmUpDays + countedDays;
        almanac = new Almanac(habitat.layout().enclosure().site(), date, days, settings.night());
        deliveries = Delivery.of(habitat.layout().feedings(), habitat.graph());
        ordinaryJ = Delivery.ordinaryJ(deliveries, resources().size());
        Map<Body, List<Outlook>> byBody = new LinkedHashMap<>();
        for (Body body : habitat.bodies()) {
            Physiology physiology = Physiology.of(body, habitat.energy().dailyOverResting(), settings);
            physiologies.put(body, physiology);
            List<SunlitWays> sun = habitat.sunlitWays(body, date, days, settings.heat()::trouble);
            List<Passages> passages = habitat.passages(body);
            List<Outlook> found = new ArrayList<>();
            for (int stretch = 0; stretch < passages.size(); stretch++) {
                found.add(new Outlook(
                        passages.get(stretch), sun.get(stretch), resources().size(), physiology, settings));
            }
            byBody.put(body, List.copyOf(found));
            worths.put(body, worth(body, passages.get(0).startCount()));
        }
        outlooks = habitat.animals().stream()
                .map(animal -> byBody.get(animal.body()))
                .toList();
        appraisal = new Appraisal(resources(), keepersHours(), settings);
        resting = new Resting(settings);
        heatCurve = new HeatCurve(habitat.warmth(date, days), settings.heat());
    }

    private Worth worth(Body body, int starts) {
        Set<String> added = habitat.layout().added();
        boolean[] addedPlaces = new boolean[resources().size()];
        for (int r = 0; r < addedPlaces.length; r++) {
            Resource resource = resources().get(r);
            addedPlaces[r] = added.contains(resource.id()) || added.contains(resource.on());
        }
        return new Worth(habitat.character(), keepersHours(), settings, starts, body.gapReachM(), addedPlaces);
    }

    KeepersHours keepersHours() {
        return habitat.keepersHours();
    }

    /** When the days begin that count. */
    long warmUpMs() {
        return warmUpDays * Almanac.DAY_MS;
    }

    RouteGraph graph() {
        return habitat.graph();
    }

    List<Resource> resources() {
        return habitat.graph().resources();
    }

    /** What an animal expects of every passage while the doors are as they are at a time. */
    Outlook outlook(int animal, long ms) {
        return outlooks.get(animal).get(habitat.doorHours().at(ms));
    }

    DaySettings settings() {
        return settings;
    }

    long endMs() {
        return days * Almanac.DAY_MS;
    }

    /**
     * The light.
     *
     * @return when animals wake and settle
     */
    public Almanac almanac() {
        return almanac;
    }

    List<Delivery> deliveries() {
        return deliveries;
    }

    Appraisal appraisal() {
        return appraisal;
    }

    Resting resting() {
        return resting;
    }

    /** The group at midnight before day 1, full since the sunset before, nowhere yet. */
    List<Ape> group(Chance chance) {
        long sinceSunsetMs = Almanac.DAY_MS - almanac.sunsetMs(1);
        List<Ape> group = new ArrayList<>();
        Company company = new Company(habitat.animals());
        for (Animal animal : habitat.animals()) {
            Physiology body = physiologies.get(animal.body());
            Needs needs = new Needs(body, settings.needs(), sinceSunsetMs);
            group.add(new Ape(
                    group.size(),
                    animal,
                    body,
                    outlook(group.size(), 0),
                    needs,
                    heatCurve,
                    worths.get(animal.body()),
                    company,
                    chance,
                    settings.memory().foraging(ordinaryJ)));
        }
        return group;
    }
}
