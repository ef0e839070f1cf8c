package limbway.sim.animal;

import java.util.List;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.sim.chance.Name;

/**
 * Weighs every place that an animal knows against its needs and chooses one.
 *
 * <p>A place is worth the relief it promises, more while the need presses (the square of the urgency), less the longer
 * and the dearer the way; staying counts a little extra. One draw for each place, keyed by the decision and the place's
 * name, makes the choice a logit: layouts that share a place share its draw.
 */
public final class Appraisal {

    /** The choice to rest where it is, without a resting place. */
    public static final int HERE = -1;

    private static final double NOTHING = Double.NEGATIVE_INFINITY;
    private static final long HERE_KEY = Name.key("");
    private static final double LEAST_AMOUNT = 1;

    private final DaySettings settings;
    private final ResourceKind[] kinds;
    private final long[] keys;
    private final double recoveredShare;
    private final double recoveredShareElsewhere;
    private final long longestRestMs;
    private final double leastHeatGain;

    /**
     * Appraisal in one layout.
     *
     * @param resources the resources of the enclosure
     * @param settings how places are weighed
     */
    public Appraisal(List<Resource> resources, DaySettings settings) {
        this.settings = settings;
        kinds = resources.stream().map(Resource::kind).toArray(ResourceKind[]::new);
        keys = resources.stream().mapToLong(r -> Name.key(r.id())).toArray();
        longestRestMs = Math.round(settings.rest().longestMin() * 60_000);
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

        int best = HERE;
        double bestWorth = Double.NEGATIVE_INFINITY;
        boolean atRestingPlace = false;
        int firstPassage = ape.outlook().passages().passage(ape.start(), 0);
        for (int place = 0; place < kinds.length; place++) {
            double gain;
            boolean here = place == ape.place();
            switch (kinds[place]) {
                case FOOD -> {
                    double relief = relief(
                            hunger,
                            ape.believedJ(place, nowMs) / ape.body().hungriestJ(),
                            ape.body().hungriestJ());
                    gain = relief > 0 ? gain(settings.needs().hungerWeight(), hunger, relief) : NOTHING;
                }
                case WATER -> gain = drinkable > 0 ? thirstGain : NOTHING;
                default -> {
                    double heatGain = heatGain(ape, place, nowMs);
                    double spared = heatGain - heatHere;
                    boolean worthIt = enoughRest || here || (spared > 0 && spared >= leastHeatGain);
                    gain = worthIt && stalls.isOpenTo(ape, place) ? restGain + heatGain : NOTHING;
                }
            }
            // a place that brings some trouble may still be the least of evils
            if (gain == NOTHING || !canGo(ape, nights, place, firstPassage + place, nowMs, lastLightMs)) {
                continue;
            }
            double worth = gain * ape.outlook().nearness(firstPassage + place)
                    - ape.outlook().toll(firstPassage + place, nowMs)
                    + (here ? settings.choice().persistence() : 0)
                    + drawn(ape, decision, keys[place]);
            atRestingPlace |= here && kinds[place].isRestingPlace();
            if (worth > bestWorth) {
                bestWorth = worth;
                best = place;
            }
        }
        if (atRestingPlace) {
            return best;
        }
        double restHere = gain(
                        settings.needs().fatigueWeight(),
                        needs.fatigue(),
                        recovered(needs.fatigue(), recoveredShareElsewhere))
                + heatHere;
        double worthHere = restHere + settings.choice().persistence() + drawn(ape, decision, HERE_KEY);
        return worthHere >= bestWorth ? HERE : best;
    }

    /**
     * Whether an animal goes to a resting place more for the heat than for rest.
     *
     * @param ape the animal
     * @param place resting place
     * @param nowMs time
     * @return true if the heat that it is spared there counts for more than the fatigue
     */
    public boolean restsForHeat(Ape ape, int place, long nowMs) {
        double heatHere = ape.heatCurve().gain(ape.heat(), ape.start(), nowMs, nowMs + longestRestMs);
        return heatGain(ape, place, nowMs) - heatHere > restGain(ape.needs().fatigue());
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

    private static boolean canGo(Ape ape, Nights nights, int place, int passage, long nowMs, long lastLightMs) {
        Outlook outlook = ape.outlook();
        if (ape.barredUntilMs(place) > nowMs || !outlook.isOpen(passage)) {
            return false;
        }
        // for most of the day two trips of any length leave time to spare, and the nest need not be looked for
        return nowMs + 2 * outlook.longestMs() < lastLightMs
                || (isBackInTime(ape, nights, passage, true, nowMs, lastLightMs)
                        && isBackInTime(ape, nights, passage, false, nowMs, lastLightMs));
    }

    private static boolean isBackInTime(
            Ape ape, Nights nights, int passage, boolean off, long nowMs, long lastLightMs) {
        int end = ape.outlook().end(passage, off);
        return end < 0 || nowMs + ape.outlook().ms(passage, off) + nights.travelMs(ape, end, nowMs) < lastLightMs;
    }

    private double drawn(Ape ape, long decision, long key) {
        double noise = settings.choice().noise();
        return noise > 0 ? noise * ape.drawnTo(decision, key) : 0;
    }

    /** Part of the urgency that a place can take away; 0 where it is not worth going. */
    private double relief(double urgency, double offered, double greatest) {
        double relief = Math.min(urgency, offered);
        return relief >= settings.choice().leastRelief() && relief * greatest >= LEAST_AMOUNT ? relief : 0;
    }

    private double recovered(double fatigue, double share) {
        return Math.max(0, Math.min(fatigue - settings.rest().restedFatigue(), fatigue * share));
    }

    /** Half the weight times what the square of the urgency falls by. */
    static double gain(double weight, double urgency, double relief) {
        return weight * relief * (urgency - relief / 2);
    }
}
