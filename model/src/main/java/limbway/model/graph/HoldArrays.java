package limbway.model.graph;

import limbway.model.geometry.Point;

/** Holds as flat arrays, by their final number. */
final class HoldArrays {

    final double[] xM;
    final double[] yM;
    final double[] zM;
    /** Height above the ground; where that is level at 0, the same array as {@link #zM}. */
    final double[] heightM;

    final String[] support;
    final boolean[] onGround;

    HoldArrays(int holds, boolean levelGround) {
        xM = new double[holds];
        yM = new double[holds];
        zM = new double[holds];
        heightM = levelGround ? zM : new double[holds];
        support = new String[holds];
        onGround = new boolean[holds];
    }

    Point place(int hold) {
        return new Point(xM[hold], yM[hold], zM[hold]);
    }

    double distanceM(int a, int b) {
        double dx = xM[b] - xM[a];
        double dy = yM[b] - yM[a];
        double dz = zM[b] - zM[a];
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}
