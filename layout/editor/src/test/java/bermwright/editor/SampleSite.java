// SPDX-License-Identifier: Apache-2.0
package bermwright.editor;

import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** A small site for tests: rolling ground by a formula and a plan with two hulls, a keep-out and a borrow ground. */
public final class SampleSite {
    /** Middle of the keep-out, east and north (m). */
    public static final double[] KEEP_OUT = {310, 300};
    private static final int NODES = 241;
    private static final double SPACING = 2;

    private SampleSite() {
    }

    /** Writes plan and ground into a folder and returns the plan's file. */
    public static Path write(Path folder) {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("ground.asc"), ground());
            return Files.writeString(folder.resolve("plan.json"), text());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The plan. */
    public static Plan plan() {
        return PlanFiles.read(text(), "sample");
    }

    /** The ground at a place (m). */
    public static double height(double east, double north) {
        double crater = Math.hypot(east - 380, north - 90);
        double bowl = crater < 40 ? -6 * (1 - crater * crater / 1600) : 0;
        return 1.5 * Math.sin(east / 70) * Math.cos(north / 90) + 0.01 * north + bowl;
    }

    private static String ground() {
        StringBuilder text = new StringBuilder("ncols " + NODES + "\nnrows " + NODES
                + "\nxllcenter 0\nyllcenter 0\ncellsize " + SPACING + "\nNODATA_value -9999\n");
        for (int row = NODES - 1; row >= 0; row--) {
            for (int column = 0; column < NODES; column++) {
                text.append(String.format(Locale.ROOT, "%.3f ", height(column * SPACING, row * SPACING)));
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static String hull(String id, double east, double north, double azimuth) {
        return """
                { "id": "%s", "length_m": 38, "diameter_m": 7.4, "mass_t": 74, "centre_of_mass_from_base_m": 20,
                  "skin": [{ "material": "steel", "areal_density_g_cm2": 3.2 }],
                  "base_centre": { "east_m": %s, "north_m": %s }, "lay_down_azimuth_deg": %s,
                  "lowering": { "means": "lines", "wander_deg": 3, "margin_m": 2,
                    "lines": { "count": 2, "lug_from_base_m": 30, "lug_half_spread_m": 3.5,
                      "line": { "breaking_load_kN": 800, "mass_kg_m": 4.8, "stiffness_EA_MN": 75, "diameter_mm": 34 },
                      "winch": { "rating_each_kN": 220, "brake_heat_MJ": 5, "behind_pivot_m": 40,
                        "anchor": { "kind": "plate", "width_m": 2.0, "height_m": 1.0, "depth_m": 1.5 } } },
                    "poles": { "height_m": 26, "behind_pivot_m": 9, "half_spread_m": 5, "diameter_m": 0.5,
                      "wall_mm": 16, "yield_MPa": 355, "modulus_GPa": 210, "foot_area_m2": 2 },
                    "stays": [{ "behind_pole_m": 26, "half_spread_m": 5, "breaking_load_kN": 800,
                      "anchor": { "kind": "ballast", "mass_t": 30 } }],
                    "pull_over": { "lug_from_base_m": 30, "anchor_ahead_m": 55, "winch_rating_kN": 60,
                      "anchor": { "kind": "plate", "width_m": 1, "height_m": 1, "depth_m": 1 } },
                    "pivot_hold": { "anchor": { "kind": "screw", "count": 4, "diameter_m": 0.4, "depth_m": 2 } } },
                  "hatches": [{ "id": "main", "end": "base", "width_m": 1.2, "height_m": 2 },
                              { "id": "side", "end": "side", "along_m": 18, "around_deg": 90, "width_m": 1.2,
                                "height_m": 2 }],
                  "stations": [{ "id": "bunks", "along_m": 20, "up_m": 0.5, "occupancy_share": 0.6,
                                 "storm_shelter": true },
                               { "id": "bench", "along_m": 9, "up_m": -1, "occupancy_share": 0.4 }],
                  "cover": { "thickness_m": 2.5, "base_end": "open" } }""".formatted(id, east, north, azimuth);
    }

    /** The text of the plan. */
    public static String text() {
        return """
                { "bermwright_plan": 1, "title": "Sample site",
                  "ground": { "elevation_file": "ground.asc", "elevation_spread_m": 0.1 },
                  "hulls": [%s,
                            %s],
                  "keep_outs": [{ "id": "boulders", "kind": "boulder field",
                    "area": [[290, 280], [330, 280], [330, 320], [290, 320]] }],
                  "corridors": [{ "id": "main-way", "width_m": 6, "line": [[60, 60], [200, 90], [330, 60]] }],
                  "landing_pads": [{ "id": "P1", "centre": { "east_m": 430, "north_m": 430 }, "radius_m": 15,
                    "stand_off_m": 120 }],
                  "borrow_grounds": [{ "id": "north", "area": [[60, 380], [200, 380], [200, 450], [60, 450]],
                    "greatest_depth_m": 0.8 }],
                  "machines": [{ "id": "hauler", "kind": "scoop hauler", "count": 2, "load_t": 2, "speed_m_s": 0.6 }],
                  "exposure": { "stay_days": 180, "solar_activity": "minimum", "event": "august 1972",
                    "limits": [{ "quantity": "effective dose", "from": "all", "over": "stay", "limit_mSv": 150,
                      "source": "set in this plan" }] },
                  "order_of_work": [{ "id": "1", "step": "lower", "of": "A" },
                                    { "id": "2", "step": "cover", "of": "A", "after": ["1"] },
                                    { "id": "3", "step": "lower", "of": "B", "after": ["1"] }]
                }
                """.formatted(hull("A", 120, 220, 80), hull("B", 120, 300, 95));
    }
}
