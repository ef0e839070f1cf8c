package limbway.model.energy;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * The uncertain numbers of swaying a pole or tree across a gap.
 *
 * @param cycles full swings to and fro until the gap is reached
 * @param damping damping over critical damping of the pole with the animal on it
 * @param efficiency mechanical work over the energy that muscle spends on it
 * @param farthestShare widest swing over the length of the pole
 * @param softened whether the weight of the animal makes the pole softer
 */
public record SwaySettings(int cycles, double damping, double efficiency, double farthestShare, boolean softened) {

    /** What the numbers are. */
    public static final ParameterGroup<SwaySettings> GROUP = ParameterGroup.of(
            SwaySettings.class,
            new Parameter(
                    "sway.cycles",
                    "swings to and fro until the gap is reached",
                    "1",
                    3,
                    1,
                    8,
                    Standing.ASSUMPTION,
                    "no count was found; the swing grows evenly"),
            new Parameter(
                    "sway.damping",
                    "damping over critical damping",
                    "1",
                    0.05,
                    0.01,
                    0.10,
                    Standing.DERIVED,
                    "trees: internal damping below 0.05, stems without branches 0.01 to 0.08 (Moore and Maguire "
                            + "2004, Trees 18:195-203, abstract)"),
            new Parameter(
                    "sway.efficiency",
                    "work of swaying over the energy spent on it",
                    "1",
                    0.25,
                    0.20,
                    0.25,
                    Standing.UNVERIFIED,
                    "muscle that shortens: Margaria 1968, doi 10.1007/BF00699624, as reported second-hand"),
            new Parameter(
                    "sway.farthest-share",
                    "widest swing over the length of the pole",
                    "1",
                    0.3,
                    0.15,
                    0.5,
                    Standing.ASSUMPTION,
                    "beyond it the small-deflection formula says too little, and people would fear for the pole"),
            new Parameter(
                    "sway.softened",
                    "1 if the weight of the animal makes the pole softer, 0 if not",
                    "1",
                    0,
                    0,
                    1,
                    Standing.ASSUMPTION,
                    "off, so that a stiffness measured under load is not reduced twice"));
}
