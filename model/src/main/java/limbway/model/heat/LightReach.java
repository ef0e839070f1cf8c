package limbway.model.heat;

import limbway.model.geometry.Point;

/** How much of the light of the open reaches a point, under the leaves of one day, past all that stands there, supports too. */
public interface LightReach {

    /** Nothing stands in the light. */
    LightReach OPEN = new LightReach() {
        @Override
        public double beam(Point at, Point sunDirection) {
            return 1;
        }

        @Override
        public double sky(Point at) {
            return 1;
        }
    };

    /**
     * Share of the direct beam.
     *
     * @param at a point in the open air
     * @param sunDirection towards the sun, length 1, above the level
     * @return 0 to 1
     */
    double beam(Point at, Point sunDirection);

    /**
     * Share of the diffuse light of an even sky on a level surface.
     *
     * @param at a point in the open air
     * @return 0 to 1
     */
    double sky(Point at);
}
