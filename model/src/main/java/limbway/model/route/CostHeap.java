package limbway.model.route;

import java.util.Arrays;

/**
 * A queue of holds by cost: a heap of four children a node over single numbers, cost in the upper half and hold in the
 * lower, so that nothing is boxed and equal costs leave in order of the hold.
 *
 * <p>A hold may be queued again at a lower cost; the one who reads skips what is out of date.
 */
final class CostHeap {

    private long[] heap = new long[256];
    private int size;

    boolean isEmpty() {
        return size == 0;
    }

    void add(int cost, int hold) {
        if (size == heap.length) {
            heap = Arrays.copyOf(heap, 2 * size);
        }
        long entry = ((long) cost << 32) | hold;
        int i = size++;
        while (i > 0) {
            int parent = (i - 1) >> 2;
            if (heap[parent] <= entry) {
                break;
            }
            heap[i] = heap[parent];
            i = parent;
        }
        heap[i] = entry;
    }

    /** Removes the least entry: cost in the upper 32 bits, hold in the lower. */
    long poll() {
        long least = heap[0];
        long last = heap[--size];
        int i = 0;
        while (true) {
            int child = 4 * i + 1;
            if (child >= size) {
                break;
            }
            int end = Math.min(child + 4, size);
            int best = child;
            for (int c = child + 1; c < end; c++) {
                if (heap[c] < heap[best]) {
                    best = c;
                }
            }
            if (heap[best] >= last) {
                break;
            }
            heap[i] = heap[best];
            i = best;
        }
        heap[i] = last;
        return least;
    }
}
