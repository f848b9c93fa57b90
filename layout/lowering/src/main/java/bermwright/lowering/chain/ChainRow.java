// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import bermwright.finding.Verdict;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One part asked for one load case, at the tilt and centre of mass that ask most of it.
 *
 * @param part     the part
 * @param load     the load case
 * @param shift    how far the centre of mass is taken nearer the far end than stated (m)
 * @param demand   what the part is asked, in {@code unit}; absent where it cannot be worked out
 * @param capacity what it bears, in {@code unit}; absent where it was not given
 * @param unit     unit of both, SI
 * @param required the least factor of safety asked (1)
 * @param tilt     the tilt (rad)
 * @param source   where capacity and required factor are from; where nothing is judged, what is missing
 */
public record ChainRow(Part part, LoadCase load, double shift, OptionalDouble demand, OptionalDouble capacity,
        String unit, double required, double tilt, String source) {
    /** Refuses missing parts. */
    public ChainRow {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(load, "load");
        Objects.requireNonNull(demand, "demand");
        Objects.requireNonNull(capacity, "capacity");
    }

    /**
     * Capacity over demand.
     *
     * @return the factor of safety (1); absent where nothing is judged
     */
    public OptionalDouble factor() {
        return demand.isPresent() && capacity.isPresent() && demand.getAsDouble() > 0
                ? OptionalDouble.of(capacity.getAsDouble() / demand.getAsDouble()) : OptionalDouble.empty();
    }

    /**
     * The factor of safety over the required one; the part with the least governs.
     *
     * @return the ratio (1), below one where the part fails; endless where nothing is judged
     */
    public double margin() {
        return factor().orElse(Double.POSITIVE_INFINITY) / required;
    }

    /**
     * Whether the part bears what is asked.
     *
     * @return the verdict
     */
    public Verdict verdict() {
        OptionalDouble factor = factor();
        return factor.isEmpty() ? Verdict.NOT_JUDGED
                : factor.getAsDouble() >= required ? Verdict.MET : Verdict.NOT_MET;
    }

    /**
     * The load case in words, with the centre of mass where it is not the stated one.
     *
     * @return such as {@code stop, centre of mass 0.80 m nearer the far end}
     */
    public String loadWords() {
        return shift == 0 ? load.word() : String.format(Locale.ROOT,
                "%s, centre of mass %.2f m nearer the %s", load.word(), Math.abs(shift),
                shift > 0 ? "far end" : "base");
    }

    /**
     * The unit in which pages show the row.
     *
     * @return kN, kN m, MJ or MPa
     */
    public String unitShown() {
        return ChainUnits.shown(unit);
    }

    /**
     * What the part is asked, in the unit shown.
     *
     * @return the demand; absent where it cannot be worked out
     */
    public OptionalDouble demandShown() {
        return shown(demand);
    }

    /**
     * What the part bears, in the unit shown.
     *
     * @return the capacity; absent where it was not given
     */
    public OptionalDouble capacityShown() {
        return shown(capacity);
    }

    private OptionalDouble shown(OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() / ChainUnits.scale(unit)) : value;
    }

    /**
     * Whether this row asks more of its part than another.
     *
     * @param other a row of the same part
     * @return true where its margin is less, or where neither is judged and its demand is more
     */
    boolean isHarderThan(ChainRow other) {
        return margin() < other.margin() || margin() == other.margin()
                && demand.orElse(-1) > other.demand.orElse(-1);
    }
}
