package limbway.reports.words;

import java.util.List;

import limbway.model.body.LocomotorMode;

/** The parts of an energy in everyday words; tables for programs use the terms of the model. */
public final class PartText {

    private static final List<LocomotorMode> AS_TOLD = List.of(
            LocomotorMode.VERTICAL_DESCENT,
            LocomotorMode.QUADRUPEDAL_WALK,
            LocomotorMode.VERTICAL_CLIMB,
            LocomotorMode.CLAMBER,
            LocomotorMode.BRIDGE,
            LocomotorMode.BIPEDAL_WALK,
            LocomotorMode.BRACHIATE,
            LocomotorMode.SWAY,
            LocomotorMode.LEAP,
            LocomotorMode.DROP);

    private PartText() {}

    /**
     * All modes in the order in which a trip over the ground is told: down, along, up, and then what is done aloft.
     *
     * @return every mode once
     */
    public static List<LocomotorMode> asTold() {
        return AS_TOLD;
    }

    /**
     * One word, to stand behind a number in a sum.
     *
     * @param mode a mode
     * @return for example {@code up}
     */
    public static String inSum(LocomotorMode mode) {
        return switch (mode) {
            case VERTICAL_DESCENT -> "down";
            case QUADRUPEDAL_WALK -> "level";
            case VERTICAL_CLIMB -> "up";
            case CLAMBER -> "clambering";
            case BRIDGE -> "bridging";
            case BIPEDAL_WALK -> "on two feet";
            case BRACHIATE -> "swinging by the arms";
            case SWAY -> "swaying";
            case LEAP -> "leaping";
            case DROP -> "dropping";
        };
    }

    /**
     * What the animal does, to stand alone.
     *
     * @param mode a mode
     * @return for example {@code climbing up}
     */
    public static String doing(LocomotorMode mode) {
        return switch (mode) {
            case VERTICAL_DESCENT -> "climbing down";
            case QUADRUPEDAL_WALK -> "level walking";
            case VERTICAL_CLIMB -> "climbing up";
            case CLAMBER -> "clambering";
            case BRIDGE -> "bridging gaps";
            case BIPEDAL_WALK -> "walking on two feet";
            case BRACHIATE -> "swinging by the arms";
            case SWAY -> "swaying poles";
            case LEAP -> "leaping";
            case DROP -> "dropping";
        };
    }
}
