package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;

/** Evenly spaced places in a panel. */
final class Lattice {

    private Lattice() {}

    static List<Point> within(PanelPlane plane, double spacingM) {
        Outline outline = plane.outline();
        double west = outline.corners().stream().mapToDouble(Corner::xM).min().orElse(0);
        double east = outline.corners().stream().mapToDouble(Corner::xM).max().orElse(0);
        double south = outline.corners().stream().mapToDouble(Corner::yM).min().orElse(0);
        double north = outline.corners().stream().mapToDouble(Corner::yM).max().orElse(0);
        int columns = (int) Math.floor((east - west) / spacingM);
        int rows = (int) Math.floor((north - south) / spacingM);
        List<Point> places = new ArrayList<>();
        for (int row = 1; row <= rows; row++) {
            for (int column = 1; column <= columns; column++) {
                double uM = west + column * spacingM;
                double vM = south + row * spacingM;
                if (outline.covers(uM, vM)) {
                    places.add(plane.at(uM, vM, 0));
                }
            }
        }
        return places;
    }
}
