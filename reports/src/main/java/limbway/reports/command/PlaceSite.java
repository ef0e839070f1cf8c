package limbway.reports.command;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import limbway.model.enclosure.Resource;
import limbway.model.study.Variant;
import limbway.reports.words.Figures;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.Progress;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.placement.CandidatePlace;
import limbway.sim.experiment.placement.CandidateSieve;
import limbway.sim.experiment.placement.Demand;
import limbway.sim.experiment.placement.ExpectedTravel;
import limbway.sim.experiment.placement.PlacingContest;
import limbway.sim.experiment.placement.PlacingRule;
import limbway.sim.experiment.placement.PlacingRules;
import limbway.sim.experiment.placement.PlacingSearch;
import limbway.sim.experiment.placement.PlacingTask;
import limbway.sim.experiment.placement.Sifted;
import limbway.sim.habitat.Habitat;

/**
 * Where places may be in a layout, and what is expected of each.
 *
 * @param considered how many candidates there were
 * @param spacingM distance at which they were made; empty if they were given
 * @param out how many each rule left out
 * @param unreachable how many not every body reaches
 * @param staying how many places may also stay where they are while others are moved
 * @param candidates those that are left, then the spots of now of places that may stay
 * @param travel expected travel to and from them
 * @param standing places of the kind that stay where they are
 */
record PlaceSite(
        int considered,
        Optional<Double> spacingM,
        Map<PlacingRule, Integer> out,
        int unreachable,
        int staying,
        List<CandidatePlace> candidates,
        ExpectedTravel travel,
        List<String> standing) {

    /**
     * Finds the candidates that may be chosen.
     *
     * @return the site, or empty if it was interrupted
     */
    static Optional<PlaceSite> of(
            Question question,
            PlaceWish wish,
            Habitat base,
            Assumptions assumptions,
            RunSettings settings,
            Progress progress)
            throws Refusal {
        Variant layout = base.layout();
        PlacingTask task = wish.task();
        double spacingM = PlaceSpots.spacingM(wish);
        List<CandidatePlace> all = PlaceSpots.of(wish, layout);
        CandidateSieve sieve = new CandidateSieve(
                wish.rules(), task, layout, base.bodies(), question.study().climate(), settings.date());
        Sifted sifted = sieve.sift(all);
        requireNoContradiction(sifted, wish.rules(), task);
        List<CandidatePlace> sound = IntStream.range(0, all.size())
                .filter(c -> sifted.broken().get(c).isEmpty())
                .mapToObj(all::get)
                .toList();

        List<CandidatePlace> staying = staying(layout, task, sound, sieve);
        List<CandidatePlace> spots =
                Stream.concat(sound.stream(), staying.stream()).toList();
        List<String> ofKind = layout.enclosure().resources().stream()
                .filter(resource -> resource.kind() == task.kind())
                .map(Resource::id)
                .toList();
        List<String> places = task.moved().isEmpty() ? ofKind : task.moved();
        Outcome lived =
                Experiment.run(base, settings.repetitions(1, PlacingContest.COUNTED), assumptions.day(), progress);
        if (!lived.complete()) {
            return Optional.empty();
        }
        List<Demand> demands = Demand.lived(lived, places);
        ExpectedTravel travel = new ExpectedTravel(
                layout,
                variant -> new Habitat(
                        variant, base.animals(), Optional.empty(), assumptions.energy(), assumptions.sharpness()),
                spots,
                demands.isEmpty() ? Demand.even(base, places) : demands);
        List<Integer> reached = reached(wish, sound, travel);
        if (reached.size() < task.count()) {
            throw Refusal.of(
                    "too few places can be reached by all",
                    reached.size() + " of " + sound.size() + " candidates; not reached by some body, for example "
                            + unreached(sound, travel, 3),
                    task.count() + " or more",
                    "see limbway check, or give candidates that the young reach too");
        }
        List<Integer> kept = Stream.concat(
                        reached.stream(),
                        IntStream.range(sound.size(), spots.size())
                                .filter(c -> travel.cannotReach(c).isEmpty())
                                .boxed())
                .toList();
        return Optional.of(new PlaceSite(
                all.size(),
                wish.given().isPresent() ? Optional.empty() : Optional.of(spacingM),
                sifted.out(),
                sound.size() - reached.size(),
                kept.size() - reached.size(),
                kept.stream().map(spots::get).toList(),
                travel.only(kept),
                task.moved().isEmpty() ? ofKind : List.of()));
    }

    /**
     * Spots of now of places that are moved together, so that some may stay: those that break no rule, but that of heat, which
     * asks for no more than now, and that are no candidates anyway.
     */
    private static List<CandidatePlace> staying(
            Variant layout, PlacingTask task, List<CandidatePlace> sound, CandidateSieve sieve) {
        if (task.moved().size() < 2) {
            return List.of();
        }
        List<CandidatePlace> now = layout.enclosure().resources().stream()
                .filter(resource -> task.moved().contains(resource.id()))
                .map(CandidatePlace::asItIs)
                .filter(spot -> sound.stream().noneMatch(spot::coincides))
                .toList();
        Sifted sifted = sieve.sift(now);
        return IntStream.range(0, now.size())
                .filter(c ->
                        EnumSet.of(PlacingRule.HEAT).containsAll(sifted.broken().get(c)))
                .mapToObj(now::get)
                .toList();
    }

    private static void requireNoContradiction(Sifted sifted, PlacingRules rules, PlacingTask task) throws Refusal {
        Set<PlacingRule> contradiction = sifted.contradiction(task.count());
        if (contradiction.isEmpty()) {
            return;
        }
        String asked = " of the " + (task.count() == 1 ? "place" : task.count() + " places") + " asked for";
        List<String> parts = new ArrayList<>();
        for (PlacingRule rule : contradiction) {
            int left = sifted.left(EnumSet.of(rule));
            parts.add(words(rule, rules) + " leaves " + left + (contradiction.size() == 1 ? asked : " candidates"));
        }
        if (contradiction.size() > 1) {
            parts.add("together they leave " + sifted.left(contradiction) + asked);
        }
        throw Refusal.of(
                contradiction.size() == 1 ? "a rule leaves too few places" : "the rules contradict each other",
                String.join("; ", parts),
                "",
                "ease " + (contradiction.size() == 1 ? "it" : "one of them") + ", or give other candidates");
    }

    private static String words(PlacingRule rule, PlacingRules rules) {
        return switch (rule) {
            case KEEPER_REACH ->
                rule.word() + " " + Figures.metres(rules.keeperReachM().orElseThrow());
            case LOAD -> rule.word() + " " + Figures.decimals(rules.loadKg().orElseThrow(), 1) + " kg";
            case BARRIER_DISTANCE -> rule.word() + " " + Figures.metres(rules.barrierM());
            case SHADED, HEAT, HOT_WIRE, FREE_SPACE, WAY_OUT -> rule.word();
        };
    }

    /** Those that all bodies get to and back from; given ones that are not reached are refused. */
    private static List<Integer> reached(PlaceWish wish, List<CandidatePlace> sound, ExpectedTravel travel)
            throws Refusal {
        List<Integer> reached = IntStream.range(0, sound.size())
                .filter(c -> travel.cannotReach(c).isEmpty())
                .boxed()
                .toList();
        if (wish.given().isPresent() && reached.size() < sound.size()) {
            throw Refusal.of(
                    "candidates cannot be reached, or not left, by all who go there",
                    unreached(sound, travel, sound.size()),
                    "",
                    "take them out, or add what these bodies can climb; limbway check tells what stops them");
        }
        return reached;
    }

    private static String unreached(List<CandidatePlace> sound, ExpectedTravel travel, int most) {
        return String.join(
                "; ",
                IntStream.range(0, sound.size())
                        .filter(c -> !travel.cannotReach(c).isEmpty())
                        .limit(most)
                        .mapToObj(c -> sound.get(c).told() + " not by " + String.join(", ", travel.cannotReach(c)))
                        .toList());
    }

    /** The best combinations; refused if no places stand far enough from each other. */
    PlacingSearch.Found search(Variant layout, PlacingTask task, double apartM, int most) throws Refusal {
        PlacingSearch.Found found = PlacingSearch.run(layout, task, candidates, travel, standing, apartM, most);
        if (found.proposals().isEmpty()) {
            throw Refusal.of(
                    "a rule leaves too few places",
                    "apart " + Figures.metres(apartM) + " leaves no " + task.count() + " of the " + candidates.size()
                            + " candidates",
                    "",
                    "ease it, or give other candidates");
        }
        return found;
    }
}
