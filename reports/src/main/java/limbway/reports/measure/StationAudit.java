package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.ResourceKind;
import limbway.sim.habitat.Habitat;

/**
 * Platforms and feeders against the number of animals: one platform more than animals, a feeder for each. Common practice,
 * no source.
 */
final class StationAudit {

    private final Habitat habitat;
    private final List<Finding> findings = new ArrayList<>();

    StationAudit(Habitat habitat) {
        this.habitat = habitat;
    }

    List<Finding> findings() {
        Enclosure enclosure = habitat.layout().enclosure();
        int animals = habitat.animals().size();
        int feeders = (int) enclosure.resources().stream()
                .filter(resource -> resource.kind() == ResourceKind.FOOD)
                .count();
        compare("few-platforms", enclosure.platforms().size(), "platform", animals + 1, "one more than there are");
        compare("few-feeders", feeders, "feeder", animals, "one for each");
        return findings;
    }

    private void compare(String kind, int found, String noun, int wanted, String rule) {
        if (found >= wanted) {
            return;
        }
        int animals = habitat.animals().size();
        String text = found + " " + noun + (found == 1 ? "" : "s") + " for " + animals
                + (animals == 1 ? " animal: " : " animals: ") + "common practice is " + rule + " (no source)";
        findings.add(new Finding(
                kind,
                Weight.NOTE,
                "",
                "",
                OptionalDouble.of(found),
                noun + "s",
                text,
                "bring the number to " + wanted + ", apart from each other",
                text,
                Optional.empty()));
    }
}
