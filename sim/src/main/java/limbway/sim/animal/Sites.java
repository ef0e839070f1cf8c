package limbway.sim.animal;

import java.util.List;

import limbway.model.enclosure.Resource;
import limbway.sim.chance.Name;

/** Places so close together that an animal goes to them as to one: of one kind, on one support or within a metre. */
final class Sites {

    /* How close places on the ground are that are gone to as one [m]: assumption. */
    private static final double SAME_M = 1;

    private final int[] first;
    private final boolean[] shared;
    private final long[] keys;
    private final long[] keysWithin;

    Sites(List<Resource> resources) {
        int count = resources.size();
        first = new int[count];
        shared = new boolean[count];
        keys = new long[count];
        keysWithin = new long[count];
        for (int place = 0; place < count; place++) {
            first[place] = place;
            for (int earlier = place - 1; earlier >= 0; earlier--) {
                if (first[earlier] == earlier && areClose(resources.get(earlier), resources.get(place))) {
                    first[place] = earlier;
                    shared[earlier] = true;
                    shared[place] = true;
                }
            }
            keys[place] = Name.key(resources.get(first[place]).id());
            keysWithin[place] = Name.key("within " + resources.get(place).id());
        }
    }

    private static boolean areClose(Resource one, Resource other) {
        if (one.kind() != other.kind()) {
            return false;
        }
        boolean carried = !one.on().isEmpty() && !other.on().isEmpty();
        return carried ? one.on().equals(other.on()) : one.at().distanceM(other.at()) <= SAME_M;
    }

    /** Key of the draw that all places of a site share: the name of the first. */
    long key(int place) {
        return keys[place];
    }

    /** Key of the draw that decides between the places of a site. */
    long keyWithin(int place) {
        return keysWithin[place];
    }

    /** Whether a site has more than one place. */
    boolean isShared(int place) {
        return shared[place];
    }

    /** Whether two places belong to one site. */
    boolean areOne(int place, int other) {
        return first[place] == first[other];
    }
}
