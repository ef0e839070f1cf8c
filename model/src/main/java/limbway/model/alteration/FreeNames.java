package limbway.model.alteration;

import java.util.HashSet;
import java.util.Set;

import limbway.model.enclosure.Enclosure;

/** Names for what is added that nothing else has. */
public final class FreeNames {

    /** What comes before the number of a link. */
    private static final String LINK = "link";

    private FreeNames() {}

    /**
     * A free name for a link that is proposed, the same whichever command proposes it.
     *
     * @param enclosure what stands there
     * @param place place of the link among those that are added together, from 0
     * @return for example {@code link-1}
     */
    public static String ofLink(Enclosure enclosure, int place) {
        return of(enclosure, LINK, place);
    }

    /**
     * A free name.
     *
     * @param enclosure what stands there
     * @param stem what comes before the number, such as {@code link}
     * @param place place of the addition among those of this stem that are added together, from 0
     * @return for example {@code link-1}: the free one with the lowest number after those of the additions before it
     */
    public static String of(Enclosure enclosure, String stem, int place) {
        Set<String> used = used(enclosure);
        int found = -1;
        int number = 0;
        while (found < place) {
            number++;
            found += used.contains(stem + "-" + number) ? 0 : 1;
        }
        return stem + "-" + number;
    }

    private static Set<String> used(Enclosure enclosure) {
        Set<String> used = new HashSet<>();
        enclosure.supports().forEach(support -> used.add(support.id()));
        enclosure.platforms().forEach(platform -> used.add(platform.id()));
        enclosure.crowns().forEach(crown -> used.add(crown.id()));
        enclosure.panels().forEach(panel -> used.add(panel.id()));
        enclosure.bounds().barriers().forEach(barrier -> used.add(barrier.id()));
        enclosure.bounds().hotWires().forEach(wire -> used.add(wire.id()));
        enclosure.bounds().doors().forEach(door -> used.add(door.id()));
        enclosure.shading().covers().forEach(cover -> used.add(cover.id()));
        enclosure.shading().buildings().forEach(building -> used.add(building.id()));
        enclosure.shading().neighbours().forEach(neighbour -> used.add(neighbour.id()));
        enclosure.resources().forEach(resource -> used.add(resource.id()));
        return used;
    }
}
