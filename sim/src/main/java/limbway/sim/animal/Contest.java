package limbway.sim.animal;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.sim.chance.Chance;
import limbway.sim.chance.Name;
import limbway.sim.chance.Purpose;
import limbway.sim.chance.Stream;

/**
 * Who gives way when an animal comes to a place whose stalls are all taken.
 *
 * <p>Strength is the place in the order of rank, 1 for the first evenly down to 0 for the last, plus what the need adds
 * for which the place is used. The stronger wins the more often, the greater the difference: a logit.
 *
 * @source the logistic form of a choice between two as in Luce 1959, Individual Choice Behavior; that hungry animals
 *     invest more in a contest is common practice, no source
 */
public final class Contest {

    private final CompanySettings settings;
    private final ResourceKind[] kinds;
    private final long[] keys;
    private final double[] standing;
    private final Stream[] chances;

    /**
     * Contests in one group.
     *
     * @param group all animals, by number
     * @param resources the resources of the enclosure
     * @param settings how strictly the stronger wins
     * @param chance chance of the replication
     */
    public Contest(List<Ape> group, List<Resource> resources, CompanySettings settings, Chance chance) {
        this.settings = settings;
        kinds = resources.stream().map(Resource::kind).toArray(ResourceKind[]::new);
        keys = resources.stream().mapToLong(r -> Name.key(r.id())).toArray();
        int[] ranks = group.stream()
                .mapToInt(ape -> ape.animal().rank())
                .sorted()
                .distinct()
                .toArray();
        standing = group.stream()
                .mapToDouble(ape -> standing(ape.animal().rank(), ranks))
                .toArray();
        chances = group.stream()
                .map(ape -> chance.stream(ape.animal().name(), Purpose.CONTEST))
                .toArray(Stream[]::new);
    }

    private static double standing(int rank, int[] ranks) {
        if (ranks.length == 1) {
            return 1;
        }
        int before = 0;
        while (ranks[before] < rank) {
            before++;
        }
        return 1 - (double) before / (ranks.length - 1);
    }

    /**
     * Whom an animal challenges at a place where it found no stall: the last in rank of those that it may challenge. It
     * never challenges who follows it or whom it follows, nor anybody at a nest that somebody owns.
     *
     * @param ape who came
     * @param resource where it is
     * @param stalls who uses what
     * @param displaceable whether a holder may be driven away at all
     * @return the holder of a stall, or nothing
     */
    public Optional<Ape> challenged(Ape ape, int resource, Stalls stalls, Predicate<Ape> displaceable) {
        if (stalls.isOwned(resource)) {
            return Optional.empty();
        }
        Ape last = null;
        for (Ape holder : stalls.holders(resource)) {
            if (displaceable.test(holder) && !areTied(ape, holder) && (last == null || isBelow(holder, last))) {
                last = holder;
            }
        }
        return Optional.ofNullable(last);
    }

    private static boolean isBelow(Ape one, Ape other) {
        int ranks = Integer.compare(one.animal().rank(), other.animal().rank());
        return ranks > 0 || (ranks == 0 && one.number() > other.number());
    }

    private static boolean areTied(Ape one, Ape other) {
        return follows(one, other) || follows(other, one);
    }

    private static boolean follows(Ape one, Ape other) {
        return one.animal().follows().filter(other.animal().name()::equals).isPresent();
    }

    /**
     * Whether an animal drives another from its stall. One draw decides, keyed by the challenger's last decision and the
     * place.
     *
     * @param challenger who came; its needs are up to date
     * @param resource number of the place
     * @param holder who holds the stall; its needs are up to date
     * @param heldJ what the holder has booked as eaten and still has in hand [J]
     * @param heldMl what it has booked as drunk and not drunk yet [ml]
     * @return true if the challenger takes the stall
     */
    public boolean isWon(Ape challenger, int resource, Ape holder, double heldJ, double heldMl) {
        double lead = standing[challenger.number()]
                - standing[holder.number()]
                + settings.hungerInContest()
                        * (need(challenger, resource, 0, 0) - need(holder, resource, heldJ, heldMl));
        return chances[challenger.number()].uniform(challenger.lastDecision(), keys[resource])
                < shareWon(settings.contestSharpness(), lead);
    }

    private double need(Ape ape, int resource, double heldJ, double heldMl) {
        Needs needs = ape.needs();
        return switch (kinds[resource]) {
            case FOOD -> share(needs.missingJ() + heldJ, ape.body().hungriestJ());
            case WATER -> share(needs.missingMl() + heldMl, ape.body().thirstiestMl());
            case SHADE, NEST, RETREAT -> needs.fatigue();
        };
    }

    private static double share(double missing, double greatest) {
        return Math.min(1, Math.max(0, missing / greatest));
    }

    /**
     * How often a challenger wins.
     *
     * @param sharpness 0 for a lottery; infinite for always the stronger
     * @param lead its strength less that of the other
     * @return share, 0 to 1; one half between equals
     */
    static double shareWon(double sharpness, double lead) {
        return lead == 0 ? 0.5 : 1 / (1 + StrictMath.exp(-sharpness * lead));
    }
}
