package limbway.model.body;

import java.util.List;

import limbway.model.parameter.Parameter;

/**
 * The figures of one body as parameters, in the order of {@link Body}'s components.
 *
 * @param name age-sex class
 * @param massKg mass that moves [kg]
 * @param structuralMassKg mass to design structures for [kg]
 * @param armSpanM fingertip to fingertip [m]
 * @param gapReachM gap crossed by reaching [m]
 * @param overheadReachM reach above the feet [m]
 * @param leapM gap leaped [m]
 * @param takeOffMPerS fastest take-off [m/s]
 * @param gripDiameterM hook grip [m]
 * @param hugDiameterM hug of a rough stem [m]
 * @param walkwayDiameterM least breadth to walk on [m]
 * @param brachiates 1 for a body that swings hand over hand as a matter of course, else 0
 */
public record BodyFigures(
        String name,
        Parameter massKg,
        Parameter structuralMassKg,
        Parameter armSpanM,
        Parameter gapReachM,
        Parameter overheadReachM,
        Parameter leapM,
        Parameter takeOffMPerS,
        Parameter gripDiameterM,
        Parameter hugDiameterM,
        Parameter walkwayDiameterM,
        Parameter brachiates) {

    /**
     * The body with these figures.
     *
     * @param speeds how fast it moves
     * @return the body
     */
    public Body toBody(Speeds speeds) {
        return new Body(
                name,
                massKg.value(),
                structuralMassKg.value(),
                armSpanM.value(),
                gapReachM.value(),
                overheadReachM.value(),
                leapM.value(),
                takeOffMPerS.value(),
                gripDiameterM.value(),
                hugDiameterM.value(),
                walkwayDiameterM.value(),
                brachiates.value() > 0,
                speeds);
    }

    /**
     * All figures, for the table of parameters.
     *
     * @return one parameter for each figure
     */
    public List<Parameter> parameters() {
        return List.of(
                massKg,
                structuralMassKg,
                armSpanM,
                gapReachM,
                overheadReachM,
                leapM,
                takeOffMPerS,
                gripDiameterM,
                hugDiameterM,
                walkwayDiameterM,
                brachiates);
    }
}
