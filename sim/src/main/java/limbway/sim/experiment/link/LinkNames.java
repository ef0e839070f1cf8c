package limbway.sim.experiment.link;

import java.util.Set;
import java.util.stream.Collectors;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;

/** Names for new links that nothing else has. */
public final class LinkNames {

    private LinkNames() {}

    /**
     * A free name.
     *
     * @param enclosure what stands there
     * @param place place of the link among those added together, from 0
     * @return for example {@code link-1}
     */
    public static String of(Enclosure enclosure, int place) {
        Set<String> used = enclosure.supports().stream().map(Support::id).collect(Collectors.toSet());
        enclosure.platforms().stream().map(Platform::id).forEach(used::add);
        enclosure.resources().forEach(resource -> used.add(resource.id()));
        enclosure.panels().forEach(panel -> used.add(panel.id()));
        int found = -1;
        int number = 0;
        while (found < place) {
            number++;
            found += used.contains("link-" + number) ? 0 : 1;
        }
        return "link-" + number;
    }
}
