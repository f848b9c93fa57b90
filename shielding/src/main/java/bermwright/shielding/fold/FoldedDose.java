// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.Response;
import bermwright.shielding.scene.Soil;

/**
 * The dose at one station for one response.
 *
 * @param fromSky          dose from the sky (Sv per day or per event)
 * @param groundReturn     what the ground sends back (Sv per day or per event)
 * @param low              16th percentile of both together (Sv per day or per event)
 * @param high             84th percentile of both together (Sv per day or per event)
 * @param shareBeyondTable share of the sky's dose from rays deeper than the response reaches (1), 0 to 1
 * @param skyShare         dose that flies straight from the sky over that under open sky (1)
 */
public record FoldedDose(double fromSky, double groundReturn, double low, double high, double shareBeyondTable,
        double skyShare) {
    /** A trace of cover (kg/m2), under which a response that tells slow neutrons apart has some. */
    private static final double TRACE = 1;

    /**
     * Folds a view with a response.
     *
     * <p>What flies straight is the mean of the response over the whole ball of directions, those below the horizontal
     * giving nothing. The ground's return is that of open ground times the share of the open sky's dose that reaches
     * the station, and at most that of open ground: a stated model, since what the ground sends back is made by the
     * same particles and crosses the same cover. Slow neutrons fill the room as under a level cover of the least areal
     * density, taken where a tenth of the sky is thinner; that holds the ground's share already, so the greater of
     * both counts and never their sum. Low and high join the band of the response, weighted by dose, with the spread of
     * density and of thickness as independent, in logarithms.
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
            return new FoldedDose(sums.best, ground, total, total, 0, skyShare);
        }
        double up = Math.hypot(Math.log(sums.high / sums.best),
                Math.hypot(sums.rise(sums.lighter, sums.heavier), sums.rise(sums.thinner, sums.thicker)));
        double down = Math.hypot(Math.log(sums.low / sums.best),
                Math.hypot(sums.fall(sums.lighter, sums.heavier), sums.fall(sums.thinner, sums.thicker)));
        return new FoldedDose(sums.best, ground, total * Math.exp(-down), total * Math.exp(up),
                sums.beyond / sums.best, skyShare);
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
            Band band = response.band(x);
            best += dose;
            low += dose * band.low();
            high += dose * band.high();
            beyond += x > response.deepest() ? dose : 0;
            lighter += densityShare > 0 ? at(soil * (1 - densityShare) + skin, direction) : dose;
            heavier += densityShare > 0 ? at(soil * (1 + densityShare) + skin, direction) : dose;
            double off = Math.min(direction.placed(), layer * direction.slant());
            thinner += off > 0 ? at(x - off, direction) : dose;
            thicker += off > 0 ? at(x + off, direction) : dose;
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
            Band band = response.band(cover);
            best += dose;
            low += dose * band.low();
            high += dose * band.high();
            beyond += cover > response.deepest() ? dose : 0;
            lighter += beyond(cover * (1 - densityShare), ground);
            heavier += beyond(cover * (1 + densityShare), ground);
            thinner += beyond(Math.max(0, cover - layer), ground);
            thicker += beyond(cover + layer, ground);
        }

        private double beyond(double cover, double ground) {
            return Math.max(0, response.diffuseDose(cover) - ground);
        }

        double rise(double one, double other) {
            return Math.max(0, Math.log(Math.max(one, other) / best));
        }

        double fall(double one, double other) {
            return Math.min(0, Math.log(Math.min(one, other) / best));
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
