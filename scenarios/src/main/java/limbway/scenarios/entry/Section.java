package limbway.scenarios.entry;

import java.util.List;
import java.util.stream.Stream;

/** The lists of a scenario whose entries stand in a layout, and that a variant can change. */
@SuppressWarnings("ImmutableEnumChecker") // the lists are copies that nobody can change
public enum Section {
    /** What the animals move on. */
    SUPPORTS("supports", Form.SUPPORTS, 20_000),
    /** What the animals go to. */
    RESOURCES("resources", Form.RESOURCES, 1_000),
    /** Climbable walls, roofs and nets. */
    PANELS("panels", Form.PANELS, 500),
    /** Walls, panes, water. */
    BARRIERS("barriers", Form.BARRIERS, 200),
    /** Live strands and planting behind them. */
    HOT_WIRES("hot-wires", Form.HOT_WIRES, 200),
    /** Openings in panels and walls. */
    DOORS("doors", Form.DOORS, 100),
    /** Roofs and sails that give shade. */
    COVERS("covers", Form.COVERS, 500),
    /** Buildings and trees that matter for their shade alone. */
    NEIGHBOURS("neighbours", Form.NEIGHBOURS, 500);

    private final String key;
    private final List<Form> forms;
    private final int most;

    Section(String key, List<Form> forms, int most) {
        this.key = key;
        this.forms = List.copyOf(forms);
        this.most = most;
    }

    /**
     * The key of the list in a scenario.
     *
     * @return a lower-case word
     */
    public String key() {
        return key;
    }

    /**
     * Kinds of entries in the list.
     *
     * @return in the order of the documentation
     */
    public List<Form> forms() {
        return forms;
    }

    /**
     * How many entries one layout may have.
     *
     * @return 1 or more
     */
    public int most() {
        return most;
    }

    /**
     * Kinds of entries in all lists.
     *
     * @return list by list
     */
    public static List<Form> allForms() {
        return Stream.of(values()).flatMap(section -> section.forms.stream()).toList();
    }
}
