// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static bermwright.site.planfile.Key.optional;
import static bermwright.site.planfile.Key.required;
import static bermwright.site.planfile.Key.standard;

import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Winch;
import bermwright.site.plan.Anchor;
import bermwright.site.plan.LoweringGear;
import bermwright.site.planfile.Key.Standard;
import java.util.List;

/** Keys of the gear that lays a hull down. */
final class GearKeys {
    private static final String CHOSEN = "chosen here";
    private static final String NOT_CHECKED = "not stated, so not checked";
    private static final ValueType FORCE = Types.quantity(Unit.KILONEWTON, Range.above(0, 1e6));
    private static final ValueType ANCHOR_TYPE = Types.part(Anchor.class);

    static final List<Key> GEAR = List.of(
            required("means", "means", Types.choice(LoweringGear.Means.values(), LoweringGear.Means::word),
                    "What lays it down; the block it names has to be there."),
            standard("rate_deg_min", "rate", Types.quantity(Unit.DEGREE_A_MINUTE, Range.above(0, 600)),
                    Standard.of(2, CHOSEN), "Turning rate."),
            standard("wander_deg", "wander", Types.degrees(0, 45), Standard.of(3, CHOSEN),
                    "How far the body may swing out of its plane to either side."),
            standard("margin_m", "margin", Types.lengthOrNone(100), Standard.of(2, CHOSEN),
                    "Distance kept around the sweep."),
            optional("lines", "lines", Types.part(LoweringGear.Lines.class), "none", "Lowering lines."),
            optional("poles", "poles", Types.part(LoweringGear.Poles.class), "lines run straight to the winches",
                    "Poles over whose heads the lines run."),
            standard("stays", "stays", Types.many(LoweringGear.Stay.class), Standard.none(),
                    "Stays that hold the pole heads back."),
            optional("pull_over", "pullOver", Types.part(LoweringGear.PullOver.class), "none",
                    "The line that pulls the hull over its edge."),
            optional("pivot_hold", "pivotHold", Types.part(LoweringGear.PivotHold.class), "friction alone",
                    "What keeps the pivot from sliding."),
            optional("side_thrusters", "sideThrusters", Types.part(LoweringGear.SideThrusters.class), "none",
                    "Thrusters on the hull's lay-down side."),
            optional("landing", "landing", Types.part(LoweringGear.Landing.class), "not stated", "The landing."),
            standard("temperature", "temperature", Types.part(LoweringGear.Temperature.class), Standard.ofItsParts(),
                    "How warm and cold the lines get."));

    static final List<Key> TEMPERATURE = List.of(
            standard("swing_K", "swing", Types.quantity(Unit.KELVIN, Range.between(0, 400)),
                    Standard.of(LoweringGear.Temperature.USUAL.swing(),
                            "chosen here; the ground swings by some 280 K in a lunar day"),
                    "How much colder a line in shade is than one in sun."),
            standard("expansion_per_K", "expansion", Types.quantity(Unit.ONE, Range.between(0, 1e-3)),
                    Standard.of(LoweringGear.Temperature.USUAL.expansion(), "steel; handbooks, from memory"),
                    "Growth of the lines with temperature."),
            standard("light", "light", Types.many(LoweringGear.Light.class), Standard.none(),
                    "When the lines stand in sun or in shade."));

    static final List<Key> LIGHT = List.of(
            required("from_h", "from", Types.quantity(Unit.HOUR, Range.between(0, 10_000)),
                    "When the window begins, counted from the first pull at the set rate without stops."),
            required("to_h", "to", Types.quantity(Unit.HOUR, Range.above(0, 10_000)), "When it ends."),
            required("in", "shade", Types.choice(LoweringGear.Shade.values(), LoweringGear.Shade::word),
                    "What the lines then stand in."));

    static final List<Key> LINES = List.of(
            standard("count", "count", Types.count(8), Standard.of(2, CHOSEN), "How many lines there are."),
            required("lug_from_base_m", "lugFromBase", Types.length(Types.LONGEST),
                    "The lugs along the axis, from the base plane."),
            standard("lug_off_axis_m", "lugOffAxis", Types.offset(100), Standard.of(0, "chosen here: on the axis"),
                    "The lugs off the axis, positive to the lay-down side."),
            standard("lug_half_spread_m", "lugHalfSpread", Types.lengthOrNone(100),
                    Standard.of(0, "chosen here: in the plane of the lay-down"), "Half the distance between the lugs."),
            standard("line", "line", Types.part(LoweringGear.Line.class), Standard.ofItsParts(), "The line."),
            required("winch", "winch", Types.part(LoweringGear.Winch.class), "The winch of each line."),
            standard("pay_out_mismatch_m", "payOutMismatch", Types.lengthOrNone(10), Standard.of(0.05, CHOSEN),
                    "The greatest difference in length paid out."),
            standard("sheave_efficiency", "sheaveEfficiency", Types.shareAboveNone(),
                    Standard.of(0.96, "two sheaves of 0.98 each, a rope maker's note"),
                    "Efficiency of the sheaves at the pole head."),
            standard("ends", "ends", Types.part(LoweringGear.Ends.class), Standard.ofItsParts(),
                    "How each line ends at the hull."),
            standard("slack_m", "slack", Types.lengthOrNone(10), Standard.of(LoweringLines.USUAL_SLACK, CHOSEN),
                    "Slack that may be in all lines at hand-over; taken up it jolts the whole chain."));

    static final List<Key> ENDS = List.of(
            standard("termination_efficiency", "terminationEfficiency", Types.shareAboveNone(),
                    Standard.of(LoweringGear.Ends.USUAL.terminationEfficiency(),
                            "ferrule-secured eye, EN 13414-1, factor KT"),
                    "Share of its breaking load that the line keeps at its termination."),
            optional("lug_capacity_kN", "lugCapacity", FORCE, NOT_CHECKED,
                    "What each lug and the hull round it bear."));

    static final List<Key> LINE = List.of(
            optional("breaking_load_kN", "breakingLoad", FORCE, NOT_CHECKED, "Its breaking load."),
            optional("mass_kg_m", "massPerLength", Types.quantity(Unit.KILOGRAM_A_METRE, Range.above(0, 1000)),
                    NOT_CHECKED, "Its mass a metre."),
            optional("stiffness_EA_MN", "stiffness", Types.quantity(Unit.MEGANEWTON, Range.above(0, 1e5)), NOT_CHECKED,
                    "Its stiffness, modulus times area."),
            optional("diameter_mm", "diameter", Types.quantity(Unit.MILLIMETRE, Range.above(0, 1000)), NOT_CHECKED,
                    "Its diameter."));

    static final List<Key> WINCH = List.of(
            optional("rating_each_kN", "ratingEach", FORCE, NOT_CHECKED, "Rated pull of each winch."),
            optional("brake_heat_MJ", "brakeHeat", Types.quantity(Unit.MEGAJOULE, Range.above(0, 1e5)), NOT_CHECKED,
                    "Heat the brakes can take."),
            required("behind_pivot_m", "behindPivot", Types.offset(10_000), "Distance behind the pivot line."),
            optional("anchor", "anchor", ANCHOR_TYPE, NOT_CHECKED, "Its anchor."),
            optional("brake_holding_kN", "brakeHolding", FORCE, NOT_CHECKED,
                    "Pull that its brake holds at a standstill."),
            standard("spacing_m", "spacing", Types.lengthOrNone(100), Standard.of(Winch.USUAL_SPACING, CHOSEN),
                    "Distance between winches that share a pole; each stands behind its pole."));

    static final List<Key> POLES = List.of(
            required("height_m", "height", Types.length(Types.LONGEST), "Their height."),
            required("behind_pivot_m", "behindPivot", Types.offset(10_000),
                    "Distance of their feet behind the pivot line."),
            required("half_spread_m", "halfSpread", Types.lengthOrNone(1000), "Half the distance between them."),
            optional("diameter_m", "diameter", Types.length(20), NOT_CHECKED, "Diameter of the tube."),
            optional("wall_mm", "wall", Types.quantity(Unit.MILLIMETRE, Range.above(0, 1000)), NOT_CHECKED,
                    "Wall of the tube."),
            optional("yield_MPa", "yield", Types.quantity(Unit.MEGAPASCAL, Range.above(0, 10_000)), NOT_CHECKED,
                    "Yield stress."),
            optional("modulus_GPa", "modulus", Types.quantity(Unit.GIGAPASCAL, Range.above(0, 2000)), NOT_CHECKED,
                    "Young's modulus."),
            optional("foot_area_m2", "footArea", Types.quantity(Unit.SQUARE_METRE, Range.above(0, 1000)), NOT_CHECKED,
                    "Area of each foot."),
            optional("count", "count", Types.count(8), "a pair; one where half_spread_m is 0",
                    "How many there are, evenly between the outermost; the lines are shared over them from right to"
                            + " left, each over a sheave of its own."),
            standard("head", "head", Types.part(LoweringGear.Head.class), Standard.ofItsParts(),
                    "What sits at each head."));

    static final List<Key> HEAD = List.of(
            optional("sheave_diameter_mm", "sheaveDiameter", Types.quantity(Unit.MILLIMETRE, Range.above(0, 10_000)),
                    NOT_CHECKED, "Diameter of the sheave in its groove."),
            optional("sheave_capacity_kN", "sheaveCapacity", FORCE, NOT_CHECKED, "What a sheave and its pin bear."),
            optional("tie_capacity_kN", "tieCapacity", FORCE, NOT_CHECKED,
                    "What the tie or strut between neighbouring heads can carry."));

    static final List<Key> STAY = List.of(
            required("behind_pole_m", "behindPole", Types.length(10_000), "Distance of the anchors behind the poles."),
            required("half_spread_m", "halfSpread", Types.lengthOrNone(1000), "Half the distance between the anchors."),
            optional("breaking_load_kN", "breakingLoad", FORCE, NOT_CHECKED, "Its breaking load."),
            optional("anchor", "anchor", ANCHOR_TYPE, NOT_CHECKED, "The anchor of each."));

    static final List<Key> PULL_OVER = List.of(
            required("lug_from_base_m", "lugFromBase", Types.length(Types.LONGEST),
                    "Its lug along the axis, from the base plane."),
            required("anchor_ahead_m", "anchorAhead", Types.length(10_000),
                    "Distance of its anchor ahead of the pivot line."),
            optional("winch_rating_kN", "winchRating", FORCE, NOT_CHECKED, "Rated pull of its winch."),
            optional("anchor", "anchor", ANCHOR_TYPE, NOT_CHECKED, "Its anchor."),
            standard("line", "line", Types.part(LoweringGear.Line.class), Standard.ofItsParts(), "The line."),
            standard("ends", "ends", Types.part(LoweringGear.Ends.class), Standard.ofItsParts(),
                    "How the line ends at the hull."));

    static final List<Key> PIVOT_HOLD = List.of(required("anchor", "anchor", ANCHOR_TYPE, "The anchor."));

    static final List<Key> SIDE_THRUSTERS = List.of(
            required("count", "count", Types.count(100), "How many there are."),
            required("thrust_each_kN", "thrustEach", FORCE, "Thrust of each."),
            required("from_base_m", "fromBase", Types.length(Types.LONGEST),
                    "Where they are along the axis, from the base plane."),
            standard("cant_deg", "cant", Types.degrees(0, 80), Standard.of(0, CHOSEN),
                    "Angle of each jet off the plane's normal."),
            required("specific_impulse_s", "specificImpulse", Types.quantity(Unit.SECOND, Range.above(0, 10_000)),
                    "Specific impulse."),
            standard("plume_radius_m", "plumeRadius", Types.lengthOrNone(10_000), Standard.of(60, CHOSEN),
                    "Radius kept clear under the jets."));

    static final List<Key> LANDING = List.of(
            optional("pad", "pad", Types.NAME, "no pad", "Id of the pad."),
            optional("touchdown_pitch_deg", "touchdownPitch", Types.degrees(-90, 90), NOT_CHECKED,
                    "Pitch at touchdown."),
            optional("touchdown_speed_m_s", "touchdownSpeed",
                    Types.quantity(Unit.METRE_A_SECOND, Range.between(0, 100)),
                    NOT_CHECKED, "Speed at touchdown."),
            optional("plume_stand_off_m", "plumeStandOff", Types.lengthOrNone(Types.WIDEST), NOT_CHECKED,
                    "Distance at which the jets harm nothing."));

    static final List<Key> ANCHOR = List.of(
            required("kind", "kind", Types.choice(Anchor.Kind.values(), Anchor.Kind::word), "Its kind."),
            optional("width_m", "width", Types.length(100), "not stated", "Plate, block: width across the pull."),
            optional("height_m", "height", Types.length(100), "not stated", "Plate, block: height."),
            optional("length_m", "length", Types.length(100), "not stated", "Block: length along the pull."),
            optional("depth_m", "depth", Types.length(100), "not stated",
                    "Plate, block: depth to the lower edge; screw, pile: depth of the tip."),
            optional("mass_t", "mass", Types.quantity(Unit.TONNE, Range.above(0, 10_000)), "not stated",
                    "Ballast: mass."),
            optional("count", "count", Types.count(1000), "not stated", "Screw, pile: how many act together."),
            optional("diameter_m", "diameter", Types.length(20), "not stated",
                    "Screw: diameter of the helix; pile: of the shaft."));

    private GearKeys() {
    }
}
