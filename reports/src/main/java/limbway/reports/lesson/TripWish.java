package limbway.reports.lesson;

import java.util.Optional;

import limbway.model.body.Body;

/**
 * Which trip is to be taught, as far as that was said.
 *
 * @param body who travels; empty if anybody may
 * @param from name of the place where it starts; empty if any may be
 * @param to name of the place where it ends; empty if any may be
 */
public record TripWish(Optional<Body> body, Optional<String> from, Optional<String> to) {

    /**
     * Whether a trip is one of those meant.
     *
     * @param who who travels
     * @param start name of the place where it starts
     * @param end name of the place where it ends
     * @return true if nothing that was said is against it
     */
    boolean allows(Body who, String start, String end) {
        return body.map(who::equals).orElse(true)
                && from.map(start::equals).orElse(true)
                && to.map(end::equals).orElse(true);
    }

    /**
     * Whether everything was said.
     *
     * @return true if only one trip is meant
     */
    public boolean isWhole() {
        return body.isPresent() && from.isPresent() && to.isPresent();
    }
}
