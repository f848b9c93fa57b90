// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.DoseRule;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Hull;
import bermwright.site.plan.HullBody;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Stowage;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Water and other mass against a part of the wall shields the stations that it stands beside. */
class StowageTest {
    /** Rays are refined until doses settle. */
    private static final double SETTLED = 0.01;
    @TempDir
    Path directory;

    private static Hull hull(List<Hull.SkinLayer> skin, Stowage... stowage) {
        Hull hull = SamplePlans.hull("A", new Point(120, 150), 75);
        return new Hull(hull.id(), new HullBody(hull.length(), hull.diameter(), hull.baseEnd(), hull.farEnd(), skin,
                List.of(stowage), hull.shell(), hull.innerPressure()), hull.massProperties(), hull.placement(),
                hull.lowering(), hull.seat(), hull.hatches(), hull.stations(), Optional.empty(), hull.held(),
                hull.annotations());
    }

    private static Stowage stowage(String material, double arealDensity, double from, double to, double... around) {
        return new Stowage("tank", material, arealDensity, from, to, Math.toRadians(around[0]),
                Math.toRadians(around[1]), Annotations.NOTHING);
    }

    private static Hull.SkinLayer layer(String material, double arealDensity) {
        return new Hull.SkinLayer(material, arealDensity, Annotations.NOTHING);
    }

    private SiteDose dose(Hull hull) {
        ElevationGrid ground = SamplePlans.ground((e, n) -> 0);
        Plan plan = SamplePlans.plan(List.of(hull));
        return SiteDose.of(plan, SiteCover.raised(plan, ground, ground), new DoseSources(new Responses(directory),
                directory), Progress.NONE);
    }

    private double best(Hull hull) {
        return dose(hull).stations().get(0).covered().best();
    }

    @Test
    void aRingOfTheSkinsOwnStuffIsAThickerSkinAndPartsAddUp() {
        Hull bare = hull(List.of(layer("aluminium", 50)));
        double length = bare.length();
        double none = best(bare);
        double ring = best(hull(bare.skin(), stowage("aluminium", 300, 0, length, -180, 180)));
        double crown = best(hull(bare.skin(), stowage("aluminium", 300, 0, length, -90, 90)));
        double left = best(hull(bare.skin(), stowage("aluminium", 300, 0, length, -90, 0)));
        double right = best(hull(bare.skin(), stowage("aluminium", 300, 0, length, 0, 90)));
        assertTrue(ring < none && crown < left && left < none, none + " " + left + " " + crown + " " + ring);
        assertEquals(none - crown, none - left + (none - right), SETTLED * none);
        double belly = best(hull(bare.skin(), stowage("aluminium", 300, 0, length, 110, 250)));
        assertEquals(none, belly, 0.25 * (none - crown), "the ground is under the belly");
    }

    @Test
    void waterShieldsBetterThanAsMuchSteelAndAnUnknownStuffIsSaid() {
        List<Hull.SkinLayer> skin = List.of(layer("aluminium", 50));
        double water = best(hull(skin, stowage("water", 300, 5, 30, -120, 120)));
        double steel = best(hull(skin, stowage("steel", 300, 5, 30, -120, 120)));
        assertTrue(water < steel, water + " of " + steel);
        SiteDose unknown = dose(hull(skin, stowage("porridge", 300, 5, 30, -120, 120)));
        assertTrue(unknown.findings().stream().anyMatch(f -> f.rule() == DoseRule.DOSE_MATERIAL_UNKNOWN
                && f.text().contains("porridge")), unknown.findings().toString());
    }
}
