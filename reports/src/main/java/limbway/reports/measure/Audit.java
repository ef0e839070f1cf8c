package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.explain.GroundReasons;
import limbway.model.volume.UsableVolume;
import limbway.model.volume.VolumeSettings;
import limbway.sim.habitat.Habitat;

/**
 * What can be said against a design before any animal lives in it.
 *
 * @param findings all findings, those to mend first
 * @param groundM2 area within the outline of the ground [m²]
 * @param grossM3 all room over it, up to a roof of mesh or else the highest thing plus the longest overhead reach of the
 *     group [m³]
 */
public record Audit(List<Finding> findings, double groundM2, double grossM3) {

    /** Keeps a copy of the list. */
    public Audit {
        findings = List.copyOf(findings);
    }

    /**
     * Audits a layout for its group of animals.
     *
     * @param habitat the layout, compiled
     * @return the findings
     */
    public static Audit of(Habitat habitat) {
        Map<Body, GroundReasons> reasons = new LinkedHashMap<>();
        for (Body body : habitat.bodies()) {
            reasons.put(body, new GroundReasons(habitat.layout().enclosure(), habitat.routes(body)));
        }
        List<Finding> findings = new ArrayList<>();
        findings.addAll(new ReachAudit(habitat, reasons).findings());
        findings.addAll(new SupportAudit(habitat, reasons).findings());
        findings.addAll(new StructureAudit(habitat).findings());
        Set<String> told = findings.stream()
                .filter(finding -> finding.kind().equals(SupportAudit.GAP_FOR_SOME))
                .map(Finding::place)
                .collect(Collectors.toCollection(TreeSet::new));
        findings.addAll(new StepAudit(habitat, told).findings());
        findings.addAll(new DoorAudit(habitat).findings());
        findings.addAll(built(habitat));
        findings.addAll(new BarrierAudit(habitat).findings());
        findings.addAll(new KeepingAudit(habitat).findings());
        findings.addAll(new StationAudit(habitat).findings());
        findings.addAll(new ClosureAudit(habitat).findings());
        findings.addAll(new SightAudit(habitat).findings());
        findings.sort(Comparator.comparing(Finding::weight));
        Enclosure enclosure = habitat.layout().enclosure();
        double groundM2 = enclosure.ground().outline().areaM2();
        double topM = VolumeSettings.commonTopM(enclosure, habitat.bodies());
        return new Audit(findings, groundM2, UsableVolume.grossM3(enclosure, topM));
    }

    /** What speaks against the things themselves, whatever leads over them. */
    private static List<Finding> built(Habitat habitat) {
        Enclosure enclosure = habitat.layout().enclosure();
        List<Finding> findings = new ArrayList<>(new StrengthAudit(habitat).findings());
        findings.addAll(new LimpAudit(habitat).findings());
        findings.addAll(new OpeningAudit(habitat).findings());
        findings.addAll(new WireAudit(enclosure).findings());
        findings.addAll(WearAudit.findings(enclosure.supports()));
        return findings;
    }

    /**
     * The findings, those that say the same of several bodies or places put together.
     *
     * @return groups, those to mend first
     */
    public List<FindingGroup> groups() {
        return FindingGroup.of(findings);
    }

    /**
     * Whether something must be mended.
     *
     * @return true if at least one finding has that weight
     */
    public boolean mustMend() {
        return findings.stream().anyMatch(finding -> finding.weight() == Weight.MEND);
    }
}
