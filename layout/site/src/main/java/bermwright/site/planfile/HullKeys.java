// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static bermwright.site.planfile.Key.optional;
import static bermwright.site.planfile.Key.required;
import static bermwright.site.planfile.Key.standard;

import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.PassThrough;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Seat;
import bermwright.site.plan.Station;
import bermwright.site.plan.Stowage;
import bermwright.site.planfile.Key.Standard;
import java.util.List;

/** Keys of a hull, its parts and its cover. */
final class HullKeys {
    private static final String CHOSEN = "chosen here";
    private static final String ZICK = "Zick (1951), from memory";
    /** Least length and diameter of a hull (m): what is thinner has no area that a plane can be fitted under. */
    private static final double LEAST_SIZE = 0.1;
    private static final String AXIS = "chosen here: on the axis";

    static final List<Key> HULL = List.of(
            required("id", "id", Types.JOINED, "Its id, unique in the plan."),
            required("length_m", "body.length", Types.quantity(Unit.METRE, Range.between(LEAST_SIZE, Types.LONGEST)),
                    "Its length with both ends."),
            required("diameter_m", "body.diameter", Types.quantity(Unit.METRE, Range.between(LEAST_SIZE, 100)),
                    "Its diameter."),
            standard("base_end", "body.baseEnd", Types.part(Hull.End.class), Standard.ofItsParts(),
                    "The end it stands on."),
            standard("far_end", "body.farEnd", Types.part(Hull.End.class), Standard.ofItsParts(), "The other end."),
            standard("skin", "body.skin", Types.many(Hull.SkinLayer.class), Standard.none(),
                    "Layers of its skin, from outside inwards."),
            standard("stowage", "body.stowage", Types.many(Stowage.class), Standard.none(),
                    "Water, food, propellant or other mass against its wall inside, over parts of it. It shields over"
                            + " the whole stay: state what is left at the end."),
            optional("shell", "body.shell", Types.part(Hull.Shell.class), "what soil does to the shell is not computed",
                    "The shell that carries soil and pressure."),
            standard("inner_pressure_kPa", "body.innerPressure", Types.quantity(Unit.KILOPASCAL, Range.between(0,
                    1000)),
                    Standard.of(0, "chosen here: nothing leans on a pressure the plan does not state"),
                    "Pressure inside."),
            required("mass_t", "massProperties.mass", Types.quantity(Unit.TONNE, Range.between(0.001, 100_000)),
                    "Its mass when it is laid down."),
            required("centre_of_mass_from_base_m", "massProperties.centreOfMassFromBase", Types.length(Types.LONGEST),
                    "Centre of mass along the axis, from the base plane."),
            standard("centre_of_mass_off_axis_m", "massProperties.centreOfMassOffAxis", Types.offset(50),
                    Standard.of(0, AXIS),
                    "Centre of mass off the axis, positive to the lay-down side."),
            standard("centre_of_mass_spread_m", "massProperties.centreOfMassSpread", Types.lengthOrNone(50),
                    Standard.of(0.5, CHOSEN),
                    "One standard deviation of the centre of mass along the axis."),
            optional("inertia_about_centre_t_m2", "massProperties.inertiaAboutCentre",
                    Types.quantity(Unit.TONNE_SQUARE_METRE, Range.above(0, 1e9)), "that of a uniform rod",
                    "Inertia about a cross axis through the centre of mass."),
            standard("residual_propellant_t", "massProperties.residualPropellant",
                    Types.quantity(Unit.TONNE, Range.between(0, 100_000)), Standard.of(0, CHOSEN), "Propellant left."),
            required("base_centre", "placement.baseCentre", Types.PLACE,
                    "Ground point under the standing hull's axis; for a hull that lands lying, under the base"
                            + " plane's axis."),
            standard("landing_dispersion_m", "placement.landingDispersion", Types.lengthOrNone(10_000),
                    Standard.of(0, "chosen here: it stands where the plan says"), "Radius in which it may land."),
            required("lay_down_azimuth_deg", "placement.layDownAzimuth", new ValueType.Direction(),
                    "Direction in which it is laid down."),
            standard("clocking_deg", "placement.clocking", Types.degrees(-360, 360), Standard.of(0, CHOSEN),
                    "Turn of the body about its axis, for the record: hatches, stations, lugs and pass-throughs are"
                    + " stated as the hull lies, from its crown, and are not turned by it."),
            standard("pivot", "placement.pivot", Types.part(Pivot.class), Standard.ofItsParts(), "What it turns over."),
            standard("arrival", "placement.arrival", Types.choice(Hull.Arrival.values(), Hull.Arrival::word),
                    Standard.word("lowered", CHOSEN), "How it comes to lie, or that it stays upright."),
            optional("lowering", "lowering", Types.part(LoweringGear.class), "no gear is stated",
                    "The gear that lays it down."),
            standard("hatches", "hatches", Types.many(Hatch.class), Standard.none(), "Its hatches."),
            standard("seat", "seat", Types.part(Seat.class), Standard.ofItsParts(), "What it lies on."),
            standard("stations", "stations", Types.many(Station.class), Standard.none(), "Places where people stay."),
            optional("cover", "cover", Types.part(CoverPlan.class), "it stays bare", "The cover required."),
            standard("held", "held", Types.FLAG, Standard.of("false", CHOSEN),
                    "Whether arrange leaves it where it is."));

    static final List<Key> END = List.of(
            standard("shape", "shape", Types.choice(Hull.Shape.values(), Hull.Shape::word),
                    Standard.word("flat", CHOSEN), "Its shape."),
            standard("depth_m", "depth", Types.lengthOrNone(Types.LONGEST), Standard.of(0, CHOSEN),
                    "Its depth along the axis; the hull's length includes it."));

    static final List<Key> SKIN_LAYER = List.of(
            required("material", "material", Types.NAME, "Its material."),
            required("areal_density_g_cm2", "arealDensity",
                    Types.quantity(Unit.GRAM_A_SQUARE_CENTIMETRE, Range.above(0, 10_000)),
                    "Areal density straight through it."));

    static final List<Key> STOWAGE = List.of(
            required("id", "id", Types.JOINED, "Its id, unique in the hull."),
            required("material", "material", Types.NAME, "Its material."),
            required("areal_density_g_cm2", "arealDensity",
                    Types.quantity(Unit.GRAM_A_SQUARE_CENTIMETRE, Range.above(0, 10_000)),
                    "Areal density square to the wall."),
            required("from_along_m", "fromAlong", Types.lengthOrNone(Types.LONGEST),
                    "Where it begins, from the base plane."),
            required("to_along_m", "toAlong", Types.length(Types.LONGEST), "Where it ends, from the base plane."),
            standard("from_around_deg", "fromAround", Types.degrees(-360, 360),
                    Standard.of(-180, "chosen here: all around"), "Turn from the crown at which it begins, positive to"
                            + " the left looking from base to far end."),
            standard("to_around_deg", "toAround", Types.degrees(-360, 360),
                    Standard.of(180, "chosen here: all around"), "Turn from the crown at which it ends."));

    static final List<Key> SHELL = List.of(
            required("thickness_mm", "thickness", Types.quantity(Unit.MILLIMETRE, Range.above(0, 1000)),
                    "Its thickness."),
            required("modulus_GPa", "modulus", Types.quantity(Unit.GIGAPASCAL, Range.above(0, 2000)),
                    "Young's modulus."),
            required("yield_MPa", "yield", Types.quantity(Unit.MEGAPASCAL, Range.above(0, 10_000)), "Yield stress."),
            standard("poisson", "poisson", Types.factor(0, 0.5), Standard.of(0.29, "steel, common practice, no source"),
                    "Poisson's ratio."));

    static final List<Key> PIVOT = List.of(
            standard("kind", "kind", Types.choice(Pivot.Kind.values(), Pivot.Kind::word), Standard.word("rim", CHOSEN),
                    "What it turns over."),
            optional("ahead_m", "ahead", Types.length(100), "the hull's radius",
                    "Shoes: how far the pivot line lies ahead of the axis."),
            optional("half_spread_m", "halfSpread", Types.lengthOrNone(100), "not stated",
                    "Shoes: half the distance between them."),
            optional("count", "count", new ValueType.Count(Range.between(3, 24)), "4", "Legs: how many."),
            optional("footprint_radius_m", "footprintRadius", Types.length(100), "the hull's radius",
                    "Legs: radius of the circle of their feet."),
            optional("foot_area_m2", "footArea", Types.quantity(Unit.SQUARE_METRE, Range.above(0, 100)),
                    JsonText.number(Pivot.USUAL_FOOT_AREA) + ", chosen here",
                    "Shoes, legs: area of each on the ground."));

    static final List<Key> HATCH = List.of(
            required("id", "id", Types.JOINED, "Its id, unique in the hull."),
            required("end", "end", Types.choice(Hatch.End.values(), Hatch.End::word), "Where on the hull it is."),
            standard("along_m", "along", Types.lengthOrNone(Types.LONGEST), Standard.of(0, CHOSEN),
                    "Distance from the base plane."),
            standard("around_deg", "around", Types.degrees(-360, 360), Standard.of(0, CHOSEN),
                    "Turn from the crown, positive to the left looking from base to far end."),
            required("width_m", "width", Types.length(50), "Its clear width."),
            required("height_m", "height", Types.length(50), "Its clear height."),
            standard("sill_m", "sill", Types.lengthOrNone(100), Standard.of(0, CHOSEN), "Height of its sill."));

    static final List<Key> SEAT = List.of(
            standard("kind", "kind", Types.choice(Seat.Kind.values(), Seat.Kind::word), Standard.word("ground", CHOSEN),
                    "What the hull lies on."),
            standard("sunk_m", "sunk", Types.lengthOrNone(100), Standard.of(0, CHOSEN),
                    "How far its lower side lies below the ground."),
            standard("cradle_height_m", "cradleHeight", Types.lengthOrNone(20), Standard.of(0, CHOSEN),
                    "How far a cradle lifts its lower side."),
            standard("saddle_count", "saddleCount", new ValueType.Count(Range.between(2, 100)),
                    Standard.of(Seat.USUAL_SADDLES, ZICK), "Cradle: how many saddles, evenly spread."),
            optional("saddle_from_end_m", "saddleFromEnd", Types.lengthOrNone(Types.LONGEST),
                    JsonText.number(Seat.USUAL_FROM_END) + " of the hull's length, " + ZICK,
                    "Cradle: middle of the outer saddles from the hull's ends."),
            standard("saddle_contact_deg", "saddleContact", Types.quantity(Unit.DEGREE, Range.above(0, 180)),
                    Standard.of(Seat.USUAL_CONTACT_DEG, ZICK + ", 120 to 150"),
                    "Cradle: angle of the hull's round that a saddle holds."),
            standard("saddle_width_m", "saddleWidth", Types.length(20), Standard.of(Seat.USUAL_WIDTH, CHOSEN),
                    "Cradle: width of a saddle along the hull."));

    static final List<Key> STATION = List.of(
            required("id", "id", Types.JOINED, "Its id, unique in the hull."),
            required("along_m", "along", Types.offset(Types.LONGEST), "Distance from the base plane."),
            standard("across_m", "across", Types.offset(100), Standard.of(0, AXIS),
                    "Distance to the left, looking from base to far end with the lay-down side down."),
            standard("up_m", "up", Types.offset(100), Standard.of(0, AXIS),
                    "Distance from the axis, away from the lay-down side."),
            standard("occupancy_share", "occupancyShare", Types.share(), Standard.of(0, CHOSEN),
                    "Share of the stay that is spent here."),
            standard("storm_shelter", "stormShelter", Types.FLAG, Standard.of("false", CHOSEN),
                    "Whether people go here during a solar particle event."));

    static final List<Key> COVER = List.of(
            required("thickness_m", "thickness", Types.length(50), "The least cover from every point of covered skin."),
            optional("crown_m", "crown", Types.lengthOrNone(50), "thickness_m", "Cover over the crown."),
            optional("flank_m", "flank", Types.lengthOrNone(50), "thickness_m", "Cover over the flanks."),
            optional("base_end_m", "baseEndThickness", Types.lengthOrNone(50), "thickness_m",
                    "Cover over the base end."),
            optional("far_end_m", "farEndThickness", Types.lengthOrNone(50), "thickness_m", "Cover over the far end."),
            standard("base_end", "baseEnd", Types.choice(CoverPlan.End.values(), CoverPlan.End::word),
                    Standard.word("covered", CHOSEN), "What happens at the base end."),
            standard("far_end", "farEnd", Types.choice(CoverPlan.End.values(), CoverPlan.End::word),
                    Standard.word("covered", CHOSEN), "What happens at the far end."),
            optional("base_end_wall", "baseEndWall", Types.NAME, "no wall",
                    "Id of the wall that holds the soil at the base end."),
            optional("far_end_wall", "farEndWall", Types.NAME, "no wall",
                    "Id of the wall that holds the soil at the far end."),
            standard("crown_width_m", "crownWidth", Types.lengthOrNone(100), Standard.of(0, CHOSEN),
                    "Width of a flat crown."),
            standard("lift_m", "lift", Types.quantity(Unit.METRE, Range.between(0.05, 20)),
                    Standard.of(0.5, CHOSEN), "Height of a lift."),
            optional("density_kg_m3", "density", Types.density(), "the regolith's placed density",
                    "Density of this cover once placed."),
            standard("pass_throughs", "passThroughs", Types.many(PassThrough.class), Standard.none(),
                    "Radiators, cables, shafts and the like that the cover has to reckon with."));

    static final List<Key> PASS_THROUGH = List.of(
            required("id", "id", Types.JOINED, "Its id, unique in the cover."),
            required("kind", "kind", Types.choice(PassThrough.Kind.values(), PassThrough.Kind::word), "What it is."),
            required("along_m", "along", Types.lengthOrNone(Types.LONGEST), "Its middle, from the base plane."),
            standard("around_deg", "around", Types.degrees(-360, 360), Standard.of(0, CHOSEN),
                    "Its middle, turn from the crown, positive to the left looking from base to far end."),
            required("width_m", "width", Types.length(50), "Its width around the hull, measured on the skin."),
            required("length_m", "length", Types.length(Types.LONGEST), "Its length along the hull."),
            optional("clear_m", "clear", Types.lengthOrNone(50),
                    "no strip is kept, and soil over it is reported where it does harm",
                    "Strip around it that the cover leaves free of soil."),
            standard("open", "open", Types.FLAG, Standard.of("false", CHOSEN),
                    "Whether a feed-through is an open pipe; a shaft always is."));

    private HullKeys() {
    }
}
