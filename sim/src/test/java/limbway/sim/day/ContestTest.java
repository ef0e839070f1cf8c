package limbway.sim.day;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.ResourceKind;
import limbway.model.study.Animal;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.Ape;
import limbway.sim.animal.CompanySettings;
import limbway.sim.animal.Contest;
import limbway.sim.animal.DaySettings;
import limbway.sim.animal.Stalls;
import limbway.sim.chance.Chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Who wins a stall: a logit of rank and need, a lottery at one end and the order of rank at the other. */
class ContestTest {

    private static final int CONTESTS = 40_000;
    private static final int FEEDER = 0;

    private final Chance chance = new Chance(4, 1);
    private final RunPlan plan = plan(List.of(1, 2, 3, 4, 5), new Yard().at("hatch", ResourceKind.FOOD, 15, 10, 0, 1));
    private final List<Ape> group = plan.group(chance);

    private static RunPlan plan(List<Integer> ranks, Yard yard) {
        for (int i = 0; i < ranks.size(); i++) {
            yard.animal("animal-" + i, "adult female", ranks.get(i));
        }
        return new RunPlan(yard.build(), DaySettings.standard(), Runs.DATE, 1);
    }

    private double wonBy(int challenger, int holder, CompanySettings settings, double heldJ) {
        Contest contest = new Contest(group, plan.resources(), settings, chance);
        int won = 0;
        for (int i = 0; i < CONTESTS; i++) {
            group.get(challenger).nextDecision(1);
            won += contest.isWon(group.get(challenger), FEEDER, group.get(holder), heldJ, 0) ? 1 : 0;
        }
        return (double) won / CONTESTS;
    }

    /** The fourth of five, starved, against the second, hungry to 0.3: 1/(1 + exp(-eta (0.25 + nu - 0.75 - 0.3 nu))). */
    @ParameterizedTest
    @CsvSource({"0, 0.2", "1, 0", "4, 0.2", "4, 1", "10, 0.5"})
    @Tag("derived")
    void theShareOfContestsWonIsTheLogit(double eta, double nu) {
        Ape starved = group.get(3);
        starved.needs().spend(2 * starved.body().hungriestJ());
        Ape second = group.get(1);
        second.needs().spend(0.3 * second.body().hungriestJ() - second.needs().missingJ());
        double share = 1 / (1 + StrictMath.exp(-eta * (0.25 + nu - 0.75 - 0.3 * nu)));
        // four standard errors of a binomial share of 40,000 contests, at most 0.01
        double tolerance = 4 * StrictMath.sqrt(share * (1 - share) / CONTESTS);
        assertEquals(share, wonBy(3, 1, new CompanySettings(eta, nu), 0), tolerance);
        if (eta > 0) {
            double exchanged = wonBy(1, 3, new CompanySettings(eta, nu), 0);
            boolean isEven = Math.abs(share - 0.5) < 0.03;
            assertTrue(isEven || Math.abs(exchanged - share) > tolerance, "the two exchanged must be found");
        }
    }

    @Test
    void whatIsStillInHandCountsAsMissing() {
        Ape first = group.get(0);
        first.needs().eat(first.needs().missingJ());
        group.get(1).needs().eat(group.get(1).needs().missingJ());
        CompanySettings settings = new CompanySettings(4, 1);
        double sated = wonBy(0, 1, settings, 0);
        double eating = wonBy(0, 1, settings, 0.25 * first.body().hungriestJ());
        // lead 0.25 against lead 0: shares 0.731 and 0.5, each good to 0.01
        assertEquals(0.731, sated, 0.01);
        assertEquals(0.5, eating, 0.01);
    }

    @Test
    void withoutEndToTheSharpnessTheStrongerAlwaysWinsAndEqualsTossACoin() {
        for (double eta : new double[] {1e6, Double.MAX_VALUE, Double.POSITIVE_INFINITY}) {
            CompanySettings settings = new CompanySettings(eta, 0);
            assertEquals(1, wonBy(0, 1, settings, 0));
            assertEquals(0, wonBy(4, 3, settings, 0));
            assertEquals(0.5, wonBy(2, 2, settings, 0), 0.01);
        }
    }

    /** Places from best to worst with 1, 2 and 1 stalls: by rank the first gets the best, two the next, one the last. */
    @Test
    @Tag("derived")
    void underTheOrderOfRankTheNextInRankGetsTheBestStallThatIsLeft() {
        int asByRank = 0;
        for (int seed = 1; seed <= 200; seed++) {
            assertEquals(List.of(2, 0, Ape.NONE, 1, 1), settled(seed, 1e6), "seed " + seed);
            asByRank += settled(seed, 0).equals(List.of(2, 0, Ape.NONE, 1, 1)) ? 1 : 0;
        }
        assertTrue(asByRank < 100, "a lottery must not look like the order of rank");
    }

    /** Five animals of ranks 4, 1, 5, 2, 3 come in an order of chance and try the places from the best on. */
    private static List<Integer> settled(int seed, double eta) {
        Yard yard = new Yard()
                .at("best", ResourceKind.FOOD, 5, 10, 0, 1)
                .at("good", ResourceKind.FOOD, 15, 10, 0, 2)
                .at("poor", ResourceKind.FOOD, 25, 10, 0, 1);
        return settled(plan(List.of(4, 1, 5, 2, 3), yard), new Chance(seed, 1), eta);
    }

    private static List<Integer> settled(RunPlan plan, Chance chance, double eta) {
        List<Ape> group = plan.group(chance);
        Stalls stalls = new Stalls(plan.resources());
        Contest contest = new Contest(group, plan.resources(), new CompanySettings(eta, 0), chance);
        int[] next = new int[group.size()];
        List<Ape> comers = new ArrayList<>(group);
        Collections.rotate(comers, chance.seed());
        if (chance.seed() % 2 == 0) {
            Collections.reverse(comers);
        }
        Deque<Ape> looking = new ArrayDeque<>(comers);
        while (!looking.isEmpty()) {
            Ape ape = looking.poll();
            if (next[ape.number()] == plan.resources().size()) {
                continue;
            }
            int place = next[ape.number()]++;
            ape.nextDecision(1);
            if (stalls.take(ape, place)) {
                continue;
            }
            Optional<Ape> holder = contest.challenged(ape, place, stalls, any -> true);
            if (contest.isWon(ape, place, holder.orElseThrow(), 0, 0)) {
                stalls.displace(holder.get(), ape);
                looking.add(holder.get());
            } else {
                looking.add(ape);
            }
        }
        return group.stream().map(ape -> ape.holdings().stall()).toList();
    }

    @Test
    void motherAndYoungDoNotChallengeEachOtherNorAnybodyWhoSleepsOrANestThatIsOwned() {
        Yard yard = new Yard()
                .at("hatch", ResourceKind.FOOD, 15, 10, 0, 2)
                .at("nest", ResourceKind.NEST, 5, 10, 0, 2)
                .animal("mother", "adult female", 1)
                .animal(new Animal("young", Yard.body("juvenile"), 3, Optional.of("mother"), ""))
                .animal("other", "adult female", 2);
        RunPlan family = new RunPlan(yard.build(), DaySettings.standard(), Runs.DATE, 1);
        List<Ape> apes = family.group(chance);
        Stalls stalls = new Stalls(family.resources());
        Contest contest = new Contest(apes, family.resources(), new CompanySettings(4, 0.2), chance);
        Ape mother = apes.get(0);
        Ape young = apes.get(1);
        Ape other = apes.get(2);
        assertTrue(stalls.take(young, FEEDER));
        assertTrue(contest.challenged(mother, FEEDER, stalls, any -> true).isEmpty());
        assertEquals(
                young, contest.challenged(other, FEEDER, stalls, any -> true).orElseThrow());
        assertTrue(contest.challenged(other, FEEDER, stalls, any -> false).isEmpty());
        assertTrue(stalls.take(other, FEEDER));
        assertEquals(
                other, contest.challenged(mother, FEEDER, stalls, any -> true).orElseThrow());
        assertTrue(stalls.take(young, 1));
        assertEquals(young, contest.challenged(other, 1, stalls, any -> true).orElseThrow());
        stalls.own(mother, 1);
        assertTrue(contest.challenged(other, 1, stalls, any -> true).isEmpty());
        assertFalse(stalls.take(other, 1));
    }
}
