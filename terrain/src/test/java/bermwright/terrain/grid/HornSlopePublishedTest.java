// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;

class HornSlopePublishedTest {
    @PublishedTable("/bermwright/terrain/published/slope-windows.csv")
    void slopeAndAspectOfAWindow(PublishedRow row) {
        String cells = "ghidefabc";
        double[] heights = new double[9];
        for (int i = 0; i < 9; i++) {
            heights[i] = row.number(cells.substring(i, i + 1));
        }
        ElevationGrid grid = ElevationGrid.of(new GridFrame(3, 3, 0, 0, row.number("w")), heights);
        row.assertNear("slope", Math.toDegrees(HornSlope.slope(grid, 1, 1)), row.number("slope_tolerance"));
        row.assertNear("aspect", HornSlope.gradient(grid, 1, 1).aspect().orElseThrow().degrees(),
                row.number("aspect_tolerance"));
    }
}
