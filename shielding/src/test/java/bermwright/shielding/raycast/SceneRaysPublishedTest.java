// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Vec3;
import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import bermwright.regolith.BulkDensity;
import bermwright.regolith.LunarProfile;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Scenes;
import bermwright.shielding.scene.Soil;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Areal densities that burial studies state for so much soil overhead, along a ray straight up. */
class SceneRaysPublishedTest {
    /** Rays may not point straight up; this far off it the way is longer by a millionth. */
    private static final Vec3 UP = new Vec3(1e-3, 0, 1).direction();
    /** The studies' figures are products of round numbers: the slant of the ray and rounding are all that is left. */
    private static final double SLANT = 2e-6;
    private static final GridFrame FRAME = new GridFrame(41, 41, -20, -20, 1);

    private static double overhead(double depth, Soil soil) {
        SceneRays rays = SceneRays.of(new Scene(soil, List.of()));
        return rays.ray(new Vec3(0.3, 0.2, -depth), UP).arealDensity(1) / 10;
    }

    private static Soil undisturbed(BulkDensity profile) {
        return Scenes.bare(ElevationGrid.sampled(FRAME, (e, n) -> 0), profile);
    }

    /** The same in undisturbed soil and as soil placed over bare ground: what counts is mass, not who put it there. */
    @PublishedTable("/bermwright/shielding/raycast/published/burial-areal-densities.csv")
    void soilOverhead(PublishedRow row) {
        double depth = row.number("depth_m");
        double density = row.number("density_kg_m3");
        row.assertShare("areal_density_g_cm2", overhead(depth, undisturbed(BulkDensity.uniform(density))), SLANT);
        Soil placed = new Soil(ElevationGrid.sampled(FRAME, (e, n) -> -depth),
                ElevationGrid.sampled(FRAME, (e, n) -> 0), density, BulkDensity.uniform(1));
        row.assertShare("areal_density_g_cm2", overhead(depth, placed), SLANT);
    }

    /** The study prints one figure, 400, for two metres: half a unit of it is 50. */
    @Test
    @Published(work = "Silberberg, Tsao, Adams and Letaw (1985), Lunar Bases and Space Activities of the 21st Century",
            place = "p 663: about 2 m of dense soil for 0.05 Sv a year", printedValue = 400, unit = "g/cm2",
            tolerance = 50, remembered = true)
    void twoMetresOfSoilInPlace(PublishedValue printed) {
        printed.assertEqualTo(overhead(2, undisturbed(LunarProfile.bulkDensity())));
    }
}
