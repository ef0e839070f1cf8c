package limbway.sim.animal;

import java.util.List;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.sim.chance.Name;
import limbway.sim.habitat.KeepersHours;
import limbway.sim.journal.Motive;

/**
 * Weighs every place that an animal knows against its needs and chooses one.
 *
 * <p>A place is worth the relief it promises, more while the need presses (the square of the urgency), less the longer
 * and the dearer the way; staying counts a little extra. Where the settings say so, comfort, company and what is familiar
 * count too ({@link Worth}). One draw for each place, keyed by the decision and the place's
 * name, makes the choice a logit: layouts that share a place share its draw. Places of one kind on one platform share one
 * draw, so that two bowls side by side draw no more than one ({@link Sites}); which of them it is to be is drawn after.
 */
public final class Appraisal {

    /** The choice to rest where it is, without a resting place. */
    public static final int HERE = -1;

    private static final double NOTHING = Double.NEGATIVE_INFINITY;
    private static final long HERE_KEY = Name.key("");
    /* The least that anybody goes for [J or ml], far below any meal: assumption. */
    private static final double LEAST_AMOUNT = 1;

    private final DaySettings settings;
    private final KeepersHours hours;
    private final ResourceKind[] kinds;
    private final Sites sites;
    private final double recoveredShare;
    private final double recoveredShareElsewhere;
    private final long longestRestMs;
    private final double leastHeatGain;
    private final double leastWorth;

    /**
     * Appraisal in one layout.
     *
     * @param resources the resources of the enclosure
     * @param hours when places are shut
     * @param settings how places are weighed
     */
    public Appraisal(List<Resource> resources, KeepersHours hours, DaySettings settings) {
        this.settings = settings;
        this.hours = hours;
        kinds = resources.stream().map(Resource::kind).toArray(ResourceKind[]::new);
        sites = new Sites(resources);
        longestRestMs = Math.round(settings.rest().longestMin() * 60_000);
        leastWorth = gain(1, settings.choice().leastRelief(), settings.choice().leastRelief());
        leastHeatGain = gain(
                settings.heat().weight(),
                settings.choice().leastRelief(),
                settings.choice().leastRelief());
        double longest = settings.rest().longestMin() / settings.needs().recoveryMin();
        recoveredShare = 1 - StrictMath.exp(-longest);
        recoveredShareElsewhere = 1 - StrictMath.exp(-longest * settings.rest().reliefElsewhere());
    }

    /**
     * Chooses.
     *
     * @param ape who; its needs are up to date
     * @param stalls who uses what
     * @param nights where it would sleep
     * @param nowMs time [ms]
     * @param lastLightMs when it must have reached its nest [ms]
     * @param decision number of the decision
     * @return number of a resource, or {@link #HERE}
     */
    public int choose(Ape ape, Stalls stalls, Nights nights, long nowMs, long lastLightMs, long decision) {
        Needs needs = ape.needs();
        double hunger = needs.hunger();
        double thirst = needs.thirst();
        double drinkable = relief(thirst, thirst, ape.body().thirstiestMl());
        double thirstGain = gain(settings.needs().thirstWeight(), thirst, drinkable);
        double restable = recovered(needs.fatigue(), recoveredShare);
        double restGain = restGain(needs.fatigue());
        boolean enoughRest = restable > 0 && restable >= settings.choice().leastRelief();

        double heatHere = ape.heatCurve().gain(ape.heat(), ape.start(), nowMs, nowMs + longestRestMs);
        Worth worth = ape.worth();
        boolean more = worth.counts();
        double comfortHere = worth.comfort(ape.place(), ape.start(), nowMs);
        double settingHere = worth.setting(ape, ape.place(), ape.start(), nowMs);
        boolean shutHere = hours.isShut(ape.place(), nowMs);
        double change = worth.change(ape, nowMs);
        double strangeness = worth.strangeness(ape, nowMs);
        double restElsewhere = gain(
                settings.needs().fatigueWeight(), needs.fatigue(), recovered(needs.fatigue(), recoveredShareElsewhere));

        int best = HERE;
        double bestWorth = NOTHING;
        boolean atRestingPlace = false;
        int firstPassage = ape.outlook().passages().passage(ape.start(), 0);
        double[] weights = ape.weights();
        for (int place = 0; place < kinds.length; place++) {
            weights[place] = NOTHING;
            boolean here = place == ape.place();
            int end = here ? ape.start() : ape.outlook().likelyEnd(firstPassage + place);
            if (end < 0) {
                continue;
            }
            if (!isOpen(ape, place, firstPassage + place, nowMs)) {
                continue;
            }
            double setting = NOTHING;
            double gain;
            double comfort = 0;
            switch (kinds[place]) {
                case FOOD -> gain = foodGain(ape, place, hunger, nowMs);
                case WATER -> gain = drinkable > 0 ? thirstGain : NOTHING;
                default -> {
                    double heatGain = here ? heatHere : heatGain(ape, place, nowMs);
                    double spared = heatGain - heatHere;
                    comfort = worth.comfort(place, end, nowMs);
                    boolean worthIt = enoughRest || here || shutHere || (spared > 0 && spared >= leastHeatGain);
                    if (!worthIt && more) {
                        setting = worth.setting(ape, place, end, nowMs);
                        worthIt = comfort + setting - comfortHere - settingHere + change >= leastWorth;
                    }
                    gain = worthIt && stalls.isOpenTo(ape, place) ? restGain + heatGain : NOTHING;
                }
            }
            if (gain == NOTHING && more && !here && worth.isWithLeader(ape, end)) {
                gain = restElsewhere;
            }
            // a place that brings some trouble may still be the least of evils
            if (gain == NOTHING || !isBackInTime(ape, nights, firstPassage + place, nowMs, lastLightMs)) {
                continue;
            }
            if (setting == NOTHING) {
                setting = worth.setting(ape, place, end, nowMs);
            }
            double total = gain
                            * ape.outlook().nearness(firstPassage + place)
                            * ape.holdings().readiness(place)
                    - ape.outlook().toll(firstPassage + place, nowMs, strangeness)
                    + comfort
                    + setting
                    + (here ? settings.choice().persistence() : change);
            weights[place] = total;
            atRestingPlace |=
                    here && kinds[place].isRestingPlace() && ape.holdings().queue() != place;
            if (mayExceed(ape, decision, sites.key(place), total, bestWorth)) {
                total += drawn(ape, decision, sites.key(place));
                if (total > bestWorth) {
                    bestWorth = total;
                    best = place;
                }
            }
        }
        if (atRestingPlace || (best != HERE && shutHere)) {
            return amongNeighbours(ape, best, decision);
        }
        double worthHere = restElsewhere
                + heatHere
                + comfortHere
                + settingHere
                + settings.choice().persistence()
                + drawn(ape, decision, HERE_KEY);
        return worthHere >= bestWorth ? HERE : amongNeighbours(ape, best, decision);
    }

    /** Which of the places of one site it is to be, once the site has been chosen. */
    private int amongNeighbours(Ape ape, int chosen, long decision) {
        if (chosen == HERE || !sites.isShared(chosen)) {
            return chosen;
        }
        int best = chosen;
        double bestWorth = NOTHING;
        for (int place = 0; place < kinds.length; place++) {
            if (sites.areOne(place, chosen) && ape.weights()[place] > NOTHING) {
                double total = ape.weights()[place] + drawn(ape, decision, sites.keyWithin(place));
                if (total > bestWorth) {
                    bestWorth = total;
                    best = place;
                }
            }
        }
        return best;
    }

    /**
     * Why an animal goes to a place, or stays there.
     *
     * @param ape the animal
     * @param place number of a resource
     * @param nowMs time
     * @return what counts most
     */
    public Motive motive(Ape ape, int place, long nowMs) {
        Worth worth = ape.worth();
        boolean here = place == ape.place();
        int end = here
                ? ape.start()
                : ape.outlook().likelyEnd(ape.outlook().passages().passage(ape.start(), place));
        boolean led = !here && worth.counts() && worth.isWithLeader(ape, end);
        if (kinds[place] == ResourceKind.FOOD) {
            boolean hungry = relief(
                            ape.needs().hunger(),
                            ape.believedJ(place, nowMs) / ape.body().hungriestJ(),
                            ape.body().hungriestJ())
                    > 0;
            return led && !hungry ? Motive.COMPANY : Motive.HUNGER;
        }
        if (kinds[place] == ResourceKind.WATER) {
            double thirst = ape.needs().thirst();
            return led && relief(thirst, thirst, ape.body().thirstiestMl()) == 0 ? Motive.COMPANY : Motive.THIRST;
        }
        double rest = restGain(ape.needs().fatigue());
        double heatHere = ape.heatCurve().gain(ape.heat(), ape.start(), nowMs, nowMs + longestRestMs);
        double heat = here ? 0 : heatGain(ape, place, nowMs) - heatHere;
        double better = here
                ? 0
                : worth.comfort(place, end, nowMs)
                        + worth.setting(ape, place, end, nowMs)
                        + worth.change(ape, nowMs)
                        - worth.comfort(ape.place(), ape.start(), nowMs)
                        - worth.setting(ape, ape.place(), ape.start(), nowMs);
        if (heat > rest && heat >= better) {
            return Motive.HEAT;
        }
        if (better > rest) {
            return led ? Motive.COMPANY : Motive.COMFORT;
        }
        return Motive.FATIGUE;
    }

    private double restGain(double fatigue) {
        return gain(settings.needs().fatigueWeight(), fatigue, recovered(fatigue, recoveredShare));
    }

    private double heatGain(Ape ape, int place, long nowMs) {
        if (!ape.heatCurve().counts()) {
            return 0;
        }
        int passage = ape.outlook().passages().passage(ape.start(), place);
        int end = place == ape.place() ? ape.start() : ape.outlook().likelyEnd(passage);
        return end < 0 ? 0 : ape.heatCurve().gain(ape.heat(), end, nowMs, nowMs + longestRestMs);
    }

    private double foodGain(Ape ape, int place, double hunger, long nowMs) {
        if (hunger < settings.choice().leastRelief()) {
            return NOTHING;
        }
        double greatestJ = ape.body().hungriestJ();
        double relief = relief(hunger, ape.believedJ(place, nowMs) / greatestJ, greatestJ);
        return relief > 0 ? gain(settings.needs().hungerWeight(), hunger, relief) : NOTHING;
    }

    private boolean isOpen(Ape ape, int place, int passage, long nowMs) {
        return ape.outlook().isOpen(passage) && ape.barredUntilMs(place) <= nowMs && !hours.isShut(place, nowMs);
    }

    private boolean isBackInTime(Ape ape, Nights nights, int passage, long nowMs, long lastLightMs) {
        // for most of the day two trips of any length leave time to spare, and the nest need not be looked for
        return nowMs + 2 * ape.outlook().longestMs() < lastLightMs
                || (isBackInTime(ape, nights, passage, true, nowMs, lastLightMs)
                        && isBackInTime(ape, nights, passage, false, nowMs, lastLightMs));
    }

    private static boolean isBackInTime(
            Ape ape, Nights nights, int passage, boolean off, long nowMs, long lastLightMs) {
        int end = ape.outlook().end(passage, off);
        return end < 0 || nowMs + ape.outlook().ms(passage, off) + nights.travelMs(ape, end, nowMs) < lastLightMs;
    }

    /** Whether a draw might lift a place above the best so far, told without the draw's two logarithms. */
    private boolean mayExceed(Ape ape, long decision, long key, double worth, double bestWorth) {
        double noise = settings.choice().noise();
        return bestWorth == NOTHING || noise <= 0 || worth + noise * ape.draws().atMostTo(decision, key) > bestWorth;
    }

    private double drawn(Ape ape, long decision, long key) {
        double noise = settings.choice().noise();
        return noise > 0 ? noise * ape.draws().to(decision, key) : 0;
    }

    /**
     * Part of the urgency that a place can take away; 0 where it is not worth going. Who needs much goes for little.
     */
    private double relief(double urgency, double offered, double greatest) {
        double relief = Math.min(urgency, offered);
        double least = settings.choice().leastRelief() * (offered < urgency ? 1 - urgency : 1);
        return relief >= least && relief * greatest >= LEAST_AMOUNT ? relief : 0;
    }

    private double recovered(double fatigue, double share) {
        return Math.max(0, Math.min(fatigue - settings.rest().restedFatigue(), fatigue * share));
    }

    /** Half the weight times what the square of the urgency falls by. */
    static double gain(double weight, double urgency, double relief) {
        return weight * relief * (urgency - relief / 2);
    }
}
