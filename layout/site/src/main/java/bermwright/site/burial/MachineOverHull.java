// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.foundation.ModelNote;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Machine;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much soil must lie over a hull's crown before a machine may cross it.
 *
 * <p>The loaded machine stands on one round patch as large as all its contact areas together; its pressure spreads in
 * the soil as in an elastic half space, {@code q (1 - (1 + (R/z)^2)^-1.5)} under the middle at the depth z. It and the
 * soil's own weight together may reach half of what the shell stands. Wheels farther apart press less; braking
 * and uneven ground press more; arching is left out.
 *
 * @param machine id of the machine
 * @param hull    id of the hull
 * @param on      soil required with the pressure inside on (m); empty where no planned depth is enough
 * @param off     the same with it off (m)
 * @param planned planned thickness over the crown (m)
 * @param why     why nothing is judged; empty where it is
 * @see "Boussinesq (1885), stress under the middle of a uniformly loaded circle"
 */
public record MachineOverHull(String machine, String hull, OptionalDouble on, OptionalDouble off, double planned,
        String why) {
    /** Depths are tried this far apart (m). */
    private static final double STEP = 0.05;
    private static final double POWER = 1.5;

    /**
     * Every machine over every covered hull.
     *
     * @param plan    the plan
     * @param burials what soil does to the hulls
     * @return one for each pair
     */
    public static List<MachineOverHull> of(Plan plan, List<HullBurial> burials) {
        List<MachineOverHull> all = new ArrayList<>();
        for (Machine machine : plan.machines()) {
            plan.hulls().stream().filter(h -> h.cover().isPresent()).forEach(hull -> all.add(of(plan, machine, hull,
                    burials.stream().filter(b -> b.id().equals(hull.id())).findFirst())));
        }
        return all;
    }

    private static MachineOverHull of(Plan plan, Machine machine, Hull hull, Optional<HullBurial> burial) {
        double planned = hull.cover().orElseThrow().crownThickness();
        String why = machine.mass().isEmpty() || machine.contactArea().isEmpty()
                ? "mass_t and contact_area_m2 of the machine are not stated" : burial.isEmpty()
                || hull.shell().isEmpty() ? "no shell is stated" : "";
        if (!why.isEmpty()) {
            return new MachineOverHull(machine.id(), hull.id(), OptionalDouble.empty(), OptionalDouble.empty(), planned,
                    why);
        }
        double gravity = plan.ground().gravity();
        double area = machine.contactArea().orElseThrow();
        Load load = new Load((machine.mass().orElseThrow() + machine.load()) * gravity / area,
                Math.sqrt(area / Math.PI), plan.ground().regolith().placedDensity() * gravity);
        double stiffness = burial.get().heldEnds().orElse(0.0);
        return new MachineOverHull(machine.id(), hull.id(), load.depth(hull.innerPressure() + stiffness, planned),
                load.depth(stiffness, planned), planned, "");
    }

    /** A patch of pressure (Pa) of a radius (m) on soil of a weight (N/m3). */
    private record Load(double pressure, double radius, double weight) {
        OptionalDouble depth(double capacity, double planned) {
            for (double depth = STEP; depth <= planned + STEP / 2; depth += STEP) {
                if (HullBurial.WANTED_FACTOR * (below(pressure, radius, depth) + weight * depth) <= capacity) {
                    return OptionalDouble.of(depth);
                }
            }
            return OptionalDouble.empty();
        }
    }

    /**
     * Pressure in the ground under the middle of a loaded circle.
     *
     * @param pressure pressure on the circle (Pa)
     * @param radius   its radius (m), above zero
     * @param depth    depth under it (m), above zero
     * @return the pressure there (Pa)
     */
    static double below(double pressure, double radius, double depth) {
        double ratio = radius / depth;
        return pressure * (1 - Math.pow(1 + ratio * ratio, -POWER));
    }

    /** What the depths rest on. */
    public static ModelNote note() {
        return new ModelNote("machine-over-hull", "pressure of a loaded machine on one round patch spread in an elastic"
                + " half space, with the soil's weight against half of what the shell stands", "slow machines on level"
                + " soil; no arching, no wheels apart, no braking", "a factor of two", ModelNote.Status.COMPUTED,
                "Boussinesq (1885); factor 2, common practice, no source");
    }
}
