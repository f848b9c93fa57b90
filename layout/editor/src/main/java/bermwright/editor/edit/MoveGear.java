// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;
import bermwright.terrain.grid.TrueMetres;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Puts a piece of a hull's gear elsewhere; what stands on both sides of the lay-down plane moves on both. Only what the
 * plan states can change: winches go ahead and back, poles and stays to the sides too.
 *
 * @param hull   the hull's id
 * @param spot   the piece and where it stood
 * @param to     where it is wanted
 * @param metres true metres
 */
public record MoveGear(String hull, GearSpot spot, Point to, TrueMetres metres) implements PlanEdit {
    /** Gear is set out to a tenth of a metre (1/m). */
    private static final double GRAINS = 10;
    private static final double LEAST = 0.1;

    @Override
    public Plan applied(Plan plan) {
        int index = Part.hull(hull).index(plan);
        if (index < 0 || plan.hulls().get(index).lowering().isEmpty()) {
            return plan;
        }
        Hull of = plan.hulls().get(index);
        LoweringGear gear = of.lowering().get();
        Point pivot = of.lyingBase(metres);
        double east = metres.length(to.east() - pivot.east());
        double north = metres.length(to.north() - pivot.north());
        double ahead = east * of.layDownAzimuth().east() + north * of.layDownAzimuth().north();
        double aside = Math.abs(east * of.layDownAzimuth().north() - north * of.layDownAzimuth().east());
        String path = "hulls[" + index + "].lowering.";
        Map<String, Double> numbers = new LinkedHashMap<>();
        switch (spot.piece()) {
            case WINCH -> numbers.put(path + "lines.winch.behind_pivot_m", grain(-ahead));
            case POLE -> {
                numbers.put(path + "poles.behind_pivot_m", grain(-ahead));
                if (gear.poles().filter(p -> p.poleCount() > 1).isPresent()) {
                    numbers.put(path + "poles.half_spread_m", grain(aside));
                }
            }
            case STAY -> {
                String stay = path + "stays[" + spot.set() + "].";
                numbers.put(stay + "behind_pole_m", grain(-ahead
                        - gear.poles().map(LoweringGear.Poles::behindPivot).orElse(0.0)));
                if (gear.poles().filter(p -> p.poleCount() > 1).isPresent()) {
                    numbers.put(stay + "half_spread_m", grain(aside));
                }
            }
            case PULL_OVER -> numbers.put(path + "pull_over.anchor_ahead_m", grain(ahead));
            default -> throw new AssertionError(spot.piece());
        }
        return PlanValues.with(plan, numbers);
    }

    private static double grain(double metre) {
        return Math.max(LEAST, Math.rint(metre * GRAINS) / GRAINS);
    }

    @Override
    public String words() {
        return "Move the " + spot.piece().word() + " of " + Part.hull(hull).words();
    }
}
