package limbway.reports.measure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

import limbway.model.body.Body;
import limbway.model.graph.MoveCosts;
import limbway.model.volume.UsableVolume;
import limbway.model.volume.VolumeSettings;
import limbway.sim.habitat.Habitat;

/**
 * How much of the room in a layout each body can reach.
 *
 * @param usable room within reach by name of the body, all up to the same height
 */
public record Room(Map<String, UsableVolume> usable) {

    /** Keeps a copy in the same order. */
    public Room {
        usable = Collections.unmodifiableMap(new LinkedHashMap<>(usable));
    }

    /**
     * Measures the room for every body of the group.
     *
     * @param habitat the layout, compiled
     * @return the volumes in the order of the bodies
     */
    public static Room of(Habitat habitat) {
        var enclosure = habitat.layout().enclosure();
        VolumeSettings settings =
                VolumeSettings.standard().withTop(VolumeSettings.commonTopM(enclosure, habitat.bodies()));
        Map<String, UsableVolume> usable = new LinkedHashMap<>();
        for (Body body : habitat.bodies()) {
            MoveCosts costs = MoveCosts.of(habitat.graph(), body, habitat.energy());
            usable.put(body.name(), UsableVolume.of(enclosure, habitat.graph(), costs, settings));
        }
        return new Room(usable);
    }
}
