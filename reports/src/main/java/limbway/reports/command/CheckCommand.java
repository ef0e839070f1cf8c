package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

import limbway.model.volume.UsableVolume;
import limbway.reports.data.Json;
import limbway.reports.measure.Audit;
import limbway.reports.measure.Finding;
import limbway.reports.measure.FindingGroup;
import limbway.reports.measure.Room;
import limbway.reports.measure.Weight;
import limbway.reports.words.Cautions;
import limbway.reports.words.Figures;
import limbway.sim.habitat.Habitat;

/** Reads a scenario and lists what speaks against its design. */
@Command(
        name = "check",
        description = {
            "Lists what can be said against a design before any animal lives in it.",
            "Places that a body cannot come to, or only over the ground; supports too thick to grip; gaps that only "
                    + "some can cross; single ways that one animal can bar; places and food against the size of the "
                    + "group; what may break, bends away, wears, is too fine or too wide to climb, lies behind live wire or a "
                    + "shut door; where animals come near barriers; the room that each body can reach. What must be mended comes first.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway check SCENARIO [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway check yard.yaml",
            "  limbway check yard.yaml --variant \"high and linked\" --json findings.json",
            "",
            "Exit code: 0 nothing must be mended; 1 something must be; 2 the input is wrong; 3 it could not be done.",
            "",
            Cautions.IN_SHORT
        })
final class CheckCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, NotDone {
        Question question = Question.of(options);
        Habitat habitat = question.habitat();
        Audit audit = Audit.of(habitat);
        var out = spec.commandLine().getOut();
        for (FindingGroup group : audit.groups()) {
            out.println(line(group, habitat.bodies().size()));
        }
        for (String note : question.read().notes()) {
            out.println("note     scenario: " + note);
        }
        Room room = Room.of(question.habitat());
        roomLines(room, audit).forEach(out::println);
        out.println(summary(audit));
        if (options.json != null) {
            OutFolder.write(options.json, Json.text(answer(question, audit, room)));
        }
        return audit.mustMend() ? ExitCode.MUST_MEND : ExitCode.DONE;
    }

    private static String line(FindingGroup group, int bodies) {
        Finding finding = group.strictest();
        String weight = String.format(Locale.ROOT, "%-8s ", finding.weight().word());
        String mend = finding.mend().equals("nothing") ? "" : ". Mend: " + finding.mend();
        return weight + finding.kind() + ": " + group.text(bodies) + mend;
    }

    private static String summary(Audit audit) {
        List<String> counts = new ArrayList<>();
        for (Weight weight : Weight.values()) {
            long count = audit.groups().stream()
                    .filter(group -> group.strictest().weight() == weight)
                    .count();
            counts.add(count + " " + weight.word());
        }
        return "found: " + String.join(", ", counts) + "; ground " + Figures.decimals(audit.groundM2(), 0) + " m²";
    }

    private static List<String> roomLines(Room room, Audit audit) {
        Map<String, List<String>> bodies = new LinkedHashMap<>();
        room.usable().forEach((body, volume) -> bodies.computeIfAbsent(roomText(volume), k -> new ArrayList<>())
                .add(body));
        List<String> lines = new ArrayList<>();
        lines.add("within reach, of " + Figures.decimals(audit.grossM3(), 0) + " m³ of room over "
                + Figures.decimals(audit.groundM2(), 0)
                + " m² (± two standard errors of the sampling; floor is the ground and the decks to which it comes):");
        bodies.forEach((text, names) -> lines.add("  " + String.join(", ", names) + ": " + text));
        return lines;
    }

    private static String roomText(UsableVolume volume) {
        return Figures.decimals(volume.m3(), 1) + " ± "
                + Figures.decimals(2 * volume.standardErrorM3(), 1) + " m³, "
                + Figures.percent(volume.share()) + " of the room, "
                + Figures.percent(volume.offGroundM3() / volume.grossM3()) + " without standing on the ground; "
                + Figures.decimals(volume.perGroundM2(), 1) + " m³ per m² of plan, "
                + Figures.decimals(volume.perFloorM2(), 1) + " m³ per m² of floor ("
                + Figures.decimals(volume.floorM2(), 0) + " m²)";
    }

    private static Map<String, Object> details(UsableVolume volume) {
        Map<String, Object> details = new LinkedHashMap<>();
        details.put("m3", volume.m3());
        details.put("standard_error_m3", volume.standardErrorM3());
        details.put("off_ground_m3", volume.offGroundM3());
        details.put("per_ground_m2", volume.perGroundM2());
        details.put("floor_m2", volume.floorM2());
        details.put("per_floor_m2", volume.perFloorM2());
        details.put("share_of_gross", volume.share());
        details.put("reach_m", volume.reachM());
        details.put("top_m", volume.topM());
        return details;
    }

    private static Map<String, Object> answer(Question question, Audit audit, Room room) {
        List<Object> findings = new ArrayList<>();
        for (Finding finding : audit.findings()) {
            Map<String, Object> object = new LinkedHashMap<>();
            object.put("kind", finding.kind());
            object.put("weight", finding.weight().word());
            object.put("place", finding.place());
            object.put("body", finding.body());
            object.put("figure", Json.orNull(finding.figure()));
            object.put("unit", finding.unit());
            object.put("text", finding.text());
            object.put("mend", finding.mend());
            findings.add(object);
        }
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("scenario", question.fileName());
        root.put("layout", question.layout().name());
        root.put("findings", findings);
        root.put("notes", question.read().notes());
        root.put("ground_m2", audit.groundM2());
        root.put("gross_m3", audit.grossM3());
        Map<String, Object> usable = new LinkedHashMap<>();
        Map<String, Object> details = new LinkedHashMap<>();
        room.usable().forEach((body, volume) -> {
            usable.put(body, volume.m3());
            details.put(body, details(volume));
        });
        root.put("usable_m3", usable);
        root.put("usable", details);
        return root;
    }
}
