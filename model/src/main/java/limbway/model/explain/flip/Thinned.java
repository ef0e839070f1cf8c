package limbway.model.explain.flip;

import java.util.List;
import java.util.Optional;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.Elasticities;
import limbway.model.strength.StandingHeight;

/**
 * A support is replaced by a thinner one.
 *
 * @param support id of the support
 * @param beforeM its thickness now, at its first end [m]
 * @param amountM by how much it is thinner then [m]
 */
public record Thinned(String support, double beforeM, double amountM) implements Change {

    /**
     * Its thickness then.
     *
     * @return diameter at its first end [m]
     */
    public double diameterM() {
        return Steps.millimetre(beforeM - amountM);
    }

    @Override
    public Thinned withAmount(double otherM) {
        return new Thinned(support, beforeM, otherM);
    }

    @Override
    public Optional<List<Alteration>> in(Enclosure enclosure) {
        Support old = Things.support(enclosure, support).orElseThrow();
        double diameterM = diameterM();
        if (!(diameterM > 0)) {
            return Optional.empty();
        }
        Support thin =
                new Support(old.id(), old.kind(), old.axis(), diameterM, tipM(old), old.material(), old.bearing());
        boolean stands = old.kind() != SupportKind.POLE
                || tipM(old) < diameterM
                || StandingHeight.stands(thin, Elasticities.standard());
        return stands ? Optional.of(List.of(new Alteration.SupportReplaced(thin))) : Optional.empty();
    }

    /**
     * Thickness of its last end then: thinned alike.
     *
     * @param old what stands there now
     * @return diameter [m]
     */
    public double tipM(Support old) {
        return old.tipDiameterM() == old.diameterM()
                ? diameterM()
                : Math.min(
                        diameterM(),
                        Math.max(Steps.FINE_M, Steps.millimetre(old.tipDiameterM() * diameterM() / old.diameterM())));
    }
}
