package limbway.model.energy;

/** A level jump at 45 degrees with a push-off of half a metre, by parts. */
record Jump(double massKg, double gapM, double stiffnessNPerM, double pushOffM) {

    Jump(double massKg, double gapM, double stiffnessNPerM) {
        this(massKg, gapM, stiffnessNPerM, 0.5);
    }

    /** Swaying over the same gap with damping 0.05 and efficiency 0.25. */
    static double swayJ(double stiffnessNPerM, double amplitudeM, int cycles) {
        return SwayCost.energyJ(stiffnessNPerM, amplitudeM, cycles, 0.05, 0.25);
    }

    double kineticJ() {
        return LeapCost.kineticJ(massKg, Ballistics.speedAtAngleMPerS(gapM, 0, 45));
    }

    double forceN() {
        return LeapCost.pushOffN(kineticJ(), massKg, pushOffM);
    }

    double bendingJ() {
        return LeapCost.bendingJ(forceN(), stiffnessNPerM);
    }

    double energyJ(double efficiency) {
        return (kineticJ() + bendingJ()) / efficiency;
    }
}
