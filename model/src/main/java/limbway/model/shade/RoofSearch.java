package limbway.model.shade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;

/**
 * Looks for the smallest roof over one platform that ends every breach of the shade rule in a year.
 *
 * <p>Exact within its family: plain roofs over every platform are tried from the smallest area up, then, only if none will
 * do, roofs with one screen, with two, with three. What a roof over one platform does for the others counts too. The verdict
 * is that of the whole audit with the roof in the layout. Nothing is asked of posts, of load, or of what already stands
 * where the roof would be.
 */
public final class RoofSearch {

    private final Enclosure enclosure;
    private final ShadeYear year;
    private final RoofFamily family;
    private final RoofJudge judge;
    private final List<RoofDemand> demands;
    private final ShadeProgress progress;
    private final int hunts;
    private int hunted;

    private RoofSearch(
            Enclosure enclosure, ShadeYear year, RoofFamily family, RoofJudge judge, ShadeProgress progress) {
        this.enclosure = enclosure;
        this.year = year;
        this.family = family;
        this.judge = judge;
        this.progress = progress;
        // every platform with every number of screens, for the smallest roof and then for the best that falls short
        hunts = year.platforms().size() * (family.mostScreens() + 1) * 2;
        demands = RoofDemands.of(enclosure.site(), year, judge, this::goOn);
    }

    /**
     * Looks for a roof.
     *
     * @param enclosure the layout that was audited
     * @param settings with which it was audited
     * @param year what the audit found
     * @param family the roofs to choose from
     * @param threads threads for the audits, 1 or more; the answer does not depend on them
     * @param progress told of each platform that was tried with each number of screens, and asked whether to go on
     * @return nothing to mend, the smallest roof that ends every breach, the best that falls short, or that it was stopped
     * @throws IllegalArgumentException if a platform of the year is not in the layout
     * @throws IllegalStateException if the thread was interrupted
     */
    public static RoofAnswer of(
            Enclosure enclosure,
            ShadeSettings settings,
            ShadeYear year,
            RoofFamily family,
            int threads,
            ShadeProgress progress) {
        try {
            return of(enclosure, year, family, new AuditJudge(enclosure, settings, year, threads), progress);
        } catch (Stopped e) {
            return new RoofAnswer.Interrupted(year.breachMinutes());
        }
    }

    static RoofAnswer of(
            Enclosure enclosure, ShadeYear year, RoofFamily family, RoofJudge judge, ShadeProgress progress) {
        if (year.breachMinutes() == 0) {
            return new RoofAnswer.NothingToMend();
        }
        if (year.platforms().size() < year.rule().atLeast()) {
            return new RoofAnswer.TooFewPlatforms(
                    year.rule().atLeast(), year.platforms().size());
        }
        return new RoofSearch(enclosure, year, family, judge, progress).answer();
    }

    /** Somebody asked for an end between two tries. */
    private static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private void goOn() {
        if (!progress.goesOn(hunted, hunts)) {
            throw new Stopped();
        }
    }

    private RoofHunt hunt(DeckFrame frame, int screens, List<RoofDemand> toEnd) {
        goOn();
        hunted = Math.min(hunts, hunted + 1);
        return new RoofHunt(family, frame, screens, judge.points(), toEnd);
    }

    private RoofAnswer answer() {
        List<Shortfall> shortfalls = Shortfall.ranked(year, demands);
        for (int screens = 0; screens <= family.mostScreens(); screens++) {
            Optional<Placed> smallest = smallest(screens, year.platforms(), demands);
            if (smallest.isPresent()) {
                ShadeYear after = judge.audit(smallest.get().roof().addedTo(enclosure));
                if (after.breachMinutes() == 0) {
                    return new RoofAnswer.Found(smallest.get().roof(), year.breachMinutes(), after, shortfalls);
                }
            }
        }
        return noneFound(shortfalls);
    }

    /** A roof, its plan and what it can be tried with. */
    private record Placed(Roof roof, RoofPlan plan, RoofHunt hunt) {}

    /** The smallest over any of some platforms, the first platform among equals. */
    private Optional<Placed> smallest(int screens, List<String> over, List<RoofDemand> toEnd) {
        Placed best = null;
        for (String name : over) {
            DeckFrame frame = frame(name);
            RoofHunt hunt = hunt(frame, screens, toEnd);
            double below = best == null ? Double.POSITIVE_INFINITY : best.plan().areaM2();
            Optional<RoofPlan> found = hunt.smallest(below);
            if (found.isPresent()) {
                best = new Placed(Roof.of(name, frame, found.get()), found.get(), hunt);
            }
        }
        return Optional.ofNullable(best);
    }

    private RoofAnswer noneFound(List<Shortfall> shortfalls) {
        Placed largest = bestOfLargest();
        List<RoofDemand> ended = new ArrayList<>();
        List<RoofDemand> left = new ArrayList<>();
        for (int i = 0; i < demands.size(); i++) {
            (largest.hunt().ends(largest.plan(), i) ? ended : left).add(demands.get(i));
        }
        int screens = Integer.bitCount(largest.plan().screens());
        Roof best = smallest(screens, List.of(largest.roof().platform()), ended)
                .map(Placed::roof)
                .orElse(largest.roof());
        return new RoofAnswer.NoneFound(
                best,
                year.breachMinutes(),
                judge.audit(best.addedTo(enclosure)),
                left.stream().mapToDouble(RoofDemand::sunDeg).min().orElse(0),
                left.stream().mapToDouble(RoofDemand::sunDeg).max().orElse(0),
                (int) left.stream().filter(demand -> demand.wanted() > 1).count()
                        * year.calendar().stepMin(),
                shortfalls);
    }

    /** Of the largest roofs the one that leaves the fewest moments, with as few screens as that takes. */
    private Placed bestOfLargest() {
        Placed best = null;
        int fewest = Integer.MAX_VALUE;
        for (int screens = 0; screens <= family.mostScreens(); screens++) {
            for (String name : year.platforms()) {
                DeckFrame frame = frame(name);
                RoofHunt hunt = hunt(frame, screens, demands);
                RoofPlan plan = hunt.bestOfLargest();
                int left = hunt.left(plan);
                if (left < fewest) {
                    fewest = left;
                    best = new Placed(Roof.of(name, frame, plan), plan, hunt);
                }
            }
        }
        return best;
    }

    private DeckFrame frame(String name) {
        return enclosure.platforms().stream()
                .filter(platform -> platform.id().equals(name))
                .map(DeckFrame::new)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("roofs: platform = \"" + name
                        + "\", allowed "
                        + enclosure.platforms().stream().map(Platform::id).toList()));
    }
}
