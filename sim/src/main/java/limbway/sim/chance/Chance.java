package limbway.sim.chance;

/**
 * The chance of one replication: the same for every layout, so that layouts are compared under the same luck.
 *
 * @param seed master seed of the study, 1 to 2147483647
 * @param replication number of the replication, from 1
 */
public record Chance(int seed, int replication) {

    /**
     * The stream of one animal for one purpose.
     *
     * <p>Keyed by the animal's name, not its number: a group with one more animal leaves the others' chance alone.
     *
     * @param animal name of the animal
     * @param purpose what the numbers decide
     * @return the stream
     */
    public Stream stream(String animal, Purpose purpose) {
        long key = SplitMix64.at(SplitMix64.at(seed, 0), replication);
        return new Stream(SplitMix64.at(SplitMix64.at(key, Name.key(animal)), purpose.key()));
    }
}
