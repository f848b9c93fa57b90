// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.foundation.Require;
import bermwright.regolith.Regolith;
import bermwright.regolith.SoilSensitivity;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * One part held against what it is asked at its worst tilt.
 *
 * @param part     the part, in words
 * @param load     what loads it, in words
 * @param demand   what it is asked, in {@code unit}, positive
 * @param capacity what it bears, in {@code unit}
 * @param unit     unit of both
 * @param required the least ratio of capacity to demand asked (1)
 * @param tilt     the tilt at which the ratio is least (rad)
 * @param source   where capacity and required ratio are from
 * @param soil     how the ratio moves with the soil's strength, for parts that the soil bears
 */
public record PartCheck(String part, String load, double demand, double capacity, String unit, double required,
        double tilt, String source, Optional<SoilSensitivity> soil) {
    /** Refuses demands that are not numbers. */
    public PartCheck {
        Require.positive("demand on " + part, demand, unit);
        Require.finite("capacity of " + part, capacity, unit);
        Require.positive("required factor of " + part, required, "1");
        Objects.requireNonNull(soil, "soil");
    }

    /**
     * A part that the soil does not bear.
     *
     * @param part     the part, in words
     * @param load     what loads it, in words
     * @param demand   what it is asked, in {@code unit}, positive
     * @param capacity what it bears, in {@code unit}
     * @param unit     unit of both
     * @param required the least ratio of capacity to demand asked (1)
     * @param tilt     the tilt at which the ratio is least (rad)
     * @param source   where capacity and required ratio are from
     */
    public PartCheck(String part, String load, double demand, double capacity, String unit, double required,
            double tilt, String source) {
        this(part, load, demand, capacity, unit, required, tilt, source, Optional.empty());
    }

    /**
     * This check of a part that the soil bears, at the same demand and tilt.
     *
     * @param ground what bears it
     * @param bears  its capacity in a ground, in {@code unit}
     * @return the check with how its ratio moves with the soil's strength
     */
    public PartCheck onSoil(Regolith ground, ToDoubleFunction<Regolith> bears) {
        return new PartCheck(part, load, demand, capacity, unit, required, tilt, source,
                Optional.of(SoilSensitivity.of(ground, soil -> bears.applyAsDouble(soil) / demand)));
    }

    /**
     * The ratio of capacity to demand.
     *
     * @return the ratio (1)
     */
    public double factor() {
        return capacity / demand;
    }

    /**
     * The ratio over what is asked; the part with the least governs.
     *
     * @return the ratio (1), below one where the part fails the check
     */
    public double margin() {
        return factor() / required;
    }

    /**
     * Whether the part bears enough.
     *
     * @return true where the ratio is at least the required one
     */
    public boolean holds() {
        return factor() >= required;
    }
}
