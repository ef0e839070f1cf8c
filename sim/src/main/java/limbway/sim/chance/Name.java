package limbway.sim.chance;

/** Turns a name into a number that is the same on every machine and in every version of Java. */
public final class Name {

    private static final long OFFSET = 0xcbf29ce484222325L;
    private static final long PRIME = 0x100000001b3L;

    private Name() {}

    /**
     * The number of a name.
     *
     * @param name any text
     * @return 64 bits
     * @source FNV-1a, as in draft-eastlake-fnv, over the two bytes of each character, the lower byte first
     */
    public static long key(String name) {
        long hash = OFFSET;
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            hash = (hash ^ (c & 0xff)) * PRIME;
            hash = (hash ^ (c >>> 8)) * PRIME;
        }
        return hash;
    }
}
