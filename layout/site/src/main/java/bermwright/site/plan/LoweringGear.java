// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.lowering.rig.Reeving;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The gear that lays a hull down; only the block named by {@code means} is needed, others may stand for comparison.
 *
 * @param means         what lays it down
 * @param rate          turning rate (rad/s), above zero
 * @param wander        how far the body may swing out of its plane to either side (rad), zero or more
 * @param margin        distance kept around the sweep (m), zero or more
 * @param lines         lowering lines
 * @param poles         poles; empty where lines run straight to the winches
 * @param stays         stays behind the poles
 * @param pullOver      the line that pulls it over its edge
 * @param pivotHold     what keeps the pivot from sliding
 * @param sideThrusters thrusters that lay it down
 * @param landing       what matters for landing, above all for a hull that lands lying
 * @param temperature   how warm and cold the lines get
 * @param annotations          note, own keys and the keys given
 */
public record LoweringGear(Means means, double rate, double wander, double margin, Optional<Lines> lines,
        Optional<Poles> poles, List<Stay> stays, Optional<PullOver> pullOver, Optional<PivotHold> pivotHold,
        Optional<SideThrusters> sideThrusters, Optional<Landing> landing, Temperature temperature,
                Annotations annotations) {
    /** Copies the stays. */
    public LoweringGear {
        stays = List.copyOf(stays);
    }

    /** What lays a hull down. */
    public enum Means {
        /** Lines and winches. */
        LINES,
        /** Thrusters on the hull's side. */
        SIDE_THRUSTERS;

        /**
         * The word used in files and pages.
         *
         * @return the words in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * Lowering lines, alike and side by side.
     *
     * @param count            how many (1), 1 to 8
     * @param lugFromBase      lug along the axis from the base plane (m)
     * @param lugOffAxis       lug off the axis (m), positive to the lay-down side
     * @param lugHalfSpread    half the distance between the lugs (m), zero or more
     * @param line             the line
     * @param winch            the winch of each line
     * @param payOutMismatch   greatest difference in length paid out (m), zero or more
     * @param sheaveEfficiency efficiency of the sheave at the pole head (1), above 0, at most 1
     * @param ends             termination and lug of each line
     * @param slack            slack that may be in all lines at hand-over (m), zero or more
     * @param annotations             note, own keys and the keys given
     */
    public record Lines(int count, double lugFromBase, double lugOffAxis, double lugHalfSpread, Line line,
            Winch winch, double payOutMismatch, double sheaveEfficiency, Ends ends, double slack,
                    Annotations annotations) {
    }

    /**
     * How a line ends.
     *
     * @param terminationEfficiency share of the line's breaking load that its termination keeps (1)
     * @param lugCapacity           what each lug and the hull round it bear (N)
     * @param annotations                  note, own keys and the keys given
     */
    public record Ends(double terminationEfficiency, OptionalDouble lugCapacity, Annotations annotations) {
        /** A ferrule-secured eye on a lug that is not known. */
        public static final Ends USUAL = new Ends(bermwright.lowering.rig.Ends.USUAL.termination(),
                OptionalDouble.empty(), Annotations.NOTHING);
    }

    /**
     * A line.
     *
     * @param breakingLoad  breaking load (N)
     * @param massPerLength mass per length (kg/m)
     * @param stiffness     stiffness EA (N)
     * @param diameter      diameter (m)
     * @param annotations          note, own keys and the keys given
     */
    public record Line(OptionalDouble breakingLoad, OptionalDouble massPerLength, OptionalDouble stiffness,
            OptionalDouble diameter, Annotations annotations) {
        /** A line of which nothing is known. */
        public static final Line NOT_GIVEN = new Line(OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), Annotations.NOTHING);
    }

    /**
     * A winch.
     *
     * @param ratingEach  rated pull of each winch (N)
     * @param brakeHeat   heat the brakes can take (J)
     * @param behindPivot distance behind the pivot line (m)
     * @param anchor       its anchor
     * @param brakeHolding pull that its brake holds at a standstill (N)
     * @param spacing      distance between winches that share a pole (m), zero or more
     * @param annotations         note, own keys and the keys given
     */
    public record Winch(OptionalDouble ratingEach, OptionalDouble brakeHeat, double behindPivot,
            Optional<Anchor> anchor, OptionalDouble brakeHolding, double spacing, Annotations annotations) {
        /**
         * A winch whose brake is not known.
         *
         * @param ratingEach  rated pull of each winch (N)
         * @param brakeHeat   heat the brakes can take (J)
         * @param behindPivot distance behind the pivot line (m)
         * @param anchor      its anchor
         * @param annotations        note, own keys and the keys given
         */
        public Winch(OptionalDouble ratingEach, OptionalDouble brakeHeat, double behindPivot, Optional<Anchor> anchor,
                Annotations annotations) {
            this(ratingEach, brakeHeat, behindPivot, anchor, OptionalDouble.empty(),
                    bermwright.lowering.rig.Winch.USUAL_SPACING, annotations);
        }
    }

    /**
     * Poles over whose heads the lines run.
     *
     * @param height      height (m), above zero
     * @param behindPivot distance of their feet behind the pivot line (m)
     * @param halfSpread  half the distance between them (m), zero or more
     * @param diameter    tube diameter (m)
     * @param wall        tube wall (m)
     * @param yield       yield stress (Pa)
     * @param modulus     Young's modulus (Pa)
     * @param footArea    area of each foot (m2)
     * @param count       how many (1); a pair where it is left out, one where they have no spread
     * @param head        what sits at each head
     * @param annotations        note, own keys and the keys given
     */
    public record Poles(double height, double behindPivot, double halfSpread, OptionalDouble diameter,
            OptionalDouble wall, OptionalDouble yield, OptionalDouble modulus, OptionalDouble footArea,
            OptionalInt count, Head head, Annotations annotations) {
        /**
         * How many poles there are.
         *
         * @return the number (1), at least 1
         */
        public int poleCount() {
            return count.orElse(Reeving.usualPoles(halfSpread));
        }
    }

    /**
     * What sits at each pole head.
     *
     * @param sheaveDiameter diameter of the sheave in its groove (m)
     * @param sheaveCapacity what the sheave and its pin bear (N)
     * @param tieCapacity    what the tie or strut between neighbouring heads bears (N)
     * @param annotations           note, own keys and the keys given
     */
    public record Head(OptionalDouble sheaveDiameter, OptionalDouble sheaveCapacity, OptionalDouble tieCapacity,
            Annotations annotations) {
        /** Nothing is known of it. */
        public static final Head NOT_GIVEN = new Head(OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), Annotations.NOTHING);
    }

    /**
     * Stays that hold the pole heads back, one to each pole.
     *
     * @param behindPole   distance of the anchors behind the poles (m), above zero
     * @param halfSpread   half the distance between the anchors (m), zero or more
     * @param breakingLoad breaking load (N)
     * @param anchor       the anchor of each
     * @param annotations         note, own keys and the keys given
     */
    public record Stay(double behindPole, double halfSpread, OptionalDouble breakingLoad, Optional<Anchor> anchor,
            Annotations annotations) {
    }

    /**
     * The line that pulls the hull over its edge.
     *
     * @param lugFromBase lug along the axis from the base plane (m)
     * @param anchorAhead distance of its anchor ahead of the pivot line (m), above zero
     * @param winchRating rated pull of its winch (N)
     * @param anchor      its anchor
     * @param line        the line
     * @param ends        its termination and lug
     * @param annotations        note, own keys and the keys given
     */
    public record PullOver(double lugFromBase, double anchorAhead, OptionalDouble winchRating,
            Optional<Anchor> anchor, Line line, Ends ends, Annotations annotations) {
        /**
         * A pull-over line of which nothing is known but its place and winch.
         *
         * @param lugFromBase lug along the axis from the base plane (m)
         * @param anchorAhead distance of its anchor ahead of the pivot line (m)
         * @param winchRating rated pull of its winch (N)
         * @param anchor      its anchor
         * @param annotations        note, own keys and the keys given
         */
        public PullOver(double lugFromBase, double anchorAhead, OptionalDouble winchRating, Optional<Anchor> anchor,
                Annotations annotations) {
            this(lugFromBase, anchorAhead, winchRating, anchor, Line.NOT_GIVEN, Ends.USUAL, annotations);
        }
    }

    /**
     * What keeps the pivot from sliding either way.
     *
     * @param anchor the anchor
     * @param annotations   note, own keys and the keys given
     */
    public record PivotHold(Anchor anchor, Annotations annotations) {
    }

    /**
     * Thrusters on the hull's lay-down side, in pairs at one station.
     *
     * @param count           how many (1), 1 or more
     * @param thrustEach      thrust of each (N), above zero
     * @param fromBase        station along the axis from the base plane (m), above zero
     * @param cant            angle of each jet off the plane's normal (rad)
     * @param specificImpulse specific impulse (s), above zero
     * @param plumeRadius     radius kept clear under the jets (m), zero or more
     * @param annotations            note, own keys and the keys given
     */
    public record SideThrusters(int count, double thrustEach, double fromBase, double cant, double specificImpulse,
            double plumeRadius, Annotations annotations) {
    }

    /**
     * Landing.
     *
     * @param pad             id of the pad
     * @param touchdownPitch  pitch at touchdown (rad)
     * @param touchdownSpeed  speed at touchdown (m/s)
     * @param plumeStandOff   distance at which the jets harm nothing (m)
     * @param annotations            note, own keys and the keys given
     */
    public record Landing(Optional<String> pad, OptionalDouble touchdownPitch, OptionalDouble touchdownSpeed,
            OptionalDouble plumeStandOff, Annotations annotations) {
    }

    /**
     * How warm and cold the lines get while the hull goes down.
     *
     * @param swing     how much colder a line in shade is than one in sun (K), zero or more
     * @param expansion growth of the line with temperature (1/K), zero or more
     * @param light     when the lines stand in sun or in shade, may be empty
     * @param annotations      note, own keys and the keys given
     */
    public record Temperature(double swing, double expansion, List<Light> light, Annotations annotations) {
        /** The values of a plan that states none: steel, 100 K from sun to shade. */
        public static final Temperature USUAL = new Temperature(100, 1.2e-5, List.of(), Annotations.NOTHING);

        /** Copies the windows. */
        public Temperature {
            light = List.copyOf(light);
        }
    }

    /**
     * A window of sun or of shade on the lines.
     *
     * @param from  when it begins (h), counted from the first pull
     * @param to    when it ends (h)
     * @param shade what the lines then stand in
     * @param annotations  note, own keys and the keys given
     */
    public record Light(double from, double to, Shade shade, Annotations annotations) {
    }

    /** What lines stand in. */
    public enum Shade {
        /** Sunlight. */
        SUN,
        /** Shade. */
        SHADE;

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
