package limbway.sim.animal;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * How much a place is worth beyond the needs that it stills, term by term, in the unit of the needs: a need of weight 1 that
 * is stilled from its greatest to nothing counts 0.5.
 *
 * @param bedding what a full amount of bedding adds to a place to rest
 * @param cover what a roof or dense leaves overhead add to a place to rest
 * @param height what height adds to a place to rest
 * @param company what a companion nearby adds to a place to rest
 * @param dominant what a dominant animal nearby takes from any place
 * @param strangers what an animal of another group nearby takes from any place
 * @param following what the animal that it follows adds to any place where it is or goes
 * @param seclusion what being out of sight of visitors adds to a place to rest
 * @param perimeter what the edge of the enclosure adds to a place to rest
 * @param lookOut what a view of food and staff adds to a place to rest
 * @param staff what staff nearby add to any place
 * @param familiarity what a wholly unknown place lacks
 * @param strangeness by how much an unknown way seems dearer
 * @param groundWariness what ten metres over the ground take from a place
 * @param restlessness what a change of place is worth to an animal that has long been at one
 */
public record WorthSettings(
        double bedding,
        double cover,
        double height,
        double company,
        double dominant,
        double strangers,
        double following,
        double seclusion,
        double perimeter,
        double lookOut,
        double staff,
        double familiarity,
        double strangeness,
        double groundWariness,
        double restlessness) {

    /** What the numbers are. */
    public static final ParameterGroup<WorthSettings> GROUP = ParameterGroup.of(
            WorthSettings.class,
            new Parameter(
                    "worth.bedding",
                    "what a full amount of bedding adds to a place to rest",
                    "1",
                    0.1,
                    0,
                    0.3,
                    Standing.ASSUMPTION,
                    "no source; apes sleep where bedding lies, on the floor too"),
            new Parameter(
                    "worth.cover",
                    "what cover of the whole sky adds to a place to rest",
                    "1",
                    0.03,
                    0,
                    0.2,
                    Standing.ASSUMPTION,
                    "no source; shade is asked for by housing guidance; its worth beyond heat was not measured"),
            new Parameter(
                    "worth.height",
                    "what full height adds to a place to rest",
                    "1",
                    0.08,
                    0,
                    0.2,
                    Standing.ASSUMPTION,
                    "no source; fitted to patterns 1 and 17 of validation.md; wild nests lie 10 to 20 m up (second-hand)"),
            new Parameter(
                    "worth.company",
                    "what a companion nearby adds to a place to rest",
                    "1",
                    0.02,
                    -0.1,
                    0.2,
                    Standing.ASSUMPTION,
                    "no source; orangutans live alone, chimpanzees and gibbons together"),
            new Parameter(
                    "worth.dominant",
                    "what a dominant animal nearby takes from any place",
                    "1",
                    0.1,
                    0,
                    0.3,
                    Standing.ASSUMPTION,
                    "no source; that subordinates keep away is known, the size is not"),
            new Parameter(
                    "worth.strangers",
                    "what an animal of another group nearby takes from any place",
                    "1",
                    0.2,
                    0,
                    0.5,
                    Standing.ASSUMPTION,
                    "no source; twice the worth of a dominant"),
            new Parameter(
                    "worth.following",
                    "what the animal that it follows adds to any place where that one is or goes",
                    "1",
                    0.15,
                    0,
                    0.4,
                    Standing.ASSUMPTION,
                    "no source; young that still follow their mother"),
            new Parameter(
                    "worth.seclusion",
                    "what being out of sight of all visitors adds to a place to rest",
                    "1",
                    0.03,
                    0,
                    0.2,
                    Standing.ASSUMPTION,
                    "no source; retreats are asked for by housing guidance"),
            new Parameter(
                    "worth.perimeter",
                    "what the edge of the enclosure adds to a place to rest",
                    "1",
                    0.04,
                    0,
                    0.2,
                    Standing.ASSUMPTION,
                    "no source; caged apes stay near the edge"),
            new Parameter(
                    "worth.look-out",
                    "what a view of all places of food and staff adds to a place to rest",
                    "1",
                    0.03,
                    0,
                    0.2,
                    Standing.ASSUMPTION,
                    "no source; vantage points are favoured"),
            new Parameter(
                    "worth.staff",
                    "what staff nearby add to a place to rest",
                    "1",
                    0.04,
                    -0.1,
                    0.2,
                    Standing.ASSUMPTION,
                    "no source; housed apes wait where food comes from"),
            new Parameter(
                    "worth.familiarity",
                    "what a wholly unknown place lacks",
                    "1",
                    0.1,
                    0,
                    0.3,
                    Standing.ASSUMPTION,
                    "no source; new structures are taken up slowly"),
            new Parameter(
                    "worth.strangeness",
                    "by how much a way over wholly unknown supports seems dearer",
                    "1",
                    0.5,
                    0,
                    2,
                    Standing.ASSUMPTION,
                    "no source; new structures are taken up slowly"),
            new Parameter(
                    "worth.ground-wariness",
                    "what ten metres over the ground take from a place",
                    "1",
                    0.02,
                    0,
                    0.2,
                    Standing.ASSUMPTION,
                    "no source; results are given at 0 too"),
            new Parameter(
                    "worth.restlessness",
                    "what a change of place is worth to an animal that has long been at one",
                    "1",
                    0.05,
                    0,
                    0.3,
                    Standing.ASSUMPTION,
                    "no source; stands for play and looking round"));

    /**
     * Needs and energy alone.
     *
     * @return every term 0
     */
    public static WorthSettings none() {
        return new WorthSettings(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    }
}
