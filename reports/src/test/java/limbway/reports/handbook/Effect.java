package limbway.reports.handbook;

import java.util.Map;
import java.util.TreeMap;

import limbway.model.parameter.Parameter;

/** What a parameter moves, by its name or the end of it. */
final class Effect {

    private static final Map<String, String> BY_END = new TreeMap<>(Map.ofEntries(
            Map.entry(".mass", "cost of every move, power at rest, daily need of energy and water"),
            Map.entry(".structural-mass", "which supports the audit calls breakable or stated too weak"),
            Map.entry(".gap-reach", "which gaps are bridged; where holds are placed at the limit of reach"),
            Map.entry(".overhead-reach", "steps up from and down to ground and decks"),
            Map.entry(".grip-diameter", "which supports can be climbed and clambered along"),
            Map.entry(".hug-diameter", "which rough stems can be climbed"),
            Map.entry(".walkway-diameter", "which beams are walked on"),
            Map.entry("keepers.handling", "how fast food from a puzzle is eaten"),
            Map.entry("speed.walk", "time on the ground and on decks; which places are near"),
            Map.entry("speed.climb", "time upwards; which places are near"),
            Map.entry("speed.descend", "time downwards; which places are near"),
            Map.entry("speed.clamber", "time along ropes and through crowns; which places are near"),
            Map.entry("energy.clamber-multiplier", "cost of every way off the ground: the largest doubt of the model"),
            Map.entry("energy.bridge-multiplier", "cost of gaps"),
            Map.entry("energy.daily-over-resting", "how fast hunger grows"),
            Map.entry(".arm-span", "nothing that is computed; reach over gaps and hug are shares of it"),
            Map.entry(".leap", "over which gaps this body leaps"),
            Map.entry(".take-off", "over which gaps, and how far up, this body leaps"),
            Map.entry("energy.swing-multiplier", "cost of swinging by the arms, for bodies that do"),
            Map.entry("compliance.load-share", "cost of changing over to what gives way"),
            Map.entry("compliance.efficiency", "cost of changing over to what gives way"),
            Map.entry("compliance.transfer", "cost among branches and on nets"),
            Map.entry("sway.cycles", "cost and reach of swaying a pole"),
            Map.entry("sway.damping", "cost of swaying a pole"),
            Map.entry("sway.efficiency", "cost of swaying a pole"),
            Map.entry("sway.farthest-share", "how far a pole is swayed"),
            Map.entry("sway.softened", "cost of swaying a pole"),
            Map.entry("leap.angle", "cost of leaps"),
            Map.entry("leap.push-off", "cost of leaps from what gives way"),
            Map.entry("leap.efficiency", "cost of leaps"),
            Map.entry("leap.heaviest", "which bodies leap and drop"),
            Map.entry("leap.deepest-drop", "from where bodies drop"),
            Map.entry("-young", "how far members give way: cost of changing over and of swaying"),
            Map.entry("-density", "mass of swaying poles: time of a sway"),
            Map.entry("-inner-share", "how far members give way: cost of changing over and of swaying"),
            Map.entry(".brachiates", "whether this body swings by the arms along ropes and beams"),
            Map.entry("speed.brachiate", "time of swinging by the arms"),
            Map.entry("graph.branches-stiffness", "cost within and onto the branches of trees"),
            Map.entry("graph.hammock-stiffness", "cost of stepping onto a hammock"),
            Map.entry("graph.finger-share", "which meshes a body climbs"),
            Map.entry("strength.steel", "which bodies are kept off members of steel and warned of"),
            Map.entry("strength.timber", "which bodies are kept off members of timber and warned of"),
            Map.entry("strength.living-wood", "which bodies are kept off branches and warned of"),
            Map.entry("strength.concrete", "which bodies are kept off members of concrete and warned of"),
            Map.entry("strength.share", "which bodies are kept off anything that bends and warned of"),
            Map.entry("strength.rope", "which bodies are kept off ropes and warned of"),
            Map.entry("strength.rope-safety-factor", "which bodies are kept off ropes and warned of"),
            Map.entry("strength.rope-stretch", "which bodies are kept off tight ropes and warned of"),
            Map.entry("graph.hold-spacing", "size of the graph; costs by less than 2 %"),
            Map.entry("graph.use-reach", "from where a resource placed by coordinates is used"),
            Map.entry("choice.sharpness", "share of trips on the dearer of the two ways"),
            Map.entry("choice.patience", "preference for near places"),
            Map.entry("choice.effort-weight", "preference for places that are cheap to reach"),
            Map.entry("choice.noise", "spread of choices between places"),
            Map.entry("choice.persistence", "length of stays"),
            Map.entry("choice.least-relief", "number of trips and meals"),
            Map.entry("need.hunger-scale", "how soon hunger presses"),
            Map.entry("need.thirst-scale", "how soon thirst presses"),
            Map.entry("need.water", "number of visits to water"),
            Map.entry("need.hunger-weight", "food against water and rest"),
            Map.entry("need.thirst-weight", "water against food and rest"),
            Map.entry("need.fatigue-weight", "rest against food and water"),
            Map.entry("need.tiring", "number of rests"),
            Map.entry("need.recovery", "length of rests"),
            Map.entry("need.heat-from", "when shaded resting places are worth more than sunlit ones"),
            Map.entry("need.heat-greatest", "how much more shaded resting places are worth"),
            Map.entry("need.heat-response", "length of stays in the sun"),
            Map.entry("need.heat-weight", "shade against food, water and rest"),
            Map.entry("shade.at-least", "when the shade rule is broken"),
            Map.entry("shade.shaded-share", "which platforms count as shaded"),
            Map.entry("shade.most-beam", "which platforms count as shaded"),
            Map.entry("shade.lowest-sun", "when shade is asked for"),
            Map.entry("shade.glass", "shade behind panes"),
            Map.entry("shade.hammock", "shade below hammocks"),
            Map.entry("shade.leaf-projection", "shade below crowns"),
            Map.entry("shade.bare-crown", "shade below trees without leaves"),
            Map.entry("heat.ground-reflectance", "temperature of members and of animals over sunlit ground"),
            Map.entry("heat.ground-warming", "temperature of members and of animals over sunlit ground"),
            Map.entry("heat.animal-absorptance", "operative temperature in the sun"),
            Map.entry("heat.animal-emittance", "operative temperature"),
            Map.entry("heat.animal-size", "operative temperature in the sun"),
            Map.entry("heat.animal-least-wind", "operative temperature in still air"),
            Map.entry("weather.wind", "temperature of members and of animals in the sun"),
            Map.entry("weather.linke-turbidity", "strength of the sun under a clear sky"),
            Map.entry(".absorptance", "temperature of members with that surface in the sun"),
            Map.entry(".emittance", "temperature of members with that surface, in still air above all"),
            Map.entry("intake.portion", "length of a bout of eating; turns at feeders"),
            Map.entry("intake.eating", "time at feeders; crowding there"),
            Map.entry("intake.drinking", "time at water; crowding there"),
            Map.entry("intake.barred", "waiting, and trips to other feeders"),
            Map.entry("rest.longest", "number of decisions by day"),
            Map.entry("rest.shortest", "number of decisions by day"),
            Map.entry("rest.rested-fatigue", "length of rests"),
            Map.entry("rest.calling-urgency", "length of rests"),
            Map.entry("rest.relief-elsewhere", "trips to resting places"),
            Map.entry("night.wake-before-sunrise", "length of the day"),
            Map.entry("night.settled-before-sunset", "length of the day; last trips"),
            Map.entry("allometry.height-constant", "heights of trees read from a table"),
            Map.entry("allometry.height-slope", "heights of trees read from a table"),
            Map.entry("allometry.height-curve", "heights of trees read from a table"),
            Map.entry("allometry.height-stress", "heights of trees read from a table"),
            Map.entry("allometry.crown-radius-factor", "which crowns touch or come within reach"),
            Map.entry("allometry.crown-radius-exponent", "which crowns touch or come within reach"),
            Map.entry("allometry.crown-base-share", "heights at which crowns are entered"),
            Map.entry("report.elevated-threshold", "share of waking time spent up high; nothing else")));

    private Effect() {}

    static String of(Parameter parameter) {
        for (Map.Entry<String, String> entry : BY_END.entrySet()) {
            if (parameter.name().endsWith(entry.getKey())) {
                return entry.getValue();
            }
        }
        throw new IllegalStateException("parameter \"" + parameter.name()
                + "\": no word on what it moves, add one to limbway.reports.handbook.Effect");
    }
}
