// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

/** The faces of the finished surface that rays from one station leave through. */
final class SoilFaces {
    private final SoilField field;
    private final double x0;
    private final double y0;
    private final double perSpacing;
    private final double perSquare;
    /** Faces beyond a finer patch; null where there is none. */
    private final SoilFaces far;

    SoilFaces(SoilFields fields, double[] start) {
        field = fields.near();
        far = fields.far().map(f -> new SoilFaces(SoilFields.of(f), start)).orElse(null);
        perSpacing = 1 / field.spacing;
        x0 = (start[0] - field.west) / field.spacing;
        perSquare = 1 / (field.spacing * field.spacing);
        y0 = (start[1] - field.south) / field.spacing;
    }

    /**
     * Looks at the faces at places of one azimuth, given as distances in plan; a place that is none gives not a
     * number, one without bound, beyond the known ground, a level face.
     *
     * @param rise takes how the face rises along the azimuth (1); the places before
     * @param steep takes the square of its gradient (1)
     */
    void along(ProfileWalk.Way way, double[] rise, double[] steep, int count) {
        for (int k = 0; k < count; k++) {
            at(k, way.east, way.north, rise, steep);
        }
    }

    /** Looks at one face, in a level unit direction. */
    void at(int k, double east, double north, double[] rise, double[] steep) {
        double gx = east * perSpacing;
        double gy = north * perSpacing;
        double at = rise[k];
        if (!(at < Double.POSITIVE_INFINITY)) {
            rise[k] = Double.isNaN(at) ? at : 0;
            steep[k] = 0;
            return;
        }
        double x = x0 + at * gx;
        double y = y0 + at * gy;
        if (far != null && !field.holds(x, y)) {
            far.at(k, east, north, rise, steep);
            return;
        }
        int i = Math.min((int) x, field.columns - 2);
        int j = Math.min((int) y, field.rows - 2);
        // 1 in the lower of the cell's two triangles, 0 in the upper: a number, since a branch is a coin's toss.
        int lower = 1 - (int) (Double.doubleToRawLongBits(x - i - (y - j)) >>> 63);
        double[] heights = field.finished;
        int node = j * field.columns + i;
        double third = heights[node + field.columns + lower * (1 - field.columns)];
        double first = third - heights[node];
        double second = heights[node + field.columns + 1] - third;
        double one = gy + lower * (gx - gy);
        rise[k] = one * first + (gx + gy - one) * second;
        steep[k] = (first * first + second * second) * perSquare;
    }
}
