// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import bermwright.regolith.EarthPressure;
import bermwright.regolith.Regolith;
import java.util.Objects;

/**
 * What holds a line to the ground.
 *
 * <p>Capacities are the pull along the line at which the soil gives way, without any factor. Dry soil, static pull,
 * no anchor nearer to another than their wedges reach; strength as stated, at half the depth of what is buried. Earth
 * formulas scaled by gravity alone have not been proven in
 * lunar soil, and measured Earth anchors scatter by 15 to 30 % about them, more in dense ground.
 */
public sealed interface Anchor {
    /**
     * The pull along a line at which the anchor gives way.
     *
     * @param soil      the soil
     * @param gravity   acceleration of free fall (m/s2), positive
     * @param elevation angle of the line above the ground (rad), 0 up to a right angle
     * @return the pull (N), positive
     */
    double capacity(Regolith soil, double gravity, double elevation);

    /**
     * The name of the kind.
     *
     * @return the name as plans write it
     */
    String kind();

    /**
     * What must be carried there for it, from its size: steel of 20 mm for plates, an empty box for a block, an empty
     * sledge of a fiftieth of the ballast (the rest is regolith), steel shafts and helices.
     *
     * @return the mass (kg)
     */
    double gearMass();

    /**
     * The ground it takes.
     *
     * @return its size seen from above, what it is buried in, and what is dug for it
     */
    Footing footing();

    /**
     * The ground that an anchor takes.
     *
     * @param along      length along the pull (m), positive
     * @param across     width across the pull (m), positive
     * @param wedgeDepth depth of the soil ahead of it that holds it (m); zero where none does
     * @param dug        what is dug for it
     * @param height     height of what stays in a hole (m); zero where none is dug
     * @param thickness  length of that along the pull (m); zero for a plate
     */
    record Footing(double along, double across, double wedgeDepth, Dug dug, double height, double thickness) {
        /** A pad on the ground. */
        static Footing pad(double side) {
            return new Footing(side, side, 0, Dug.PAD, 0, 0);
        }

        /** Piles or screws side by side, three diameters apart. */
        static Footing row(int count, double diameter, double depth) {
            return new Footing(Math.max(1, diameter), 3 * diameter * count, depth, Dug.NOTHING, 0, 0);
        }
    }

    /** What is dug for an anchor. */
    enum Dug {
        /** A level pad. */
        PAD,
        /** A hole that is filled in again. */
        HOLE,
        /** Nothing. */
        NOTHING
    }

    /** Density of steel (kg/m3). */
    double STEEL = 7850;

    /**
     * A plate set upright in the ground, pulled square to its face.
     *
     * @param width  width across the pull (m), positive
     * @param height height (m), positive
     * @param depth  depth of its lower edge (m), at least the height
     */
    record Plate(double width, double height, double depth) implements Anchor {
        /** Refuses plates that stick out of the ground. */
        public Plate {
            Require.positive("plate width", width, "m");
            Require.positive("plate height", height, "m");
            Require.atLeast("depth of the plate's lower edge", depth, height, "m");
        }

        @Override
        public double capacity(Regolith soil, double gravity, double elevation) {
            return BuriedAnchor.inclined(BuriedAnchor.level(this, soil, gravity),
                    BuriedAnchor.uplift(new BuriedAnchor.Flat(Math.min(width, height), Math.max(width, height),
                            depth - height / 2), soil, gravity), elevation);
        }

        @Override
        public double gearMass() {
            return STEEL * 0.02 * width * height;
        }

        @Override
        public String kind() {
            return "plate";
        }

        @Override
        public Footing footing() {
            return new Footing(1, width, depth, Dug.HOLE, height, 0);
        }
    }

    /**
     * A buried block, with friction under its base beside the earth pressure on its face; its own weight is taken
     * as that of the soil it stands in the place of, a lower bound.
     *
     * @param width  width across the pull (m), positive
     * @param height height (m), positive
     * @param length length along the pull (m), positive
     * @param depth  depth of its base (m), at least the height
     */
    record Block(double width, double height, double length, double depth) implements Anchor {
        /** Refuses blocks that stick out of the ground. */
        public Block {
            Require.positive("block width", width, "m");
            Require.positive("block height", height, "m");
            Require.atLeast("depth of the block's base", depth, height, "m");
            Require.positive("block length", length, "m");
        }

        @Override
        public double capacity(Regolith soil, double gravity, double elevation) {
            double face = BuriedAnchor.level(new Plate(width, height, depth), soil, gravity);
            double down = width * length * depth * soil.meanDensity(depth) * gravity;
            return BuriedAnchor.inclined(face + soil.strength(depth).onSteel() * down, down, elevation);
        }

        @Override
        public double gearMass() {
            return STEEL * 0.01 * 2 * (width * height + width * length + height * length);
        }

        @Override
        public String kind() {
            return "block";
        }

        @Override
        public Footing footing() {
            return new Footing(length, width, depth, Dug.HOLE, height, length);
        }
    }

    /**
     * A loaded steel sledge on the ground: mu W / (cos e + mu sin e), mu the friction of steel on the soil of the
     * surface.
     *
     * @param mass its mass (kg), positive
     */
    record Ballast(double mass) implements Anchor {
        /** Density of a box of regolith, taken for its size (kg/m3). */
        private static final double FILLED = 1500;

        /** Refuses ballast without mass. */
        public Ballast {
            Require.positive("ballast mass", mass, "kg");
        }

        @Override
        public double capacity(Regolith soil, double gravity, double elevation) {
            Require.positive("gravity", gravity, "m/s2");
            return pull(soil.strength(0).onSteel(), mass * gravity, elevation);
        }

        static double pull(double mu, double weight, double elevation) {
            return mu * weight / (Math.cos(elevation) + mu * Math.sin(elevation));
        }

        @Override
        public double gearMass() {
            return mass / 50;
        }

        @Override
        public String kind() {
            return "ballast";
        }

        @Override
        public Footing footing() {
            return Footing.pad(Math.cbrt(mass / FILLED));
        }
    }

    /**
     * Screws with one helix each, raked along the line as far as 45 degrees from the ground; what pulls square to a
     * screw is not counted as holding.
     *
     * @param count    number of screws (1), at least 1
     * @param diameter diameter of the helix (m), positive
     * @param depth    depth of the helix (m), positive
     */
    record Screw(int count, double diameter, double depth) implements Anchor {
        private static final double FLATTEST = Math.PI / 4;

        /** Refuses no screws. */
        public Screw {
            Require.atLeast("number of screws", count, 1, "1");
            Require.positive("helix diameter", diameter, "m");
            Require.positive("helix depth", depth, "m");
        }

        @Override
        public double capacity(Regolith soil, double gravity, double elevation) {
            double each = BuriedAnchor.upliftOfDisc(diameter, depth, soil, gravity);
            return count * each * Math.cos(Math.max(0, FLATTEST - elevation));
        }

        @Override
        public double gearMass() {
            return count * STEEL * Math.PI / 4 * (diameter * diameter * 0.015 + diameter * diameter / 16 * depth * 0.4);
        }

        @Override
        public String kind() {
            return "screw";
        }

        @Override
        public Footing footing() {
            return Footing.row(count, diameter, depth);
        }
    }

    /**
     * Driven piles, short and stiff with free heads.
     *
     * @param count    number of piles (1), at least 1
     * @param diameter diameter (m), positive
     * @param depth    driven depth (m), positive
     */
    record Pile(int count, double diameter, double depth) implements Anchor {
        /**
         * Lateral pressure on a driven pile that is drawn, over the upright one (1): the least of the range 0.3 to 0.5
         * for slender steel piles; NAVFAC DM-7.02 (1986), from memory.
         */
        static final double UPLIFT_PRESSURE = 0.3;
        /** Height of the line over the ground at the pile (m). */
        static final double PULL_HEIGHT = 0.1;

        /** Refuses no piles. */
        public Pile {
            Require.atLeast("number of piles", count, 1, "1");
            Require.positive("pile diameter", diameter, "m");
            Require.positive("driven depth", depth, "m");
        }

        @Override
        public double capacity(Regolith soil, double gravity, double elevation) {
            double across = BuriedAnchor.shortPile(this, PULL_HEIGHT, soil, gravity);
            double skin = Math.PI * diameter * soil.meanDensity(depth) * gravity * depth * depth / 2
                    * UPLIFT_PRESSURE * soil.strength(depth / 2).onSteel();
            return count * BuriedAnchor.inclined(across, skin, elevation);
        }

        @Override
        public double gearMass() {
            return count * STEEL * Math.PI * diameter * 0.01 * depth;
        }

        @Override
        public String kind() {
            return "pile";
        }

        @Override
        public Footing footing() {
            return Footing.row(count, diameter, depth);
        }
    }

    /**
     * An anchor on ground that falls the way the line pulls, towards the hull.
     *
     * <p>A sledge slides down the more easily by (mu cos b - sin b) / mu. For buried anchors the wedge of soil in
     * front is thinner: what they hold on level ground is reduced by (Kp - Ka) under the slope over (Kp - Ka) on the
     * level, both by Rankine without cohesion, for every kind; for uplift that is a lower bound. Pulling uphill gains
     * nothing here.
     *
     * @param anchor  the anchor
     * @param fall    slope of the ground, positive where it falls the way the line pulls (rad)
     * @param steeper how much steeper the line stands over this ground than over the ground its angle is counted
     *                from (rad)
     */
    record OnSlope(Anchor anchor, double fall, double steeper) implements Anchor {
        /** Refuses walls. */
        public OnSlope {
            Objects.requireNonNull(anchor, "anchor");
            Require.within("slope at the anchor", fall, -Math.PI / 2, Math.PI / 2, "rad");
            Require.finite("angle of the line over the slope", steeper, "rad");
        }

        @Override
        public double capacity(Regolith soil, double gravity, double elevation) {
            double over = Math.max(0, Math.min(Math.PI / 2, elevation + steeper));
            return share(soil) * anchor.capacity(soil, gravity, over);
        }

        /**
         * What the slope leaves of the capacity on level ground.
         *
         * @param soil the soil
         * @return the share (1), zero where the ground itself would slide
         */
        public double share(Regolith soil) {
            double down = Math.max(0, fall);
            if (anchor instanceof Ballast) {
                double mu = soil.strength(0).onSteel();
                return Math.max(0, (mu * Math.cos(down) - Math.sin(down)) / mu);
            }
            double phi = soil.frictionAngle(0);
            if (down >= phi) {
                return 0;
            }
            double level = EarthPressure.passive(phi) - EarthPressure.active(phi);
            return (EarthPressure.passiveUnderSlope(phi, down) - EarthPressure.activeUnderSlope(phi, down)) / level;
        }

        @Override
        public double gearMass() {
            return anchor.gearMass();
        }

        @Override
        public String kind() {
            return anchor.kind();
        }

        @Override
        public Footing footing() {
            return anchor.footing();
        }
    }
}
