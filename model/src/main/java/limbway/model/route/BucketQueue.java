package limbway.model.route;

import java.util.Arrays;

/**
 * A queue of holds by cost, sorted only into buckets of equal width that follow each other in a ring.
 *
 * <p>Within a bucket holds leave in any fixed order, so one may leave before its cost is final; it is then queued again.
 * With buckets about as wide as a cheap move this happens seldom, and nothing is ever sorted. Nothing is boxed.
 *
 * @source Dial 1969, Commun. ACM 12:632-633, doi 10.1145/363269.363610, with wide buckets as in delta-stepping, Meyer and
 *     Sanders 2003, doi 10.1016/S0196-6774(03)00076-2 (both from memory)
 */
final class BucketQueue {

    private static final int NONE = -1;

    private final int shift;
    private final int mask;
    private final int[] first;
    private int[] holds = new int[1024];
    private int[] next = new int[1024];
    private int entries;
    private int free = NONE;
    private int waiting;
    private int bucket;

    /**
     * An empty queue.
     *
     * @param shift width of a bucket as a power of two
     * @param greatestStep no cost exceeds that of the hold that left last by more
     */
    BucketQueue(int shift, int greatestStep) {
        this.shift = shift;
        int buckets = Integer.highestOneBit(Math.max(1, (greatestStep >> shift) + 1)) << 1;
        this.mask = buckets - 1;
        this.first = new int[buckets];
        Arrays.fill(first, NONE);
    }

    boolean isEmpty() {
        return waiting == 0;
    }

    /** Queues a hold; its cost must not lie before the bucket in hand. */
    void add(int cost, int hold) {
        int entry = free;
        if (entry == NONE) {
            entry = entries++;
            if (entry == holds.length) {
                holds = Arrays.copyOf(holds, 2 * entry);
                next = Arrays.copyOf(next, 2 * entry);
            }
        } else {
            free = next[entry];
        }
        int index = (cost >> shift) & mask;
        holds[entry] = hold;
        next[entry] = first[index];
        first[index] = entry;
        waiting++;
    }

    /** Removes a hold of the nearest bucket that has one. */
    int poll() {
        while (first[bucket & mask] == NONE) {
            bucket++;
        }
        int entry = first[bucket & mask];
        first[bucket & mask] = next[entry];
        next[entry] = free;
        free = entry;
        waiting--;
        return holds[entry];
    }
}
