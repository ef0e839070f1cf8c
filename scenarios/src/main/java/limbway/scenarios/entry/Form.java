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
            List.of("supports", "survey", "variants")),
    /** Where on Earth. */
    SITE(List.of("latitude", "longitude", "time-zone"), List.of()),
    /** What can be walked on. */
    GROUND(List.of("outline"), List.of("surface", "obstacles")),
    /** What cannot be walked over. */
    OBSTACLE(List.of("obstacle", "outline"), List.of()),
    /** A pole or mast. */
    POLE(List.of("pole", "at", "height", "diameter", "material"), List.of("lean")),
    /** The lean of a pole. */
    LEAN(List.of("degrees", "towards"), List.of()),
    /** A stiff member. */
    BEAM(List.of("beam", "from", "to", "diameter", "material"), List.of()),
    /** A rope. */
    ROPE(List.of("rope", "from", "to", "diameter"), List.of("sag", "material")),
    /** The stem of a tree. */
    TRUNK(List.of("trunk", "at", "height", "diameter"), List.of("crown-radius", "crown-base", "material")),
    /** A deck. */
    PLATFORM(List.of("platform"), List.of("on", "at", "size", "turn", "outline", "height")),
    /** A feeder. */
    FOOD(List.of("food"), List.of("at", "on", "portions")),
    /** A drinker. */
    WATER(List.of("water"), List.of("at", "on", "portions")),
    /** A shaded resting place. */
    SHADE(List.of("shade"), List.of("at", "on", "portions")),
    /** A sleeping place. */
    NEST(List.of("nest"), List.of("at", "on", "portions")),
    /** A place out of sight. */
    RETREAT(List.of("retreat"), List.of("at", "on", "portions")),
    /** One or more animals. */
    ANIMAL(List.of("body"), List.of("name", "count", "with-infant", "rank", "mass")),
    /** A feeding. */
    FEED(List.of("feed", "at", "energy-kj"), List.of()),
    /** Another layout. */
    VARIANT(List.of("name", "changes"), List.of("note")),
    /** A change: something stands elsewhere. */
    MOVE(List.of("move"), List.of("at", "on", "from", "to", "outline", "height")),
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
                    "material",
                    "lean",
                    "sag",
                    "crown-radius",
                    "crown-base",
                    "size",
                    "turn",
                    "portions")),
    /** A change: food is no longer put out in a place. */
    UNFEED(List.of("unfeed"), List.of()),
    /** A measured stand of trees. */
    SURVEY(List.of("table", "prefix", "columns"), List.of("diameter-unit", "tallest", "allometry")),
    /** Columns of the table. */
    COLUMNS(List.of("x", "y", "diameter"), List.of("height", "crown-radius")),
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
    public static final List<Form> SUPPORTS = List.of(POLE, BEAM, ROPE, TRUNK, PLATFORM);

    /** Kinds of entries under {@code resources}. */
    public static final List<Form> RESOURCES = List.of(FOOD, WATER, SHADE, NEST, RETREAT);

    /** Kinds of changes in a variant. */
    public static final List<Form> CHANGES = List.of(MOVE, REMOVE, ADD, ALTER, FEED, UNFEED);

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
        return name().toLowerCase(Locale.ROOT);
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
     * The kind of resource that this form declares.
     *
     * @return the kind, or empty if this is no resource
     */
    public Optional<ResourceKind> resourceKind() {
        return RESOURCES.contains(this) ? Optional.of(ResourceKind.valueOf(name())) : Optional.empty();
    }
}
