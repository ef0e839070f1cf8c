package limbway.model.explain.flip;

import java.util.List;
import java.util.Optional;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Point;

/**
 * A place that is gone to is put on a pole, trunk or deck.
 *
 * @param resource id of the place
 * @param at where it is then
 * @param baseM height above the ground from which the amount counts: the present height on the same pole, else 0 [m]
 * @param movedM how far that is from where it was [m]
 * @param isLowest whether it is the lowest place on that pole that was looked at, so that a lower one may do as well
 */
public record PlaceMoved(String resource, Spot at, double baseM, double movedM, boolean isLowest) implements Change {

    /** Height gained on a pole or trunk; on a deck, how far the place is moved. */
    @Override
    public double amountM() {
        return at instanceof Spot.AtHeight upright ? upright.heightM() - baseM : movedM;
    }

    /** On a deck the size is given: the same change. */
    @Override
    public PlaceMoved withAmount(double otherM) {
        return at instanceof Spot.AtHeight upright
                ? new PlaceMoved(
                        resource,
                        new Spot.AtHeight(upright.on(), Steps.millimetre(baseM + otherM)),
                        baseM,
                        movedM,
                        isLowest)
                : this;
    }

    @Override
    public Optional<List<Alteration>> in(Enclosure enclosure) {
        return at.in(enclosure).map(point -> List.of(new Alteration.ResourceMoved(resource, point, at.on())));
    }

    /** The same change with the distance moved measured in an enclosure. */
    PlaceMoved measured(Enclosure enclosure) {
        Point before = Things.resource(enclosure, resource).orElseThrow().at();
        return new PlaceMoved(
                resource, at, baseM, at.in(enclosure).map(before::distanceM).orElse(movedM), isLowest);
    }
}
