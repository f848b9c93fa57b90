// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.Response;
import bermwright.shielding.scene.Soil;
import java.util.Objects;

/**
 * The dose at one station for one response.
 *
 * @param fromSky          dose from the sky (Sv per day or per event)
 * @param groundReturn     what the ground sends back (Sv per day or per event)
 * @param low              16th percentile of both together (Sv per day or per event)
 * @param high             84th percentile of both together (Sv per day or per event)
 * @param shareBeyondTable share of the sky's dose from rays deeper than the response reaches (1), 0 to 1
 * @param skyShare         dose that flies straight from the sky over that under open sky (1)
 * @param doubt            what low and high are made of
 */
public record FoldedDose(double fromSky, double groundReturn, double low, double high, double shareBeyondTable,
        double skyShare, Doubt doubt) {
    /** A trace of cover (kg/m2), under which a response that tells slow neutrons apart has some. */
    private static final double TRACE = 1;

    /** Refuses missing parts. */
    public FoldedDose {
        Objects.requireNonNull(doubt, "doubt");
    }

    /**
     * Folds a view with a response.
     *
     * <p>What flies straight is the mean of the response over the whole ball of directions, those below the horizontal
     * giving nothing. The ground's return is that of open ground times the share of the open sky's dose that reaches
     * the station, and at most that of open ground: a stated model, since what the ground sends back is made by the
     * same particles and crosses the same cover. Slow neutrons fill the room as under a level cover of the least areal
     * density, taken where a tenth of the sky is thinner; that holds the ground's share already, so the greater of
     * both counts and never their sum. Low and high join the band of the response and that of solar activity, weighted
     * by dose, with the spread of density and of thickness as independent, in logarithms.
     *
     * @param view       what the station sees
     * @param response   the response
     * @param soil       the soil, for the density of a layer
     * @param tolerances how far the cover may be off
     * @return the dose
     */
    public static FoldedDose of(SkyView view, Response response, Soil soil, Tolerances tolerances) {
        Sums sums = new Sums(response, tolerances, soil.placedDensity());
        view.forEach(sums::add);
        double open = sums.straight(0) / 2;
        double skyShare = open > 0 ? sums.best / open : 0;
        double ground = response.openGroundReturn() * Math.min(1, skyShare);
        if (response.diffuseDose(TRACE) > 0) {
            sums.diffuse(Distribution.of(view, response.skinEquivalence()).acrossCover(), ground);
        }
        double total = sums.best + ground;
        if (!(sums.best > 0)) {
            return new FoldedDose(sums.best, ground, total, total, 0, skyShare, Doubt.NONE);
        }
        Doubt doubt = sums.doubt();
        Band band = doubt.together();
        return new FoldedDose(sums.best, ground, total * band.low(), total * band.high(), sums.beyond / sums.best,
                skyShare, doubt);
    }

    /** Running sums over the sky. */
    private static final class Sums {
        private final Response response;
        private final double equivalence;
        private final double densityShare;
        private final double layer;
        private double best;
        private double low;
        private double high;
        private double active;
        private double quiet;
        private double lighter;
        private double heavier;
        private double thinner;
        private double thicker;
        private double beyond;

        Sums(Response response, Tolerances tolerances, double placedDensity) {
            this.response = response;
            this.equivalence = response.skinEquivalence();
            this.densityShare = tolerances.densityShare();
            this.layer = tolerances.coverThickness() * placedDensity;
        }

        void add(SkyView.Direction direction) {
            double skin = direction.skin() * equivalence;
            double soil = direction.placed() + direction.inPlace();
            double x = soil + skin;
            double dose = straight(x) * direction.share();
            count(dose, x);
            beyond += x > response.deepest() ? dose : 0;
            lighter += densityShare > 0 ? at(soil * (1 - densityShare) + skin, direction) : dose;
            heavier += densityShare > 0 ? at(soil * (1 + densityShare) + skin, direction) : dose;
            double off = Math.min(direction.placed(), layer * direction.slant());
            thinner += off > 0 ? at(x - off, direction) : dose;
            thicker += off > 0 ? at(x + off, direction) : dose;
        }

        private void count(double dose, double arealDensity) {
            Band band = response.band(arealDensity);
            Band sun = response.solarBand(arealDensity);
            best += dose;
            low += dose * band.low();
            high += dose * band.high();
            active += dose * sun.low();
            quiet += dose * sun.high();
        }

        private double at(double arealDensity, SkyView.Direction direction) {
            return straight(arealDensity) * direction.share();
        }

        /** The response without slow neutrons. */
        double straight(double arealDensity) {
            return response.isotropicDose(arealDensity) - response.diffuseDose(arealDensity);
        }

        /** Adds what slow neutrons under a cover give beyond the ground's return. */
        void diffuse(double cover, double ground) {
            double dose = beyond(cover, ground);
            count(dose, cover);
            beyond += cover > response.deepest() ? dose : 0;
            lighter += beyond(cover * (1 - densityShare), ground);
            heavier += beyond(cover * (1 + densityShare), ground);
            thinner += beyond(Math.max(0, cover - layer), ground);
            thicker += beyond(cover + layer, ground);
        }

        private double beyond(double cover, double ground) {
            return Math.max(0, response.diffuseDose(cover) - ground);
        }

        Doubt doubt() {
            return new Doubt(band(low, high), band(active, quiet), band(lighter, heavier), band(thinner, thicker));
        }

        private Band band(double one, double other) {
            return new Band(Math.min(1, Math.min(one, other) / best), Math.max(1, Math.max(one, other) / best));
        }
    }

    /**
     * Best value of sky and ground together.
     *
     * @return dose (Sv per day or per event)
     */
    public double total() {
        return fromSky + groundReturn;
    }
}
