package limbway.sim.animal;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import limbway.model.study.Animal;
import limbway.sim.habitat.PlaceCharacter;

/**
 * Who is where, or on the way to where, for those to whom the others matter.
 *
 * <p>An animal that is on its way counts as where it goes: the others see it coming.
 */
public final class Company {

    /** Nobody. */
    public static final int NOBODY = -1;

    private final int[] standing;
    private final int[] group;
    private final int[] followed;
    private final int[][] followers;
    private final int[] start;

    /**
     * A group of which nobody has come anywhere yet.
     *
     * @param animals the animals in the order of the study
     */
    public Company(List<Animal> animals) {
        int count = animals.size();
        List<String> names = animals.stream().map(Animal::name).toList();
        List<String> groups = animals.stream().map(Animal::group).distinct().toList();
        standing = new int[count];
        List<Integer> byRank = IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingInt((Integer i) -> animals.get(i).rank())
                        .thenComparingInt(i -> i))
                .toList();
        for (int place = 0; place < count; place++) {
            standing[byRank.get(place)] = place;
        }
        group = animals.stream().mapToInt(a -> groups.indexOf(a.group())).toArray();
        followed = animals.stream()
                .mapToInt(a -> a.follows().map(names::indexOf).orElse(NOBODY))
                .toArray();
        followers = new int[count][];
        for (int i = 0; i < count; i++) {
            int leader = i;
            followers[i] =
                    IntStream.range(0, count).filter(j -> followed[j] == leader).toArray();
        }
        start = IntStream.generate(() -> Ape.NONE).limit(count).toArray();
    }

    /**
     * Takes it that an animal is at a place, or on the way there.
     *
     * @param animal its number
     * @param newStart number of a start of its passages
     */
    public void see(int animal, int newStart) {
        start[animal] = newStart;
    }

    /**
     * Who follows an animal.
     *
     * @param animal its number
     * @return a new array of numbers
     */
    public int[] followersOf(int animal) {
        return followers[animal].clone();
    }

    /**
     * Whether two animals are within a distance of each other.
     *
     * @param one number of an animal
     * @param other number of another
     * @param withinM distance [m]
     * @param character the places
     * @return true if both are somewhere and no farther apart
     */
    public boolean areTogether(int one, int other, double withinM, PlaceCharacter character) {
        return start[one] != Ape.NONE
                && start[other] != Ape.NONE
                && character.separationM(start[one], start[other]) <= withinM;
    }

    boolean isLeaderNear(int animal, int at, PlaceCharacter character, double withinM) {
        int leader = followed[animal];
        return leader != NOBODY && start[leader] != Ape.NONE && character.separationM(at, start[leader]) <= withinM;
    }

    /**
     * What the others take from a place and add to it.
     *
     * @param animal who weighs the place
     * @param at start at which it would be
     * @param character the places
     * @param worth how much each term counts
     * @param scales over what distances
     * @return worth, negative where others keep it away
     */
    double worth(int animal, int at, PlaceCharacter character, WorthSettings worth, WorthScales scales) {
        boolean companion = false;
        boolean dominant = false;
        boolean stranger = false;
        boolean leader = false;
        for (int other = 0; other < start.length; other++) {
            if (other == animal || start[other] == Ape.NONE) {
                continue;
            }
            double apartM = character.separationM(at, start[other]);
            if (group[other] != group[animal]) {
                stranger |= apartM <= scales.strangersM();
            } else {
                boolean bound = followed[animal] == other || followed[other] == animal;
                leader |= followed[animal] == other && apartM <= scales.companyM();
                companion |= apartM <= scales.companyM();
                dominant |= !bound && standing[other] < standing[animal] && apartM <= scales.dominantM();
            }
        }
        return (companion ? worth.company() : 0)
                - (dominant ? worth.dominant() : 0)
                - (stranger ? worth.strangers() : 0)
                + (leader ? worth.following() : 0);
    }
}
