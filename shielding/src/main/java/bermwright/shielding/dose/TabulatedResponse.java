// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * A response given by a table of areal densities, its doses joined in the logarithm without overshoot; deeper than the
 * table it keeps the last value, an upper bound.
 */
final class TabulatedResponse implements Response {
    private static final double LEAST_DOSE = 1e-30;

    private final double deepest;
    /** The logarithm of the dose, then, where it is told apart, of what slow neutrons make of it. */
    private final CurveFan logs;
    private final boolean hasSlow;
    private final Spread spread;
    private final Terms terms;

    /**
     * What belongs to a response beside its table.
     *
     * @param per              what the dose is counted over
     * @param openGroundReturn dose that open ground sends back (Sv), zero or more
     * @param soilGammas       gammas of what is radioactive in the soil, over open ground (Sv), zero or more
     * @param skinEquivalence  what the skin counts as in soil (1), positive
     * @param note             model, range, spread and source
     * @param slow             what slow neutrons make, empty where they are not told apart
     * @param slanted          dose by slant, empty where directions are not told apart
     */
    record Terms(Per per, double openGroundReturn, double soilGammas, double skinEquivalence, ModelNote note,
            Optional<Slow> slow, Optional<SlantedDoses> slanted) {
        /** Terms of a table that does not tell slow neutrons apart. */
        Terms(Per per, double openGroundReturn, double skinEquivalence, ModelNote note) {
            this(per, openGroundReturn, 0, skinEquivalence, note, Optional.empty(), Optional.empty());
        }

        Terms {
            Objects.requireNonNull(slow, "slow");
            Objects.requireNonNull(slanted, "slanted");
            Objects.requireNonNull(per, "per");
            Objects.requireNonNull(note, "note");
            Require.notNegative("open ground return", openGroundReturn, "Sv");
            Require.notNegative("soil gammas", soilGammas, "Sv");
            Require.positive("skin equivalence", skinEquivalence, "1");
        }
    }

    /**
     * Slow neutrons.
     *
     * @param doses the part of each dose of the table that they make (Sv)
     * @param room  what they make in a room of any walls
     */
    record Slow(double[] doses, DiffuseRoom room) {
    }

    /** How far a response may be off, by areal density (kg/m2). */
    interface Spread {
        Band at(double arealDensity);

        /** How far it changes with the sun. */
        default Band bySun(double arealDensity) {
            return Band.NONE;
        }
    }

    /**
     * A response from a table.
     *
     * @param depths areal densities (kg/m2), the first one zero, rising
     * @param doses  doses (Sv), positive
     * @param spread how far the response may be off
     * @param terms  what belongs to it beside the table
     */
    TabulatedResponse(double[] depths, double[] doses, Spread spread, Terms terms) {
        Require.that(depths.length == doses.length && depths.length >= 2,
                "%s areal densities and %s doses; accepted: as many of both, at least two", depths.length,
                doses.length);
        double[] logDose = new double[doses.length];
        for (int i = 0; i < doses.length; i++) {
            Require.notNegative("areal density", depths[i], "kg/m2");
            Require.notNegative("dose", doses[i], "Sv");
            Require.that(i == 0 || depths[i] > depths[i - 1], "areal density %s kg/m2 does not rise", depths[i]);
            logDose[i] = Math.log(Math.max(doses[i], LEAST_DOSE));
        }
        deepest = depths[depths.length - 1];
        hasSlow = terms.slow().isPresent();
        logs = terms.slow().map(slow -> new CurveFan(depths, logDose,
                Arrays.stream(slow.doses()).map(v -> Math.log(Math.max(v, LEAST_DOSE))).toArray()))
                .orElseGet(() -> new CurveFan(depths, logDose));
        this.spread = Objects.requireNonNull(spread, "spread");
        this.terms = Objects.requireNonNull(terms, "terms");
    }

    @Override
    public double isotropicDose(double arealDensity) {
        return whole(spot(arealDensity));
    }

    @Override
    public double diffuseDose(double arealDensity) {
        CurveFan.Spot spot = spot(arealDensity);
        return diffuse(spot, whole(spot));
    }

    @Override
    public double straightDose(double arealDensity) {
        CurveFan.Spot spot = spot(arealDensity);
        double whole = whole(spot);
        return whole - diffuse(spot, whole);
    }

    @Override
    public double straightDose(double arealDensity, double slant) {
        return slanted(straightDose(arealDensity), arealDensity, slant);
    }

    @Override
    public double rayDose(double arealDensity, double slant) {
        CurveFan.Spot spot = spot(arealDensity);
        double whole = whole(spot);
        double diffuse = diffuse(spot, whole);
        return slanted(whole - diffuse, arealDensity, slant) + diffuse;
    }

    private CurveFan.Spot spot(double arealDensity) {
        Require.notNegative("areal density", arealDensity, "kg/m2");
        return logs.at(arealDensity);
    }

    private double whole(CurveFan.Spot spot) {
        return Math.exp(logs.value(0, spot));
    }

    private double diffuse(CurveFan.Spot spot, double whole) {
        return hasSlow ? Math.min(Math.exp(logs.value(1, spot)), whole) : 0;
    }

    private double slanted(double square, double arealDensity, double slant) {
        return slant <= 1 || terms.slanted().isEmpty() ? square
                : terms.slanted().get().slanted(square, arealDensity, slant);
    }

    @Override
    public Optional<DiffuseRoom> room() {
        return terms.slow().map(Slow::room);
    }

    @Override
    public double deepest() {
        return deepest;
    }

    @Override
    public boolean isTested(double arealDensity, double slant) {
        return terms.slanted().isPresent() ? arealDensity / slant <= ModelSpread.TESTED : arealDensity <= deepest;
    }

    @Override
    public double openGroundReturn() {
        return terms.openGroundReturn();
    }

    @Override
    public double soilGammas() {
        return terms.soilGammas();
    }

    @Override
    public Band band(double arealDensity) {
        Require.notNegative("areal density", arealDensity, "kg/m2");
        return spread.at(arealDensity);
    }

    @Override
    public Band solarBand(double arealDensity) {
        Require.notNegative("areal density", arealDensity, "kg/m2");
        return spread.bySun(arealDensity);
    }

    @Override
    public double skinEquivalence() {
        return terms.skinEquivalence();
    }

    @Override
    public Per per() {
        return terms.per();
    }

    @Override
    public ModelNote note() {
        return terms.note();
    }
}
