// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.DiffuseRoom;
import bermwright.shielding.dose.Response;
import bermwright.shielding.scene.Soil;
import java.util.Objects;
import java.util.Optional;

/**
 * The dose at one station for one response.
 *
 * @param fromSky          dose from the sky (Sv per day or per event)
 * @param groundReturn     what the ground sends back (Sv per day or per event)
 * @param low              16th percentile of both together (Sv per day or per event)
 * @param high             84th percentile of both together (Sv per day or per event)
 * @param shareBeyondTable share of the sky's dose from rays deeper than the response is tested to (1), 0 to 1
 * @param skyShare         dose that flies straight from the sky over that under open sky (1)
 * @param uncertainty            what low and high are made of
 */
public record FoldedDose(double fromSky, double groundReturn, double low, double high, double shareBeyondTable,
        double skyShare, DoseUncertainty uncertainty) {
    /** A dose is never known to be less than this share of its best value (1). */
    private static final double LEAST_FACTOR = 0.01;
    /** Length over which what walls let through falls (kg/m2), for the mean of their thickness. */
    private static final double RELAXATION = 1500;
    /** Thickness of soil (kg/m2) over which its own gammas fill up, that of gammas of 1 MeV. */
    private static final double GAMMAS = 160;

    /** Refuses missing parts. */
    public FoldedDose {
        Objects.requireNonNull(uncertainty, "doubt");
    }

    /**
     * Folds a view with a response.
     *
     * <p>Gammas of what is radioactive in the soil come from below and, as far as soil shows there, from above.
     *
     * <p>Fast particles are the mean of the response over the whole ball of directions, each at its own slant through
     * its cover, those below the horizontal giving nothing; what the floor throws back is counted with the direction
     * that makes it. Slow neutrons come from the walls of the station's room: each direction shows a piece of wall,
     * as thick as it lies under the face through which the ray leaves the first soil on its way, whatever soil the ray
     * crosses further out; walls and floor give back what they get
     * ({@link DiffuseRoom}). What they send up from the floor at the first time is the ground's return, with what else
     * open ground sends back, its gammas, times the share of the open sky's dose that flies straight to the station
     * (at most one): a stated model, since the same particles make it and it crosses the same cover. A response that
     * does not tell slow neutrons apart has its whole ground return counted so. Low and high join the band of the
     * response and that of solar activity, weighted by dose, with the spread of density and of thickness as
     * independent, in logarithms.
     *
     * @param view       what the station sees
     * @param response   the response
     * @param soil       the soil, for the density of a layer
     * @param tolerances how far the cover may be off
     * @return the dose
     */
    public static FoldedDose of(SkyView view, Response response, Soil soil, Tolerances tolerances) {
        Sums sums = view.folded(new Key(response, tolerances, soil.placedDensity()));
        double open = sums.straight(0) / 2;
        double skyShare = open > 0 ? sums.best / open : 0;
        double ground = sums.elseFromGround() * Math.min(1, skyShare) + sums.diffuse()
                + response.soilGammas() * (1 + sums.soilAbove);
        double total = sums.best + ground;
        if (!(sums.best > 0)) {
            return new FoldedDose(sums.best, ground, total, total, 0, skyShare, DoseUncertainty.NONE);
        }
        DoseUncertainty uncertainty = sums.uncertainty();
        Band band = uncertainty.together();
        return new FoldedDose(sums.best, ground, total * band.low(), total * band.high(), sums.beyond / sums.best,
                skyShare, uncertainty);
    }

    /**
     * What a dose holds beside particles that come from the sky and what they make: gammas of open ground by a
     * published figure, and of what is radioactive in the soil, as {@link #of} counts them.
     *
     * @param view     what the station sees
     * @param response the response
     * @param soil     the soil
     * @return dose (Sv per day or per event), zero or more
     */
    public static double groundGammas(SkyView view, Response response, Soil soil) {
        Sums sums = view.folded(new Key(response, Tolerances.NONE, soil.placedDensity()));
        double open = sums.straight(0) / 2;
        return sums.elseFromGround() * Math.min(1, open > 0 ? sums.best / open : 0)
                + response.soilGammas() * (1 + sums.soilAbove);
    }

    /** What directions are folded with: the response, how far the cover may be off, density of placed soil (kg/m3). */
    record Key(Response response, Tolerances tolerances, double placedDensity) {
    }

    /** What slow neutrons give under one sky, and under skies of lighter, heavier, thinner and thicker covers. */
    private static final class Rooms {
        private final DiffuseRoom room;
        private final DiffuseRoom.Sky best;
        private final DiffuseRoom.Sky lighter;
        private final DiffuseRoom.Sky heavier;
        private final DiffuseRoom.Sky thinner;
        private final DiffuseRoom.Sky thicker;
        private double cover;
        private double weights;

        Rooms(DiffuseRoom room, boolean densityIsOff, boolean thicknessIsOff) {
            this.room = room;
            best = room.sky();
            lighter = densityIsOff ? room.sky() : best;
            heavier = densityIsOff ? room.sky() : best;
            thinner = thicknessIsOff ? room.sky() : best;
            thicker = thicknessIsOff ? room.sky() : best;
        }

        void add(double x, double offDensity, double offThickness, SkyView.Direction direction) {
            double share = 2 * direction.share();
            double slant = direction.slant();
            double wall = x - direction.beyond();
            best.add(wall / slant, x, slant, share);
            if (lighter != best) {
                double soil = direction.placed() + direction.inPlace();
                double off = soil > 0 ? offDensity * (1 - direction.beyond() / soil) : 0;
                lighter.add((wall - off) / slant, x - offDensity, slant, share);
                heavier.add((wall + off) / slant, x + offDensity, slant, share);
            }
            if (thinner != best) {
                double off = Math.min(offThickness, wall);
                thinner.add((wall - off) / slant, x - offThickness, slant, share);
                thicker.add((wall + off) / slant, x + offThickness, slant, share);
            }
            double weight = share * Math.exp(-wall / slant / RELAXATION);
            cover += weight * wall / slant;
            weights += weight;
        }

        /** Adds what others hold, times a share of the turn. */
        void add(Rooms others, double turnShare) {
            best.add(others.best, turnShare);
            if (lighter != best) {
                lighter.add(others.lighter, turnShare);
                heavier.add(others.heavier, turnShare);
            }
            if (thinner != best) {
                thinner.add(others.thinner, turnShare);
                thicker.add(others.thicker, turnShare);
            }
            cover += others.cover * turnShare;
            weights += others.weights * turnShare;
        }

        /** Mean thickness of the walls, by what they let through (kg/m2). */
        double cover() {
            return weights > 0 ? cover / weights : 0;
        }

        double open() {
            DiffuseRoom.Sky open = room.sky();
            open.add(0, 0, 1, 1);
            return open.total();
        }
    }

    /** Running sums over the sky. */
    static final class Sums {
        private final Response response;
        private final Optional<Rooms> rooms;
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
        private double soilAbove;

        Sums(Key key) {
            this.response = key.response;
            this.equivalence = response.skinEquivalence();
            this.densityShare = key.tolerances.densityShare();
            this.layer = key.tolerances.coverThickness() * key.placedDensity;
            this.rooms = response.room().map(room -> new Rooms(room, densityShare > 0, layer > 0));
        }

        void add(SkyView.Direction direction) {
            double skin = direction.skin() * equivalence;
            double soil = direction.placed() + direction.inPlace();
            soilAbove -= 2 * direction.share() * Math.expm1(-soil / GAMMAS);
            double x = soil + skin;
            double dose = at(x, direction);
            count(dose, x);
            beyond += response.isTested(x, direction.slant()) ? 0 : dose;
            lighter += densityShare > 0 ? at(soil * (1 - densityShare) + skin, direction) : dose;
            heavier += densityShare > 0 ? at(soil * (1 + densityShare) + skin, direction) : dose;
            double off = Math.min(direction.placed(), layer * direction.slant());
            thinner += off > 0 ? at(x - off, direction) : dose;
            thicker += off > 0 ? at(x + off, direction) : dose;
            rooms.ifPresent(r -> r.add(x, soil * densityShare, off, direction));
        }

        /** Adds what others hold, which stand for a whole turn, times the share of the turn that they stand for. */
        void add(Sums others, double turnShare) {
            best += others.best * turnShare;
            low += others.low * turnShare;
            high += others.high * turnShare;
            active += others.active * turnShare;
            quiet += others.quiet * turnShare;
            lighter += others.lighter * turnShare;
            heavier += others.heavier * turnShare;
            thinner += others.thinner * turnShare;
            thicker += others.thicker * turnShare;
            beyond += others.beyond * turnShare;
            soilAbove += others.soilAbove * turnShare;
            rooms.ifPresent(r -> r.add(others.rooms.orElseThrow(), turnShare));
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
            return response.straightDose(arealDensity, direction.slant()) * direction.share();
        }

        /** The response without slow neutrons. */
        double straight(double arealDensity) {
            return response.straightDose(arealDensity);
        }

        /** What open ground sends back beside slow neutrons. */
        double elseFromGround() {
            return Math.max(0, response.openGroundReturn() - rooms.map(Rooms::open).orElse(0.0));
        }

        /**
         * Adds what slow neutrons give that walls sent or gave back.
         *
         * @return what comes up from the floor at the first time
         */
        double diffuse() {
            if (rooms.isEmpty()) {
                return 0;
            }
            Rooms r = rooms.get();
            double floor = r.best.fromFloor();
            double dose = r.best.total() - floor;
            count(dose, r.cover());
            beyond += response.isTested(r.cover(), 1) ? 0 : dose;
            lighter += r.lighter.total() - floor;
            heavier += r.heavier.total() - floor;
            thinner += r.thinner.total() - floor;
            thicker += r.thicker.total() - floor;
            return floor;
        }

        DoseUncertainty uncertainty() {
            return new DoseUncertainty(band(low, high), band(active, quiet), band(lighter, heavier),
                    band(thinner, thicker));
        }

        private Band band(double one, double other) {
            // The floor's part is that of the best value, so a far thicker wall could leave less than nothing.
            return new Band(Math.min(1, Math.max(LEAST_FACTOR, Math.min(one, other) / best)),
                    Math.max(1, Math.max(one, other) / best));
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
