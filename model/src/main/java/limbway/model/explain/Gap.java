package limbway.model.explain;

import limbway.model.geometry.Point;

/**
 * The clear distance between two things that an animal can be on.
 *
 * @param from id of a support, platform or crown
 * @param to id of the other
 * @param fromPlace where the first comes closest, on its centre line, edge or outside
 * @param toPlace where the second does
 * @param fromAtEnd whether that is an end of the first
 * @param toAtEnd whether that is an end of the second
 * @param clearM distance from surface to surface [m], 0 or more
 */
public record Gap(
        String from, String to, Point fromPlace, Point toPlace, boolean fromAtEnd, boolean toAtEnd, double clearM) {

    /**
     * The same gap seen from the other side.
     *
     * @return a copy with both sides exchanged
     */
    public Gap reversed() {
        return new Gap(to, from, toPlace, fromPlace, toAtEnd, fromAtEnd, clearM);
    }
}
