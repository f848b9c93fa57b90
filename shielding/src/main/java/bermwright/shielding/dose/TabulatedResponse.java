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
    private final MonotoneCurve logDose;
    private final Optional<MonotoneCurve> logDiffuse;
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
        double[] logs = new double[doses.length];
        for (int i = 0; i < doses.length; i++) {
            Require.notNegative("areal density", depths[i], "kg/m2");
            Require.notNegative("dose", doses[i], "Sv");
            Require.that(i == 0 || depths[i] > depths[i - 1], "areal density %s kg/m2 does not rise", depths[i]);
            logs[i] = Math.log(Math.max(doses[i], LEAST_DOSE));
        }
        deepest = depths[depths.length - 1];
        logDose = new MonotoneCurve(depths, logs);
        logDiffuse = terms.slow().map(slow -> new MonotoneCurve(depths,
                Arrays.stream(slow.doses()).map(v -> Math.log(Math.max(v, LEAST_DOSE))).toArray()));
        this.spread = Objects.requireNonNull(spread, "spread");
        this.terms = Objects.requireNonNull(terms, "terms");
    }

    @Override
    public double isotropicDose(double arealDensity) {
        Require.notNegative("areal density", arealDensity, "kg/m2");
        return Math.exp(logDose.at(arealDensity));
    }

    @Override
    public double diffuseDose(double arealDensity) {
        Require.notNegative("areal density", arealDensity, "kg/m2");
        return logDiffuse.map(curve -> Math.min(Math.exp(curve.at(arealDensity)), isotropicDose(arealDensity)))
                .orElse(0.0);
    }

    @Override
    public double straightDose(double arealDensity) {
        double whole = isotropicDose(arealDensity);
        return logDiffuse.isEmpty() ? whole : whole - Math.min(Math.exp(logDiffuse.get().at(arealDensity)), whole);
    }

    @Override
    public double straightDose(double arealDensity, double slant) {
        double square = straightDose(arealDensity);
        if (slant <= 1 || terms.slanted().isEmpty()) {
            return square;
        }
        SlantedDoses doses = terms.slanted().get();
        return square * doses.at(arealDensity, slant) / doses.at(arealDensity, 1);
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
