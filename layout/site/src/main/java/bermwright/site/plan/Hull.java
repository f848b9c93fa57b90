// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.TrueMetres;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A tall cylindrical lander.
 *
 * @param id             its id, unique in the plan
 * @param body           its size, ends, skin and shell
 * @param massProperties what it weighs and where
 * @param placement      where it lands and how it comes to lie
 * @param lowering       the gear that lays it down; empty where not stated
 * @param seat           what it lies on
 * @param hatches        its hatches
 * @param stations       places where people stay
 * @param cover          the wanted cover; empty where it stays bare
 * @param held           whether a search for arrangements leaves it where it is
 * @param annotations    note, own keys and the keys given
 */
public record Hull(String id, HullBody body, MassProperties massProperties, HullPlacement placement,
        Optional<LoweringGear> lowering, Seat seat, List<Hatch> hatches, List<Station> stations,
        Optional<CoverPlan> cover, boolean held, Annotations annotations) {
    /** Copies the lists. */
    public Hull {
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
     * The name of something of this hull, by which findings, files and persons' days know it.
     *
     * @param id id of a station or hatch
     * @return such as {@code alder/workshop}
     */
    public String named(String id) {
        return this.id + "/" + id;
    }

    /** Length with both ends (m). */
    public double length() {
        return body.length();
    }

    /** Diameter (m). */
    public double diameter() {
        return body.diameter();
    }

    /** Shape of the end it stands on. */
    public End baseEnd() {
        return body.baseEnd();
    }

    /** Shape of the other end. */
    public End farEnd() {
        return body.farEnd();
    }

    /** Layers of the skin from outside inwards. */
    public List<SkinLayer> skin() {
        return body.skin();
    }

    /** What stands against the wall inside over parts of it. */
    public List<Stowage> stowage() {
        return body.stowage();
    }

    /** The load-bearing shell; empty where not stated. */
    public Optional<Shell> shell() {
        return body.shell();
    }

    /** Pressure inside (Pa). */
    public double innerPressure() {
        return body.innerPressure();
    }

    /** Mass when laid down (kg). */
    public double mass() {
        return massProperties.mass();
    }

    /** Centre of mass along the axis from the base plane (m). */
    public double centreOfMassFromBase() {
        return massProperties.centreOfMassFromBase();
    }

    /** Centre of mass off the axis (m), positive to the lay-down side. */
    public double centreOfMassOffAxis() {
        return massProperties.centreOfMassOffAxis();
    }

    /** One standard deviation of the centre of mass along the axis (m). */
    public double centreOfMassSpread() {
        return massProperties.centreOfMassSpread();
    }

    /** Inertia about a cross axis through the centre of mass (kg m2); empty where not stated. */
    public OptionalDouble inertiaAboutCentre() {
        return massProperties.inertiaAboutCentre();
    }

    /** Propellant left (kg). */
    public double residualPropellant() {
        return massProperties.residualPropellant();
    }

    /** Ground point under the standing axis; of a hull that lands lying, under the axis at its base. */
    public Point baseCentre() {
        return placement.baseCentre();
    }

    /** Radius in which it lands (m). */
    public double landingDispersion() {
        return placement.landingDispersion();
    }

    /** Direction in which it is laid down. */
    public Azimuth layDownAzimuth() {
        return placement.layDownAzimuth();
    }

    /** What it turns over. */
    public Pivot pivot() {
        return placement.pivot();
    }

    /** How it comes to lie, or that it stays upright. */
    public Arrival arrival() {
        return placement.arrival();
    }

    /**
     * The radius.
     *
     * @return half the diameter (m)
     */
    public double radius() {
        return diameter() / 2;
    }

    /**
     * The skin's areal density straight through all layers.
     *
     * @return areal density (kg/m2), zero or more
     */
    public double skinArealDensity() {
        return skin().stream().mapToDouble(SkinLayer::arealDensity).sum();
    }

    /**
     * How far the pivot line lies ahead of the axis while standing.
     *
     * @return distance d_p along the lay-down azimuth (m); for a hull that lands lying, nothing
     */
    public double pivotAhead() {
        return arrival() == Arrival.LANDS_LYING ? 0 : pivot().ahead(radius());
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
        return metres.moved(baseCentre(), layDownAzimuth(), pivotAhead() + along, left);
    }

    /**
     * The rectangle that the lying hull covers seen from above, on level ground: the plane of its bed is fitted here.
     *
     * @param metres true metres against those of the plan
     * @return its corners, from the right of the base round to the left
     */
    public Ring bed(TrueMetres metres) {
        return new Ring(List.of(lyingAt(metres, 0, -radius()), lyingAt(metres, length(), -radius()),
                lyingAt(metres, length(), radius()), lyingAt(metres, 0, radius())));
    }

    /**
     * This hull elsewhere.
     *
     * @param place the ground point under its standing axis
     * @return the changed copy
     */
    public Hull withBaseCentre(Point place) {
        return with(placement.at(place), lowering, seat, cover);
    }

    /**
     * This hull laid down another way.
     *
     * @param azimuth the direction
     * @return the changed copy
     */
    public Hull withLayDownAzimuth(Azimuth azimuth) {
        return with(placement.towards(azimuth), lowering, seat, cover);
    }

    /**
     * This hull with other gear.
     *
     * @param gear the gear
     * @return the changed copy
     */
    public Hull withLowering(Optional<LoweringGear> gear) {
        return with(placement, gear, seat, cover);
    }

    /**
     * This hull under another cover.
     *
     * @param wanted the wanted cover
     * @return the changed copy
     */
    public Hull withCover(Optional<CoverPlan> wanted) {
        return with(placement, lowering, seat, wanted);
    }

    /**
     * This hull on another seat.
     *
     * @param other the seat
     * @return the changed copy
     */
    public Hull withSeat(Seat other) {
        return with(placement, lowering, other, cover);
    }

    private Hull with(HullPlacement changed, Optional<LoweringGear> gear, Seat on, Optional<CoverPlan> wanted) {
        return new Hull(id, body, massProperties, changed, gear, on, hatches, stations, wanted, held, annotations);
    }
}
