package limbway.model.energy;

/**
 * What it costs that a support bends when an animal changes over to it: {@code (f M g)² / (2 k eta)} for each change.
 *
 * <p>The load bends the support and the animal pays the work; nothing comes back when the support springs up again.
 *
 * @source work of a linear spring; that no energy is recovered: Channon et al. 2011, J. Exp. Biol. 214:687-696, gibbons on
 *     compliant poles (abstract); load share and number of changes are assumptions in {@link ComplianceSettings}
 * @validity linear stiffness; nobody has measured the metabolic cost of clambering on bending supports
 */
public final class ComplianceCost {

    private final ComplianceSettings settings;

    /**
     * Costs under given settings.
     *
     * @param settings load share, efficiency, length of a transfer
     */
    public ComplianceCost(ComplianceSettings settings) {
        this.settings = settings;
    }

    /**
     * Returns the cost of one change of support.
     *
     * @param massKg mass that moves [kg], above 0
     * @param stiffnessNPerM stiffness of the next support where it is held [N/m], above 0; infinite for a rigid one
     * @return energy [J], 0 for a rigid support
     * @throws IllegalArgumentException naming the value outside its range
     */
    public double transferJ(double massKg, double stiffnessNPerM) {
        Allowed.aboveZero("compliance", "massKg", massKg);
        Allowed.aboveZero("compliance", "stiffnessNPerM", stiffnessNPerM);
        double loadN = settings.loadShare() * massKg * InclineCost.GRAVITY_M_PER_S2;
        return loadN * loadN / (2 * stiffnessNPerM * settings.efficiency());
    }

    /**
     * Returns how far a support sinks under the share of weight that it takes over.
     *
     * @param massKg mass that moves [kg], above 0
     * @param stiffnessNPerM stiffness of the next support where it is held [N/m], above 0
     * @return deflection [m]
     */
    public double sinkM(double massKg, double stiffnessNPerM) {
        return settings.loadShare() * massKg * InclineCost.GRAVITY_M_PER_S2 / stiffnessNPerM;
    }

    /**
     * The number of changes of support on a way through separate holds; along one beam or rope it is 1.
     *
     * @param lengthM length of path [m], 0 or more
     * @return changes, one for each begun transfer length
     */
    public int transfers(double lengthM) {
        Allowed.between("compliance", "lengthM", lengthM, 0, Integer.MAX_VALUE);
        return (int) Math.ceil(lengthM / settings.transferM());
    }
}
