package limbway.model.explain.flip;

import java.util.List;
import java.util.Optional;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;

/** One change of a layout that can be made larger or smaller. */
public sealed interface Change permits LinkAdded, PlaceMoved, EndExtended, PoleMoved, Thinned, EndRetied, Tightened {

    /**
     * How much is changed.
     *
     * @return metres, above 0
     */
    double amountM();

    /**
     * The same kind of change of another size.
     *
     * @param otherM how much is changed [m]
     * @return a copy
     */
    Change withAmount(double otherM);

    /**
     * The change as alterations of a layout.
     *
     * @param enclosure what stands there before
     * @return what is altered, or empty if it cannot be built so: a place beside its support, a pole that would bend over
     */
    Optional<List<Alteration>> in(Enclosure enclosure);
}
