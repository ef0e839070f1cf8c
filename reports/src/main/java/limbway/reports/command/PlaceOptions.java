package limbway.reports.command;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import picocli.CommandLine.Option;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.study.Variant;
import limbway.sim.experiment.placement.PlacingRules;
import limbway.sim.experiment.placement.PlacingTask;

/** What is placed, among which candidates, and what a place must satisfy. */
final class PlaceOptions {

    private static final List<String> KINDS = List.of("food", "water", "shade", "nest", "retreat", "platform");

    @Option(
            names = "--move",
            split = ",",
            paramLabel = "NAME,...",
            description = "Places to be moved, all of one kind; without it all places for food.")
    private List<String> move;

    @Option(
            names = "--add",
            paramLabel = "K",
            converter = WholeNumber.class,
            description = "Add so many places instead of moving any.")
    private Integer add;

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description =
                    "What is added: food, water, shade, nest, retreat, or platform for a rest platform with a place to "
                            + "rest; without it food.")
    private String kind;

    @Option(
            names = "--spacing",
            paramLabel = "METRES",
            converter = PlaceNumber.Spacing.class,
            description =
                    "Make candidates at this distance along supports and on platforms; without it 1.0, or those that "
                            + "the scenario gives under placing.")
    Double spacingM;

    @Option(
            names = "--keeper-reach",
            paramLabel = "METRES",
            converter = Metres.class,
            description = "Greatest height that a keeper reaches from the ground.")
    private Double keeperReachM;

    @Option(names = "--hoist", description = "Places are let down by a hoist: the reach of keepers does not count.")
    private boolean hoist;

    @Option(
            names = "--apart",
            paramLabel = "METRES",
            converter = Metres.class,
            description = "Least distance between two of the places; without it 0.")
    private Double apartM;

    @Option(
            names = "--load",
            paramLabel = "KG",
            converter = PlaceNumber.Load.class,
            description =
                    "Weight of what is put up: where a bearing is stated, it must bear this and the heaviest animal.")
    private Double loadKg;

    @Option(names = "--shaded", description = "Only where shade lies at all hours of feeding.")
    private boolean shaded;

    @Option(
            names = "--heat",
            paramLabel = "on|off",
            converter = OnOff.Reader.class,
            description = "Whether places that are hotter than those of now are left out; without it on.")
    private OnOff heat;

    @Option(
            names = "--barrier-distance",
            paramLabel = "METRES",
            converter = Metres.class,
            description = "Least distance from walls, glass and water; without it 0.")
    private Double barrierM;

    /** The rules: what the command line does not say is as given. */
    PlacingRules rules(PlacingRules given) {
        return new PlacingRules(
                keeperReachM == null ? given.keeperReachM() : OptionalDouble.of(keeperReachM),
                hoist || given.hoist(),
                apartM == null ? given.apartM() : apartM,
                loadKg == null ? given.loadKg() : OptionalDouble.of(loadKg),
                shaded || given.shaded(),
                heat == null ? given.noHotter() : heat == OnOff.ON,
                barrierM == null ? given.barrierM() : barrierM);
    }

    PlacingTask task(Variant layout) throws Refusal {
        if (add != null) {
            return added(layout);
        }
        if (kind != null) {
            throw Refusal.of(
                    "a kind is named, but nothing is added",
                    "--kind " + kind,
                    "--kind together with --add",
                    "write --add 1 too");
        }
        List<Resource> all = layout.enclosure().resources();
        if (move == null) {
            List<String> food = all.stream()
                    .filter(resource -> resource.kind() == ResourceKind.FOOD)
                    .map(Resource::id)
                    .toList();
            if (food.isEmpty()) {
                throw Refusal.of(
                        "there is no place for food to move",
                        "",
                        "",
                        "name places with --move, or add some with --add");
            }
            return PlacingTask.moving(ResourceKind.FOOD, food);
        }
        List<String> known = all.stream().map(Resource::id).toList();
        List<String> ids = new ArrayList<>();
        for (String id : move) {
            if (!known.contains(id)) {
                throw Refusal.unknown("place to move", id, known);
            }
            if (!ids.contains(id)) {
                ids.add(id);
            }
        }
        List<ResourceKind> kinds = all.stream()
                .filter(resource -> ids.contains(resource.id()))
                .map(Resource::kind)
                .distinct()
                .toList();
        if (kinds.size() > 1) {
            throw Refusal.of(
                    "places of different kinds are moved together",
                    String.join(", ", kinds.stream().map(ResourceKind::word).toList()),
                    "places of one kind",
                    "place one kind after the other");
        }
        return PlacingTask.moving(kinds.get(0), ids);
    }

    private PlacingTask added(Variant layout) throws Refusal {
        if (move != null) {
            throw Refusal.of(
                    "places are moved and added at once",
                    "--move and --add",
                    "one of the two",
                    "place one after the other: write the first answer into a variant");
        }
        String word = kind == null ? "food" : kind;
        if (!KINDS.contains(word)) {
            throw Refusal.unknown("kind of place", word, KINDS);
        }
        boolean platform = word.equals("platform");
        ResourceKind what =
                platform ? ResourceKind.SHADE : ResourceKind.valueOf(word.toUpperCase(java.util.Locale.ROOT));
        return PlacingTask.adding(what, add, platform, layout.enclosure());
    }
}
