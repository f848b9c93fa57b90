// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.model.MapCamera;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.TrueMetres;
import javafx.geometry.Point2D;
import org.junit.jupiter.api.Test;

class HullOutlinesTest {
    private static final Plan PLAN = SampleSite.plan();
    private static final Hull HULL = PLAN.hull("A").orElseThrow();

    private static MapCamera camera(double metresPerPixel) {
        return new MapCamera(new Point(150, 260), metresPerPixel, 800, 600);
    }

    @Test
    void marksNeverStandOverAHullHoweverNearOneLooks() {
        for (double metresPerPixel : new double[] {0.02, 0.1, 0.3, 1}) {
            MapCamera camera = camera(metresPerPixel);
            HullOutlines hulls = new HullOutlines(PLAN, camera);
            BadgeSpots spots = new BadgeSpots(26);
            spots.keepOff(hulls);
            for (double along = 1; along < HULL.length(); along += 2) {
                Point place = HULL.lyingBase(TrueMetres.SAME).moved(HULL.layDownAzimuth(), along, 1);
                Point2D pixel = new Point2D(camera.x(place.east()), camera.y(place.north()));
                assertTrue(hulls.isOver(pixel, 0), "the place itself is under the hull");
                assertFalse(hulls.isOver(spots.free(pixel), 10), along + " m along at " + metresPerPixel);
            }
            assertFalse(hulls.isOver(hulls.beside("A", 20), 15));
        }
    }

    @Test
    void aHullIsAsLongAsItIsDrawn() {
        HullOutlines hulls = new HullOutlines(PLAN, camera(0.5));
        assertEquals(HULL.length() / 0.5, hulls.length("A"), 1e-6);
        assertEquals("A", hulls.owner("A/bunks").orElseThrow());
        assertTrue(hulls.owner("boulders").isEmpty());
    }
}
