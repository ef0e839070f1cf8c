package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Material;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.strength.Wear;

/** What wears out, by material: common practice, no source. Living stems are left out; they mend themselves. */
final class WearAudit {

    private WearAudit() {}

    static List<Finding> findings(List<Support> supports) {
        List<Finding> findings = new ArrayList<>();
        for (Material material : Material.values()) {
            List<String> names = supports.stream()
                    .filter(support -> support.material() == material && support.kind() != SupportKind.TRUNK)
                    .map(Support::id)
                    .toList();
            Wear.of(material).filter(words -> !names.isEmpty()).ifPresent(words -> {
                String text = names.size() + (names.size() == 1 ? " support" : " supports") + " of " + material.word()
                        + ": " + words + " (common practice, no source)";
                findings.add(Finding.alone(
                        "wear",
                        Weight.NOTE,
                        String.join(", ", names),
                        names.size(),
                        "supports",
                        text,
                        "inspect them on fixed days and write down what was found"));
            });
        }
        return findings;
    }
}
