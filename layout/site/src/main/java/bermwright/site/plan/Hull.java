// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.terrain.grid.TrueMetres;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A tall cylindrical lander.
 *
 * @param id                  its id, unique in the plan
 * @param length              length with both ends (m), above zero
 * @param diameter            diameter (m), above zero
 * @param baseEnd             shape of the end it stands on
 * @param farEnd              shape of the other end
 * @param skin                layers of the skin from outside inwards
 * @param shell               the load-bearing shell; empty where not stated
 * @param innerPressure       pressure inside (Pa), zero or more
 * @param mass                mass when laid down (kg), above zero
 * @param centreOfMassFromBase centre of mass along the axis from the base plane (m)
 * @param centreOfMassOffAxis centre of mass off the axis (m), positive to the lay-down side
 * @param centreOfMassSpread  one standard deviation of the centre of mass along the axis (m), zero or more
 * @param inertiaAboutCentre  inertia about a cross axis through the centre of mass (kg m2); empty: a uniform rod's
 * @param residualPropellant  propellant left (kg), zero or more
 * @param baseCentre          ground point under the standing hull's axis; for a hull that lands lying, under the
 *                            base plane's axis
 * @param landingDispersion   radius in which it lands (m), zero or more
 * @param layDownAzimuth      direction in which it is laid down
 * @param clocking            turn of the body about its axis (rad)
 * @param pivot               what it turns over
 * @param arrival             how it comes to lie, or that it stays upright
 * @param lowering            the gear that lays it down; empty where not stated
 * @param hatches             its hatches
 * @param seat                what it lies on
 * @param stations            places where people stay
 * @param cover               the wanted cover; empty where it stays bare
 * @param held                whether a search for arrangements leaves it where it is
 * @param annotations                note, own keys and the keys given
 */
public record Hull(String id, double length, double diameter, End baseEnd, End farEnd, List<SkinLayer> skin,
        Optional<Shell> shell, double innerPressure, double mass, double centreOfMassFromBase,
        double centreOfMassOffAxis, double centreOfMassSpread, OptionalDouble inertiaAboutCentre,
        double residualPropellant, Point baseCentre, double landingDispersion, Azimuth layDownAzimuth,
        double clocking, Pivot pivot, Arrival arrival, Optional<LoweringGear> lowering, List<Hatch> hatches, Seat seat,
        List<Station> stations, Optional<CoverPlan> cover, boolean held, Annotations annotations) {
    /** Copies the lists. */
    public Hull {
        skin = List.copyOf(skin);
        hatches = List.copyOf(hatches);
        stations = List.copyOf(stations);
    }

    /** How a hull comes to lie, or that it does not. */
    public enum Arrival {
        /** It lands upright and is laid down. */
        LOWERED,
        /** It lands on its side. */
        LANDS_LYING,
        /** It stays upright. */
        STAYS_UPRIGHT;

        /**
         * The word used in files and pages.
         *
         * @return the words in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** Shape of a hull's end. */
    public enum Shape {
        /** A flat plate. */
        FLAT,
        /** Half an ellipsoid of the given depth. */
        DOME,
        /** A cone of the given depth. */
        CONE;

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * An end of a hull; the hull's length includes it.
     *
     * @param shape its shape
     * @param depth its depth along the axis (m), zero or more, nothing for a flat end
     * @param annotations  note, own keys and the keys given
     */
    public record End(Shape shape, double depth, Annotations annotations) {
    }

    /**
     * A layer of the skin.
     *
     * @param material     material name
     * @param arealDensity areal density straight through (kg/m2), above zero
     * @param annotations         note, own keys and the keys given
     */
    public record SkinLayer(String material, double arealDensity, Annotations annotations) {
    }

    /**
     * The shell that bears soil and pressure.
     *
     * @param thickness thickness (m), above zero
     * @param modulus   Young's modulus (Pa), above zero
     * @param yield     yield stress (Pa), above zero
     * @param poisson   Poisson's ratio (1), 0 to 0.5
     * @param annotations      note, own keys and the keys given
     */
    public record Shell(double thickness, double modulus, double yield, double poisson, Annotations annotations) {
    }

    /**
     * The radius.
     *
     * @return half the diameter (m)
     */
    public double radius() {
        return diameter / 2;
    }

    /**
     * The skin's areal density straight through all layers.
     *
     * @return areal density (kg/m2), zero or more
     */
    public double skinArealDensity() {
        return skin.stream().mapToDouble(SkinLayer::arealDensity).sum();
    }

    /**
     * How far the pivot line lies ahead of the axis while standing.
     *
     * @return distance d_p along the lay-down azimuth (m); for a hull that lands lying, nothing
     */
    public double pivotAhead() {
        return arrival == Arrival.LANDS_LYING ? 0 : pivot.ahead(radius());
    }

    /**
     * Where the base plane's axis lies in plan once the hull is down; the body reaches from here along the azimuth.
     *
     * @param metres true metres against those of the plan
     * @return the place on the plan
     */
    public Point lyingBase(TrueMetres metres) {
        return lyingAt(metres, 0, 0);
    }

    /**
     * The ground point under a place of the hull once it is down, on level ground.
     *
     * @param metres true metres against those of the plan
     * @param along  distance from the base plane (m)
     * @param left   distance to the left of the axis (m)
     * @return the place on the plan
     */
    public Point lyingAt(TrueMetres metres, double along, double left) {
        return metres.moved(baseCentre, layDownAzimuth, pivotAhead() + along, left);
    }

    /**
     * This hull elsewhere.
     *
     * @param place the ground point under its standing axis
     * @return the changed copy
     */
    public Hull withBaseCentre(Point place) {
        return copy(place, layDownAzimuth, lowering, cover);
    }

    /**
     * This hull laid down another way.
     *
     * @param azimuth the direction
     * @return the changed copy
     */
    public Hull withLayDownAzimuth(Azimuth azimuth) {
        return copy(baseCentre, azimuth, lowering, cover);
    }

    /**
     * This hull with other gear.
     *
     * @param gear the gear
     * @return the changed copy
     */
    public Hull withLowering(Optional<LoweringGear> gear) {
        return copy(baseCentre, layDownAzimuth, gear, cover);
    }

    /**
     * This hull under another cover.
     *
     * @param wanted the wanted cover
     * @return the changed copy
     */
    public Hull withCover(Optional<CoverPlan> wanted) {
        return copy(baseCentre, layDownAzimuth, lowering, wanted);
    }

    /**
     * This hull on another seat.
     *
     * @param other the seat
     * @return the changed copy
     */
    public Hull withSeat(Seat other) {
        return new Hull(id, length, diameter, baseEnd, farEnd, skin, shell, innerPressure, mass,
                centreOfMassFromBase, centreOfMassOffAxis, centreOfMassSpread, inertiaAboutCentre, residualPropellant,
                baseCentre, landingDispersion, layDownAzimuth, clocking, pivot, arrival, lowering, hatches, other,
                stations, cover, held, annotations);
    }

    private Hull copy(Point place, Azimuth azimuth, Optional<LoweringGear> gear, Optional<CoverPlan> wanted) {
        return new Hull(id, length, diameter, baseEnd, farEnd, skin, shell, innerPressure, mass,
                centreOfMassFromBase, centreOfMassOffAxis, centreOfMassSpread, inertiaAboutCentre, residualPropellant,
                place, landingDispersion, azimuth, clocking, pivot, arrival, gear, hatches, seat, stations, wanted,
                held, annotations);
    }
}
