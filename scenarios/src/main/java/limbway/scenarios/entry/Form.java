package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import limbway.model.enclosure.ResourceKind;

/** Every kind of entry with its keys: those it must have, and those it may have. */
@SuppressWarnings("ImmutableEnumChecker") // both lists are copies that nobody can change
public enum Form {
    /** The scenario as a whole. */
    SCENARIO(
            List.of("title", "site", "ground", "resources", "animals", "keepers"),
            List.of(
                    "supports",
                    "panels",
                    "barriers",
                    "hot-wires",
                    "doors",
                    "covers",
                    "neighbours",
                    "weather",
                    "survey",
                    "bodies",
                    "visitors",
                    "situation",
                    "assume",
                    "placing",
                    "variants",
                    "sweep")),
    /** Where places may be put, and what such a place must satisfy. */
    PLACING(
            List.of(),
            List.of("candidates", "keeper-reach", "hoist", "apart", "load", "shaded", "no-hotter", "barrier-distance")),
    /** Where on Earth. */
    SITE(List.of("latitude", "longitude", "time-zone"), List.of("elevation", "horizon")),
    /** What can be walked on. */
    GROUND(List.of("outline"), List.of("surface", "obstacles", "heights")),
    /** Heights of the ground. */
    HEIGHTS(List.of(), List.of("points", "grid")),
    /** Heights at equal distances. */
    GRID(List.of("origin", "spacing", "rows"), List.of()),
    /** What cannot be walked over. */
    OBSTACLE(List.of("obstacle", "outline"), List.of()),
    /** A pole or mast. */
    POLE(
            List.of("pole", "at", "height", "diameter", "material"),
            List.of("lean", "tip-diameter", "stiffness", "bears", "sways")),
    /** The lean of a pole. */
    LEAN(List.of("degrees", "towards"), List.of()),
    /** A stiff member. */
    BEAM(List.of("beam", "from", "to", "diameter", "material"), List.of("stiffness", "bears")),
    /** A limb that is free at one end. */
    BRANCH(
            List.of("branch", "from", "to", "diameter"),
            List.of("tip-diameter", "material", "stiffness", "bears", "sways")),
    /** Two rails with rungs. */
    LADDER(List.of("ladder", "from", "to", "diameter", "material"), List.of("stiffness", "bears")),
    /** A rope. */
    ROPE(List.of("rope", "from", "to", "diameter"), List.of("sag", "length", "material", "stiffness", "bears")),
    /** The stem of a tree. */
    TRUNK(
            List.of("trunk", "at", "height", "diameter"),
            List.of(
                    "crown-radius",
                    "crown-base",
                    "leaf-area-index",
                    "leaves",
                    "tip-diameter",
                    "material",
                    "stiffness",
                    "bears",
                    "sways")),
    /** When a tree carries leaves. */
    LEAVES(List.of("from", "to"), List.of()),
    /** A deck. */
    PLATFORM(List.of("platform"), List.of("on", "at", "size", "turn", "outline", "height", "bears")),
    /** Webbing or net to lie in. */
    HAMMOCK(List.of("hammock"), List.of("on", "at", "size", "turn", "outline", "height", "bears")),
    /** A climbable panel of wire. */
    MESH(
            List.of("mesh"),
            List.of("corners", "from", "to", "bottom", "top", "outline", "height", "opening", "strand", "stiffness")),
    /** A climbable panel of rope. */
    NET(
            List.of("net"),
            List.of("corners", "from", "to", "bottom", "top", "outline", "height", "opening", "strand", "stiffness")),
    /** A smooth solid wall. */
    WALL(List.of("wall", "top"), List.of("line", "thickness", "outline", "bottom")),
    /** A pane. */
    GLASS(List.of("glass", "top"), List.of("line", "thickness", "outline", "bottom")),
    /** A moat or pool that stops an animal. */
    OPEN_WATER(List.of("water", "outline"), List.of("depth", "top")),
    /** A live wire. */
    STRAND(List.of("strand", "line"), List.of("clearance")),
    /** Planting behind live wire. */
    PLANTING(List.of("planting", "outline", "top"), List.of("bottom", "clearance")),
    /** An opening in a panel or wall. */
    DOOR(List.of("door", "in", "from", "to", "open"), List.of("sill", "height")),
    /** A solid roof. */
    ROOF(List.of("roof"), List.of("corners", "outline", "height", "over", "size", "rise", "shift")),
    /** Cloth or slats that give shade. */
    SAIL(List.of("sail", "transmittance"), List.of("corners", "outline", "height", "over", "size", "rise", "shift")),
    /** A solid block that casts a shadow. */
    BUILDING(List.of("building", "outline", "top"), List.of("bottom")),
    /** A tree that no animal can come to. */
    TREE(List.of("tree", "at", "height", "crown-radius", "crown-base"), List.of("leaf-area-index", "leaves")),
    /** A feeder. */
    FOOD(List.of("food"), List.of("at", "on", "portions")),
    /** A drinker. */
    WATER(List.of("water"), List.of("at", "on", "portions")),
    /** A shaded resting place. */
    SHADE(List.of("shade"), List.of("at", "on", "portions", "bedding")),
    /** A sleeping place. */
    NEST(List.of("nest"), List.of("at", "on", "portions", "bedding")),
    /** A place out of sight. */
    RETREAT(List.of("retreat"), List.of("at", "on", "portions", "bedding")),
    /** A body that the scenario defines. */
    BODY(
            List.of("body"),
            List.of(
                    "like",
                    "mass",
                    "structural-mass",
                    "arm-span",
                    "gap-reach",
                    "overhead-reach",
                    "leap",
                    "take-off",
                    "grip-diameter",
                    "hug-diameter",
                    "walkway-diameter",
                    "brachiates",
                    "speeds")),
    /** How fast a body moves. */
    SPEEDS(List.of(), List.of("walk", "climb", "descend", "clamber", "brachiate")),
    /** One or more animals. */
    ANIMAL(List.of("body"), List.of("name", "count", "with-infant", "rank", "mass", "follows", "group")),
    /** A feeding. */
    FEED(List.of("feed", "at", "energy-kj"), List.of("given", "handling-min")),
    /** Bedding put out. */
    BED(List.of("bed", "at", "bedding"), List.of()),
    /** A place that is shut for some hours. */
    CLOSE(List.of("close", "from", "to"), List.of()),
    /** A place that is cleaned. */
    CLEAN(List.of("clean", "from", "to"), List.of()),
    /** People of the house where animals see them. */
    STAFF(List.of("staff", "at", "from", "to"), List.of()),
    /** A place from which visitors look in. */
    VIEWPOINT(List.of("viewpoint", "at", "from", "to"), List.of()),
    /** Another layout. */
    VARIANT(List.of("name", "changes"), List.of("note")),
    /** Values that are tried one after the other. */
    SWEEP(List.of("vary"), List.of("plan", "points", "variants")),
    /** One thing that a sweep varies. */
    VARY(List.of(), List.of("of", "key", "in", "assume", "values", "from", "to", "steps")),
    /** A change: something stands elsewhere. */
    MOVE(
            List.of("move"),
            List.of(
                    "at", "on", "from", "to", "outline", "height", "corners", "line", "bottom", "top", "in", "sill",
                    "over", "size", "rise", "shift")),
    /** A change: something is not there. */
    REMOVE(List.of("remove"), List.of()),
    /** A change: something more is there. */
    ADD(List.of("add"), List.of()),
    /** A change: something is built otherwise. */
    ALTER(
            List.of("alter"),
            List.of(
                    "height",
                    "diameter",
                    "tip-diameter",
                    "material",
                    "lean",
                    "sag",
                    "length",
                    "stiffness",
                    "bears",
                    "sways",
                    "crown-radius",
                    "crown-base",
                    "leaf-area-index",
                    "leaves",
                    "size",
                    "turn",
                    "rise",
                    "transmittance",
                    "portions",
                    "bedding",
                    "bottom",
                    "top",
                    "opening",
                    "strand",
                    "thickness",
                    "depth",
                    "clearance",
                    "open")),
    /** A change: food is no longer put out in a place. */
    UNFEED(List.of("unfeed"), List.of()),
    /** A change: nobody beds, shuts or cleans a place any more, or no staff stand there. */
    STOP(List.of("stop"), List.of()),
    /** A measured stand of trees. */
    SURVEY(List.of("table", "prefix", "columns"), List.of("diameter-unit", "tallest", "allometry")),
    /** Columns of the table. */
    COLUMNS(List.of("x", "y", "diameter"), List.of("height", "crown-radius")),
    /** What the weather is like. */
    WEATHER(List.of(), List.of("epw", "monthly-max", "monthly-min", "wind", "turbidity", "sunlit-ways")),
    /** Coefficients from diameter to height and crown. */
    ALLOMETRY(
            List.of(),
            List.of(
                    "height-constant",
                    "height-slope",
                    "height-curve",
                    "height-stress",
                    "crown-radius-factor",
                    "crown-radius-exponent",
                    "crown-base-share"));

    /** Kinds of entries under {@code supports}. */
    public static final List<Form> SUPPORTS = List.of(POLE, BEAM, ROPE, TRUNK, PLATFORM, BRANCH, LADDER, HAMMOCK);

    /** Kinds of entries under {@code panels}. */
    public static final List<Form> PANELS = List.of(MESH, NET);

    /** Kinds of entries under {@code barriers}. */
    public static final List<Form> BARRIERS = List.of(WALL, GLASS, OPEN_WATER);

    /** Kinds of entries under {@code hot-wires}. */
    public static final List<Form> HOT_WIRES = List.of(STRAND, PLANTING);

    /** Kinds of entries under {@code doors}. */
    public static final List<Form> DOORS = List.of(DOOR);

    /** Kinds of entries under {@code covers}. */
    public static final List<Form> COVERS = List.of(ROOF, SAIL);

    /** Kinds of entries under {@code neighbours}. */
    public static final List<Form> NEIGHBOURS = List.of(BUILDING, TREE);

    /** Kinds of entries under {@code resources}. */
    public static final List<Form> RESOURCES = List.of(FOOD, WATER, SHADE, NEST, RETREAT);

    /** Kinds of entries under {@code keepers}. */
    public static final List<Form> KEEPERS = List.of(FEED, BED, CLOSE, CLEAN, STAFF);

    /** Kinds of entries under {@code keepers} that name a place under {@code resources} and are no feeding. */
    public static final List<Form> CARE = List.of(BED, CLOSE, CLEAN);

    /** Places to rest or sleep, where bedding may lie. */
    public static final List<Form> RESTING = List.of(SHADE, NEST, RETREAT);

    /** Kinds of changes in a variant. */
    public static final List<Form> CHANGES =
            List.of(MOVE, REMOVE, ADD, ALTER, FEED, UNFEED, BED, CLOSE, CLEAN, STAFF, STOP);

    private final List<String> required;
    private final List<String> keys;

    Form(List<String> required, List<String> optional) {
        this.required = List.copyOf(required);
        List<String> all = new ArrayList<>(required);
        all.addAll(optional);
        this.keys = List.copyOf(all);
    }

    /**
     * The word by which messages name this kind; for entries of a list also the key that holds the name.
     *
     * @return a lower-case word
     */
    public String word() {
        return this == OPEN_WATER ? WATER.word() : name().toLowerCase(Locale.ROOT);
    }

    /**
     * Keys that must be there.
     *
     * @return keys in the order of the documentation
     */
    public List<String> required() {
        return required;
    }

    /**
     * All keys that may be there.
     *
     * @return keys in the order of the documentation
     */
    public List<String> keys() {
        return keys;
    }

    /**
     * What to write after a key that is missing.
     *
     * @param key one of {@link #required()}
     * @return an example where the key alone would not say enough, or three dots
     */
    String example(String key) {
        return switch (key) {
            case "open" -> "[\"08:00-16:00\"], or always, or never";
            case "transmittance" -> "0.2 (cloth sold as 80 % shade; dense cloth 0.05, open net 0.5)";
            default -> "...";
        };
    }

    /**
     * The kind of resource that this form declares.
     *
     * @return the kind, or empty if this is no resource
     */
    public Optional<ResourceKind> resourceKind() {
        return RESOURCES.contains(this) ? Optional.of(ResourceKind.valueOf(name())) : Optional.empty();
    }
}
