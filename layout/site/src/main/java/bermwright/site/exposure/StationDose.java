// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.Vec3;
import bermwright.shielding.dose.OrganDose;
import bermwright.shielding.fold.Distribution;
import bermwright.shielding.fold.DoseUncertainty;
import bermwright.shielding.fold.SkyPicture;
import bermwright.shielding.fold.SkyView;
import bermwright.site.plan.LimitInForce;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Dose at one station, for somebody who spends the whole stay and the event there.
 *
 * @param hull            the hull
 * @param station         the station's id
 * @param place           where it is, in the plan's frame
 * @param stormShelter    whether people go here during an event
 * @param occupancyShare  share of the time inside that is spent here (1)
 * @param standing        dose at the same place of the hull as it stood after landing, without cover
 * @param parts           dose under the cover, by source
 * @param seen            what lies between the station and the sky
 */
public record StationDose(String hull, String station, Vec3 place, boolean stormShelter, double occupancyShare,
        Upright standing, Parts parts, Seen seen) implements CrewDose.Stay {
    /** What the dose is: effective dose, by fluence-to-dose coefficients of a person. */
    public static final String QUANTITY = LimitInForce.EFFECTIVE_DOSE;

    /**
     * Dose in the hull as it stood after landing.
     *
     * @param dose dose without cover over the stay and the event (Sv); NaN where the hull cannot stand there
     * @param open share of the dose that may still be open after all directions looked along (1)
     */
    public record Upright(double dose, double open) {
        /** Not known. */
        static final Upright UNKNOWN = new Upright(Double.NaN, 0);
    }

    /**
     * Dose by source.
     *
     * @param cosmic       cosmic rays from the sky over the stay (Sv)
     * @param event        the event's particles from the sky (Sv)
     * @param groundReturn what the ground sends back, cosmic over the stay and event together (Sv)
     * @param cosmicAll    cosmic rays with their ground return over the stay
     * @param eventAll     the event with its ground return
     * @param uncertainties       what their low and high are made of
     * @param organs       gray equivalents of the organs that the plan's limits name (Gy-Eq)
     */
    public record Parts(double cosmic, double event, double groundReturn, Spread cosmicAll, Spread eventAll,
            Uncertainties uncertainties, Map<OrganDose.Organ, BySource> organs) {
        /** Copies the organs. */
        public Parts {
            organs = Map.copyOf(organs);
        }
    }

    /**
     * A dose by source.
     *
     * @param cosmic cosmic rays with their ground return over the stay
     * @param event  the event with its ground return
     */
    public record BySource(Spread cosmic, Spread event) {
        /**
         * The dose in the quantity of a limit.
         *
         * @param quantity  effective dose, or the gray equivalent of an organ that a limit of the plan names
         * @param effective effective dose (Sv)
         * @param organs    gray equivalents by organ (Gy-Eq)
         * @return the dose; effective dose where the quantity names no organ
         */
        static BySource in(String quantity, BySource effective, Map<OrganDose.Organ, BySource> organs) {
            return organ(quantity).map(o -> Objects.requireNonNull(organs.get(o), quantity)).orElse(effective);
        }
    }

    /**
     * The organ whose gray equivalent a quantity is.
     *
     * @param quantity a limit's quantity
     * @return the organ; empty for the effective dose
     */
    public static Optional<OrganDose.Organ> organ(String quantity) {
        return Arrays.stream(OrganDose.Organ.values()).filter(o -> o.quantity().equals(quantity)).findFirst();
    }

    /**
     * The unit that a limit's quantity is shown in.
     *
     * @param quantity a limit's quantity
     * @return mSv, or mGy-Eq for gray equivalents
     */
    public static String milli(String quantity) {
        return organ(quantity).isPresent() ? "mGy-Eq" : "mSv";
    }

    /**
     * The station's dose in the quantity of a limit.
     *
     * @param quantity a limit's quantity
     * @return the dose by source
     */
    @Override
    public BySource in(String quantity) {
        return BySource.in(quantity, new BySource(parts.cosmicAll, parts.eventAll), parts.organs);
    }

    @Override
    public String name() {
        return hull + "/" + station;
    }

    /**
     * What makes the doses uncertain, by source.
     *
     * @param cosmic cosmic rays
     * @param event  the event, empty where there is none
     */
    public record Uncertainties(DoseUncertainty cosmic, Optional<DoseUncertainty> event) {
    }

    /**
     * A dose and how far it may be off.
     *
     * @param best best value (Sv)
     * @param low  16th percentile (Sv)
     * @param high 84th percentile (Sv)
     */
    public record Spread(double best, double low, double high) {
        /** Nothing. */
        public static final Spread NOTHING = new Spread(0, 0, 0);

        /**
         * Both together, taken as off in the same way, so that percentiles add.
         *
         * @param other the other dose
         * @return the sum
         */
        public Spread plus(Spread other) {
            return new Spread(best + other.best, low + other.low, high + other.high);
        }

        /**
         * A multiple of it.
         *
         * @param factor factor (1), zero or more
         * @return the multiple
         */
        public Spread times(double factor) {
            return new Spread(best * factor, low * factor, high * factor);
        }
    }

    /**
     * What lies between a station and the sky; all areal densities count skin as soil.
     *
     * @param leastArealDensity  areal density in the thinnest direction (kg/m2)
     * @param medianArealDensity areal density that half the sky stays below (kg/m2)
     * @param shareBeyondTable   greatest share of a source's dose from rays deeper than its table (1)
     * @param shareBeyondEdge    share of the sky whose rays end in soil at the edge of the elevation file (1)
     * @param directions         directions looked along until the dose settled (1)
     * @param openShare          share of the dose that may still be open after them (1)
     * @param worst              the direction with the least areal density
     * @param distribution       areal density over the whole sky
     * @param picture            the sky as the station sees it
     */
    public record Seen(double leastArealDensity, double medianArealDensity, double shareBeyondTable,
            double shareBeyondEdge, int directions, double openShare, SkyView.Direction worst,
            Distribution distribution, SkyPicture picture) {
    }

    /**
     * Dose under the cover from all sources.
     *
     * @return best value with its spread (Sv)
     */
    public Spread covered() {
        return parts.cosmicAll.plus(parts.eventAll);
    }

    /**
     * Dose at the same place of the hull as it stood after landing, without cover.
     *
     * @return the dose over the stay and the event (Sv); NaN where the hull cannot stand there
     */
    public double upright() {
        return standing.dose;
    }

    /**
     * What the cover takes off.
     *
     * @return 1 - covered / upright (1); negative where the cover makes it worse, NaN where the dose upright is not
     *     known
     */
    public double reduction() {
        return upright() > 0 ? 1 - covered().best() / upright() : upright() == 0 ? 0 : Double.NaN;
    }
}
