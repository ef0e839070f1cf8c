package limbway.reports.command;

import java.io.PrintWriter;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.explain.GroundReason;
import limbway.model.explain.flip.FlipAnswer;
import limbway.model.explain.flip.Flips;
import limbway.model.explain.flip.TripQuestion;
import limbway.model.graph.RouteGraph;
import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.reports.data.Json;
import limbway.reports.measure.SafeBuilding;
import limbway.reports.measure.TripExplainer;
import limbway.reports.words.Cautions;
import limbway.reports.words.Figures;
import limbway.reports.words.MendText;
import limbway.reports.words.ReasonText;
import limbway.sim.habitat.Habitat;

/** Says which way one body takes between two resources, and why. */
@Command(
        name = "explain",
        description = {
            "Says which way an animal takes from one place to another, and why.",
            "Both ways, over the ground and off it, are told with what they cost, part by part, with what is missing "
                    + "where there is no way off the ground, and with what to try.",
            "Where the ground is used, the smallest single changes are looked for that turn the trip off the ground: one more "
                    + "rope, a place put higher or elsewhere, a shorter gap, a thinner support, a rope tied otherwise. Each is "
                    + "tried by compiling the changed layout, and printed as a line to put under changes.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway explain SCENARIO --body BODY --from PLACE --to PLACE [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway explain yard.yaml --body \"adult female\" --from nest-1 --to hatch",
            "  limbway explain yard.yaml --body juvenile --from tray --to hatch --json why.json",
            "  limbway explain cage.yaml --body juvenile --from nest-1 --to hatch --at 19:30",
            "",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done.",
            "",
            Cautions.IN_SHORT
        })
final class ExplainCommand implements Callable<Integer> {

    /** What stands in the column of supports of the ground. */
    private static final String GROUND = "ground";

    @Mixin
    private CommonOptions options;

    @Option(
            names = "--body",
            required = true,
            paramLabel = "BODY",
            description =
                    "Who: a body of the group, for example \"adult female\"; one that carries an infant is \"adult female "
                            + "and infant\".")
    private String body;

    @Option(
            names = "--from",
            required = true,
            paramLabel = "PLACE",
            description = "Where it starts: a food, water, shade, nest or retreat place of the file, by name.")
    private String from;

    @Option(names = "--to", required = true, paramLabel = "PLACE", description = "Where it goes: another of them.")
    private String to;

    @Option(
            names = "--at",
            paramLabel = "HH:MM",
            converter = TimeOfDay.class,
            description = "With doors as they are at that time; without it with all doors open that ever are.")
    private LocalTime at;

    @Option(
            names = "--flips",
            paramLabel = "on|off",
            converter = OnOff.Reader.class,
            defaultValue = "on",
            description =
                    "Whether to look for the smallest changes that turn the trip off the ground, and for assumed costs "
                            + "on which the answer hangs; takes some seconds in large layouts. Default: on.")
    private OnOff flips;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, NotDone {
        Question question = Question.of(options);
        Habitat habitat = question.habitat();
        TripExplainer explainer = new TripExplainer(
                habitat, body(habitat), at == null ? OptionalInt.empty() : OptionalInt.of(at.toSecondOfDay()));
        int fromNumber = resource(habitat.graph(), from);
        int toNumber = resource(habitat.graph(), to);
        if (fromNumber == toNumber) {
            throw Refusal.of("--from and --to are the same place", to, "two different places", "choose another");
        }
        Search search = explainer.find(fromNumber, toNumber);
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("scenario", question.fileName());
        root.put("layout", question.layout().name());
        root.put("body", body);
        root.put("from", from);
        root.put("to", to);
        root.put("at", at == null ? null : at.toString());
        if (search instanceof Search.Reached ways) {
            GroundReason reason = explainer.reason(fromNumber, toNumber, ways);
            String sentence = ReasonText.sentence(ways, reason, explainer.body());
            print(ways, sentence, habitat.graph(), MendText.of(reason, explainer.body()));
            answer(root, ways, sentence);
            root.put("mend", MendText.of(reason, explainer.body()));
            if (flips == OnOff.ON) {
                findFlips(root, habitat, explainer.question(from, to), reason);
            }
        } else {
            String why = ((Search.Unreachable) search).why();
            spec.commandLine().getOut().println(why);
            answer(root, why);
        }
        if (options.json != null) {
            OutFolder.write(options.json, Json.text(root));
        }
        return ExitCode.DONE;
    }

    private void findFlips(Map<String, Object> root, Habitat habitat, TripQuestion question, GroundReason reason) {
        Enclosure enclosure = habitat.layout().enclosure();
        FlipAnswer answer =
                Flips.find(question, habitat.graph(), reason, new SafeBuilding(enclosure, habitat.bodies()));
        FlipAnswers.lines(answer, reason, enclosure).forEach(spec.commandLine().getOut()::println);
        if (root.get("cheapest_offground_mj") != null) {
            FlipAnswers.firmness(answer).forEach(spec.commandLine().getOut()::println);
        }
        FlipAnswers.put(root, answer, reason, enclosure);
    }

    private Body body(Habitat habitat) throws Refusal {
        List<String> known = habitat.bodies().stream().map(Body::name).toList();
        return habitat.bodies().stream()
                .filter(candidate -> candidate.name().equals(body))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("body in the group", body, known));
    }

    private static int resource(RouteGraph graph, String name) throws Refusal {
        List<String> known = graph.resources().stream().map(Resource::id).toList();
        if (!known.contains(name)) {
            throw Refusal.unknown("resource", name, known);
        }
        return known.indexOf(name);
    }

    private void print(Search.Reached ways, String sentence, RouteGraph graph, String mend) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(Figures.one(body) + " from " + from + " to " + to + ":");
        out.println("  " + sentence + ".");
        ways.overGround().ifPresent(way -> out.println("  over the ground: " + steps(way, graph)));
        out.println("  off the ground:  "
                + ways.offGround().map(way -> steps(way, graph)).orElse("no way"));
        out.println("  " + Figures.percent(ways.offGroundShare()) + " of such trips are made off the ground.");
        if (!mend.equals("nothing")) {
            out.println("  To try: " + mend + ".");
        }
    }

    /** A door with its hours: the way is there only then. */
    private static String throughDoor(Door door) {
        return door.id() + " (a door, open "
                + door.open().stream()
                        .map(hours -> hours.from() + " to " + hours.to())
                        .collect(Collectors.joining(", "))
                + ")";
    }

    /** Length, time, and what the way leads along, each thing once in a row. */
    private static String steps(Way way, RouteGraph graph) {
        List<String> passed = new ArrayList<>();
        for (int i = 0; i < way.holds().size(); i++) {
            if (i > 0 && graph.moveOnGround(way.moves().get(i - 1))) {
                pass(passed, "the ground");
            }
            if (i > 0 && graph.door(way.moves().get(i - 1)) >= 0) {
                pass(
                        passed,
                        throughDoor(graph.doors().get(graph.door(way.moves().get(i - 1)))));
            }
            String support = graph.support(way.holds().get(i));
            if (!support.equals(GROUND)) {
                pass(passed, support);
            }
        }
        return Figures.path(way.lengthM()) + " in " + Figures.decimals(way.seconds(), 0) + " s: "
                + String.join(", ", passed);
    }

    private static void pass(List<String> passed, String step) {
        if (passed.isEmpty() || !passed.get(passed.size() - 1).equals(step)) {
            passed.add(step);
        }
    }

    private static void answer(Map<String, Object> root, Search.Reached ways, String sentence) {
        root.put("cheapest_mj", ways.cheapest().milliJ());
        root.put("cheapest_offground_mj", ways.offGround().map(Way::milliJ).orElse(null));
        root.put("ground_temptation_mj", ways.groundTemptationMilliJ().orElse(null));
        root.put("p_offground", ways.offGroundShare());
        root.put("route", ways.cheapest().holds());
        root.put("route_offground", ways.offGround().map(Way::holds).orElse(List.of()));
        root.put("sentence", sentence);
        root.put("parts", parts(ways.cheapest()));
        root.put(
                "parts_over_ground",
                ways.overGround().map(ExplainCommand::parts).orElse(null));
        root.put("parts_offground", ways.offGround().map(ExplainCommand::parts).orElse(null));
    }

    private static void answer(Map<String, Object> root, String why) {
        for (String key : List.of("cheapest_mj", "cheapest_offground_mj", "ground_temptation_mj", "p_offground")) {
            root.put(key, null);
        }
        root.put("route", new ArrayList<>());
        root.put("route_offground", new ArrayList<>());
        root.put("sentence", why);
    }

    /** Millijoules by part. */
    private static Map<String, Object> parts(Way way) {
        Map<String, Object> parts = new LinkedHashMap<>();
        for (LocomotorMode mode : LocomotorMode.values()) {
            parts.put(mode.part() + "_mj", way.energy().part(mode));
        }
        return parts;
    }
}
