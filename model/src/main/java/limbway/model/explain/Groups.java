package limbway.model.explain;

/** Numbers joined into groups, each known by its least member. */
final class Groups {

    private final int[] parent;

    Groups(int size) {
        parent = new int[size];
        for (int i = 0; i < size; i++) {
            parent[i] = i;
        }
    }

    int of(int number) {
        int root = number;
        while (parent[root] != root) {
            root = parent[root];
        }
        int at = number;
        while (parent[at] != root) {
            int next = parent[at];
            parent[at] = root;
            at = next;
        }
        return root;
    }

    void join(int one, int other) {
        int a = of(one);
        int b = of(other);
        parent[Math.max(a, b)] = Math.min(a, b);
    }
}
