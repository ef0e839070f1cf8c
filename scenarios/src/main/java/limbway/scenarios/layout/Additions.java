package limbway.scenarios.layout;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;

/**
 * Finds what an animal that knows one layout would find new in another: what is not there in the first, or stands
 * elsewhere, or has another size or stuff.
 *
 * <p>How far something gives way does not make it new, so that a mast to which a rope was tied is still the old mast.
 */
public final class Additions {

    private Additions() {}

    /**
     * What is new.
     *
     * @param known the layout that animals know
     * @param other another layout of the same place
     * @return ids of supports, platforms, panels and resources of {@code other}
     */
    public static Set<String> to(Enclosure known, Enclosure other) {
        Set<Object> old = new HashSet<>(known.resources());
        known.supports().forEach(support -> old.add(look(support)));
        known.platforms().forEach(platform -> old.add(look(platform)));
        known.panels().forEach(panel -> old.add(look(panel)));
        Set<String> ids = new TreeSet<>();
        for (Support support : other.supports()) {
            addIf(!old.contains(look(support)), support.id(), ids);
        }
        for (Platform platform : other.platforms()) {
            addIf(!old.contains(look(platform)), platform.id(), ids);
        }
        for (Panel panel : other.panels()) {
            addIf(!old.contains(look(panel)), panel.id(), ids);
        }
        for (Resource resource : other.resources()) {
            addIf(!old.contains(resource), resource.id(), ids);
        }
        return ids;
    }

    private static void addIf(boolean isNew, String id, Set<String> ids) {
        if (isNew) {
            ids.add(id);
        }
    }

    private static List<Object> look(Support s) {
        return List.of(s.id(), s.kind(), s.axis(), s.diameterM(), s.tipDiameterM(), s.material());
    }

    private static List<Object> look(Platform p) {
        return List.of(p.id(), p.kind(), p.outline(), p.zM());
    }

    private static List<Object> look(Panel p) {
        return List.of(p.id(), p.kind(), p.facet(), p.openingM(), p.strandDiameterM());
    }
}
