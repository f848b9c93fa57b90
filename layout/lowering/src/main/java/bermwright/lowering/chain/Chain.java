// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import bermwright.finding.Verdict;
import bermwright.lowering.statics.LoweringCase;
import bermwright.regolith.SoilSensitivity;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The whole chain of a lowering: every part in the load path asked for every load case that reaches it, each at the
 * tilt that asks most and with the centre of mass as stated and two standard deviations to either end.
 *
 * <p>Rigid hull, straight weightless lines pulled alike while nothing is lost; heads balanced in space; springs without
 * damping in stop, snatch and loss, an upper bound. A part whose rating the plan leaves out is not judged, never met.
 *
 * @param rows   one row for each part and load case, in the order of the load path
 * @param bySoil how the factor of the governing row of each part that the soil bears moves with its strength
 */
public record Chain(List<ChainRow> rows, Map<Part, SoilSensitivity> bySoil) {
    /** Sorts and copies the rows. */
    public Chain {
        bySoil = Map.copyOf(bySoil);
        rows = rows.stream().sorted(Comparator.comparing(ChainRow::part).thenComparing(ChainRow::load)).toList();
    }

    /**
     * The chain of a lowering.
     *
     * @param setup the case
     * @return the chain
     */
    public static Chain of(LoweringCase setup) {
        Asked asked = new Asked();
        PartCapacities bears = new PartCapacities(setup);
        double spread = ChainWork.spread(setup.tipping());
        for (double shift : spread > 0 ? new double[] {0, -spread, spread} : new double[] {0}) {
            ChainWork work = ChainWork.shifted(setup, bears, shift, asked);
            work.all();
        }
        return new Chain(asked.rows(), asked.bySoil(setup.soil()));
    }

    /**
     * What is left of the chain once one thing is lost at a tilt, with the centre of mass as stated.
     *
     * @param setup the case
     * @param lost a load case of the kind {@link LoadCase.Kind#LOSS}
     * @param tilt tilt (rad), balance or beyond
     * @return the chain; empty where the plan has no such thing
     */
    public static Chain after(LoweringCase setup, LoadCase lost, double tilt) {
        Asked asked = new Asked();
        ChainWork.shifted(setup, new PartCapacities(setup), 0, asked).lost(lost, tilt);
        return new Chain(asked.rows(), Map.of());
    }

    /**
     * The chain while all winches stop dead at a tilt, with the centre of mass as stated.
     *
     * @param setup the case
     * @param tilt tilt (rad), balance or beyond
     * @return the chain; nothing is judged in it where the lines have no stiffness given
     */
    public static Chain stopped(LoweringCase setup, double tilt) {
        Asked asked = new Asked();
        ChainWork.shifted(setup, new PartCapacities(setup), 0, asked).stopped(tilt);
        return new Chain(asked.rows(), Map.of());
    }

    /**
     * The row of each part whose load case governs it, the least margin first; what is not judged comes last.
     *
     * @return the rows
     */
    public List<ChainRow> governing() {
        return Stream.of(Part.values()).flatMap(p -> governing(p).stream())
                .sorted(Comparator.comparingDouble(ChainRow::margin)).toList();
    }

    /**
     * The row of the load case that governs a part.
     *
     * @param part the part
     * @return the row; absent where nothing loads it
     */
    public Optional<ChainRow> governing(Part part) {
        return rows.stream().filter(r -> r.part() == part)
                .reduce((a, b) -> b.isHarderThan(a) ? b : a);
    }

    /**
     * How the factor of a row moves with the soil's strength.
     *
     * @param row a row of this chain
     * @return how it moves; absent where the row does not govern its part, or the soil does not bear the part
     */
    public Optional<SoilSensitivity> soil(ChainRow row) {
        return governs(row) ? Optional.ofNullable(bySoil.get(row.part())) : Optional.empty();
    }

    /**
     * Whether the row is the one whose load case governs its part.
     *
     * @param row a row of this chain
     * @return true where it is
     */
    public boolean governs(ChainRow row) {
        return governing(row.part()).filter(row::equals).isPresent();
    }

    /**
     * The rows that hold what is not lost.
     *
     * @return the rows of working and shock cases
     */
    public List<ChainRow> intact() {
        return rows.stream().filter(r -> r.load().kind() != LoadCase.Kind.LOSS).toList();
    }

    /**
     * The verdict over all rows: not met where one is not, else not judged where one is not judged.
     *
     * @return the verdict
     */
    public Verdict verdict() {
        if (rows.stream().anyMatch(r -> r.verdict() == Verdict.NOT_MET)) {
            return Verdict.NOT_MET;
        }
        return rows.stream().anyMatch(r -> r.verdict() == Verdict.NOT_JUDGED) ? Verdict.NOT_JUDGED : Verdict.MET;
    }

    /**
     * The factors of the load cases that govern each kind of part.
     *
     * @return the factors
     */
    public Factors factors() {
        return new Factors(factor(Part.LOWERING_LINE, Part.TERMINATION, Part.LINE_OVER_SHEAVE),
                factor(Part.WINCH, Part.WINCH_BRAKE), factor(Part.POLE),
                factor(Part.WINCH_ANCHOR, Part.STAY_ANCHOR, Part.PULL_OVER_ANCHOR), factor(Part.PIVOT_HOLD));
    }

    private OptionalDouble factor(Part... parts) {
        return Stream.of(parts).flatMap(p -> governing(p).stream()).filter(r -> r.factor().isPresent())
                .min(Comparator.comparingDouble(ChainRow::margin)).map(ChainRow::factor)
                .orElse(OptionalDouble.empty());
    }
}
