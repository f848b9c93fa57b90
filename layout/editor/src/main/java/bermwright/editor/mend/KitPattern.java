// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Gear in the proportions usual for a hull of its size, as a start for the search: a pair of poles, two lines with
 * winches behind, stays, a pull-over line and a hold at the pivot. No figure of it is offered before it was checked.
 *
 * <p>Proportions are chosen here: lugs at four fifths of the length, poles seven tenths of it high and a quarter of it
 * behind the pivot; sizes of lines grow with their breaking load, as those of wire rope do (mass and stiffness in
 * proportion, diameter with the root).
 */
final class KitPattern {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final double KILO = 1000;
    /** A line of 900 kN, 36 mm, 5.3 kg/m and 81 MN is the pattern. */
    private static final double PATTERN_LOAD = 900;

    private final Hull hull;
    private final double weight;
    private final double each;
    private final double factor;

    KitPattern(Plan plan, Hull hull) {
        this.hull = hull;
        this.weight = hull.mass() * plan.ground().gravity() / KILO;
        double lug = lug();
        // Vertical balance about the pivot with the line at 30 degrees; two lines share it.
        double total = weight * hull.centreOfMassFromBase() / (lug * 0.5);
        this.each = Math.max(1, total / 2);
        this.factor = plan.rules().lineDesignFactor();
    }

    private double lug() {
        double length = hull.length();
        return round(Math.min(0.95 * length, Math.max(0.8 * length, 1.15 * hull.centreOfMassFromBase())));
    }

    /** The gear as the plan file has it. */
    ObjectNode json() {
        double length = hull.length();
        double half = round(Math.max(hull.diameter() / 2 + 1, 0.65 * hull.diameter()));
        double height = round(0.7 * length);
        double behind = round(Math.max(0.25 * length, hull.diameter() + 2));
        ObjectNode gear = JSON.createObjectNode();
        gear.put("means", "lines");
        ObjectNode lines = gear.putObject("lines");
        lines.put("count", 2).put("lug_from_base_m", lug()).put("lug_half_spread_m", round(hull.diameter() / 2));
        line(lines.putObject("line"), 1.4 * each * factor);
        ObjectNode winch = lines.putObject("winch");
        winch.put("rating_each_kN", round(1.5 * each)).put("brake_holding_kN", round(2.5 * each));
        winch.put("brake_heat_MJ", round(1 + 2 * weight * hull.centreOfMassFromBase() / KILO));
        winch.put("behind_pivot_m", round(behind + 1.2 * height));
        plate(winch.putObject("anchor"), 2);
        lines.putObject("ends").put("lug_capacity_kN", round(1.6 * each * factor));
        ObjectNode poles = gear.putObject("poles");
        poles.put("height_m", height).put("behind_pivot_m", behind).put("half_spread_m", half);
        poles.put("diameter_m", round(height / 52)).put("wall_mm", 16).put("yield_MPa", 355).put("modulus_GPa", 210);
        poles.put("foot_area_m2", 2);
        poles.putObject("head").put("sheave_diameter_mm", Math.rint(20 * diameter(1.4 * each * factor)))
                .put("sheave_capacity_kN", round(3 * each * factor)).put("tie_capacity_kN", round(each));
        ObjectNode stay = gear.putArray("stays").addObject();
        stay.put("behind_pole_m", height).put("half_spread_m", half)
                .put("breaking_load_kN", round(1.4 * each * factor));
        stay.putObject("anchor").put("kind", "ballast").put("mass_t", 30);
        ObjectNode pull = gear.putObject("pull_over");
        pull.put("lug_from_base_m", lug()).put("anchor_ahead_m", round(1.5 * length));
        pull.put("winch_rating_kN", round(Math.max(20, 0.4 * each)));
        plate(pull.putObject("anchor"), 1.5);
        line(pull.putObject("line"), Math.max(60, 0.4 * each) * factor);
        pull.putObject("ends").put("lug_capacity_kN", round(Math.max(60, 0.5 * each) * factor));
        gear.putObject("pivot_hold").putObject("anchor").put("kind", "screw").put("count", 6).put("diameter_m", 0.4)
                .put("depth_m", 2);
        return gear;
    }

    private static double diameter(double load) {
        return 36 * Math.sqrt(load / PATTERN_LOAD);
    }

    private static void line(ObjectNode line, double load) {
        line.put("breaking_load_kN", round(load)).put("mass_kg_m", round(5.3 * load / PATTERN_LOAD))
                .put("stiffness_EA_MN", round(81 * load / PATTERN_LOAD)).put("diameter_mm", Math.rint(diameter(load)));
    }

    private static void plate(ObjectNode anchor, double width) {
        anchor.put("kind", "plate").put("width_m", width).put("height_m", 1).put("depth_m", 1.5);
    }

    /** To two digits or a tenth, whichever is finer. */
    private static double round(double value) {
        double step = Math.max(0.1, Math.pow(10, Math.floor(Math.log10(Math.max(value, 1))) - 1));
        return Math.rint(Math.max(value, 0.1) / step) * step;
    }
}
