// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static bermwright.site.planfile.Key.optional;
import static bermwright.site.planfile.Key.required;
import static bermwright.site.planfile.Key.standard;

import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Machine;
import bermwright.site.plan.Preparation;
import bermwright.site.plan.Rules;
import bermwright.site.plan.Stockpile;
import bermwright.site.plan.Tunnel;
import bermwright.site.plan.Wall;
import bermwright.site.plan.WorkStep;
import bermwright.site.planfile.Key.Standard;
import java.util.List;

/** Keys of the plan itself, its ground and everything that is drawn on it. */
final class SiteKeys {
    private static final String CHOSEN = "chosen here";
    private static final String SOURCEBOOK =
            "Lunar Sourcebook (1991), chapter 9, top 15 cm between craters, from memory";

    static final List<Key> PLAN = List.of(
            standard("title", "title", Types.WORDS, Standard.word("", "none"), "The plan's title."),
            required("ground", "ground", Types.part(GroundPlan.class), "The ground and its soil."),
            standard("hulls", "hulls", Types.many(Hull.class), Standard.none(), "The landers."),
            standard("walls", "walls", Types.many(Wall.class), Standard.none(),
                    "Walls that hold back the soil at an end of a cover."),
            standard("tunnels", "tunnels", Types.many(Tunnel.class), Standard.none(), "Tunnels between hatches."),
            standard("keep_outs", "keepOuts", Types.many(KeepOut.class), Standard.none(), "Areas nothing may touch."),
            standard("corridors", "corridors", Types.many(Corridor.class), Standard.none(), "Ways kept free."),
            standard("landing_pads", "landingPads", Types.many(LandingPad.class), Standard.none(), "Landing pads."),
            standard("preparations", "preparations", Types.many(Preparation.class), Standard.none(),
                    "Ground that is shaped before the work."),
            standard("borrow_grounds", "borrowGrounds", Types.many(BorrowGround.class), Standard.none(),
                    "Where soil is taken."),
            standard("stockpiles", "stockpiles", Types.many(Stockpile.class), Standard.none(), "Where soil waits."),
            standard("machines", "machines", Types.many(Machine.class), Standard.none(), "What digs and hauls."),
            standard("exposure", "exposure", Types.part(ExposurePlan.class), Standard.ofItsParts(),
                    "How long people stay, under which sun, against which limits."),
            standard("rules", "rules", Types.part(Rules.class), Standard.ofItsParts(),
                    "Limits and design factors of this plan."),
            standard("order_of_work", "orderOfWork", Types.many(WorkStep.class), Standard.none(),
                    "The steps of the work."),
            optional("arrange_within", "arrangeWithin", Types.OUTLINE, "anywhere on the ground",
                    "Where arrange may move hulls to."));

    static final List<Key> GROUND = List.of(
            required("elevation_file", "elevationFile", Types.NAME, "Elevation file, as a path beside the plan."),
            optional("reference_system", "referenceSystem", Types.WORDS, "read from the elevation file",
                    "Reference system of an elevation file that carries none."),
            standard("elevation_spread_m", "elevationSpread", Types.lengthOrNone(100), Standard.of(0.1, CHOSEN),
                    "One standard deviation of the heights in the elevation file."),
            standard("elevation_correlation_m", "elevationCorrelation", Types.quantity(Unit.METRE, Range.above(0,
                    1e5)), Standard.of(30, CHOSEN + ": some cells of an orbiter's elevation model; no source"),
                    "Length over which errors of those heights go together: at such a distance their correlation has"
                    + " fallen to 1/e. Doubts draws fields of errors with it."),
            standard("gravity_m_s2", "gravity", Types.quantity(Unit.METRE_A_SECOND_SQUARED, Range.above(0, 30)),
                    Standard.of(1.62, "nominal lunar surface gravity"), "Gravity."),
            standard("pivot_friction", "pivotFriction", Types.factor(0, 2), Standard.of(0.4, CHOSEN),
                    "Friction between the pivot and the ground."),
            standard("regolith", "regolith", Types.part(GroundPlan.Regolith.class), Standard.ofItsParts(),
                    "The soil."));

    static final List<Key> REGOLITH = List.of(
            standard("composition", "composition", Types.words("highland", "mare"), Standard.word("highland", CHOSEN),
                    "What the soil is made of."),
            standard("placed_density_kg_m3", "placedDensity", Types.density(),
                    Standard.of(1650, "chosen here, within 1600 to 1800 for soil compacted by machines, from memory"),
                    "Density of soil once placed."),
            standard("bank_density_kg_m3", "bankDensity", Types.density(),
                    Standard.of(1800, "Carrier, Olhoeft and Mendell (1991), mean of 0.5 to 1 m depth, rounded"),
                    "Density of soil in place before digging, at every depth; not used beside density_profile."),
            standard("loose_density_kg_m3", "looseDensity", Types.density(),
                    Standard.of(1450, "chosen here, within 1400 to 1600 for dumped soil, from memory"),
                    "Density of soil in a hauler."),
            standard("density_spread_share", "densitySpreadShare", Types.factor(0, 0.5), Standard.of(0.1, CHOSEN),
                    "One standard deviation of the densities, as a share of them."),
            standard("density_profile", "densityProfile", Types.many(GroundPlan.DensityAtDepth.class), Standard.none(),
                    "Density of natural ground by depth, from the surface down; straight between the depths, level"
                    + " beyond."),
            standard("stable_slope_deg", "stableSlope", Types.slope(),
                    Standard.of(33, "chosen here, below the 35 to 40 deg used in studies of dumped soil, from memory"),
                    "The steepest slope placed soil stands at."),
            standard("friction_angle_deg", "frictionAngle", Types.quantity(Unit.DEGREE, Range.above(0, 60)),
                    Standard.of(42, SOURCEBOOK), "Friction angle of the soil, as it is used: of placed soil, and of the"
                    + " ground at every depth beside no strength_profile."),
            standard("cohesion_Pa", "cohesion", Types.quantity(Unit.PASCAL, Range.between(0, 1e6)),
                    Standard.of(500, SOURCEBOOK + ", rounded"), "Cohesion of the soil, as it is used: of placed soil,"
                    + " and of the ground at every depth beside no strength_profile."),
            standard("friction_angle_spread_deg", "frictionSpread", Types.quantity(Unit.DEGREE, Range.between(0, 30)),
                    Standard.of(2, "chosen here: the Lunar Sourcebook's mean of 42 deg runs from 41 to 43, from memory;"
                            + " single sites from 24 to 47 (boulder tracks, NTRS 19730039283)"),
                    "One standard deviation of the friction angle; factors that rest on the soil are shown with it less"
                    + " and more."),
            standard("cohesion_spread_Pa", "cohesionSpread", Types.quantity(Unit.PASCAL, Range.between(0, 1e6)),
                    Standard.of(150, "chosen here: half the range 350 to 700 Pa of the Apollo 12 site (NSSDC"
                            + " PSPG-00430), rounded"),
                    "One standard deviation of the cohesion; factors that rest on the soil are shown with it less and"
                    + " more."),
            standard("strength_profile", "strengthProfile", Types.many(GroundPlan.StrengthAtDepth.class),
                    Standard.none(), "Strength of natural ground by depth, from the surface down; straight between the"
                    + " depths, level beyond."));

    static final List<Key> STRENGTH_AT_DEPTH = List.of(
            required("depth_m", "depth", Types.lengthOrNone(100), "Depth below the surface."),
            required("friction_angle_deg", "frictionAngle", Types.quantity(Unit.DEGREE, Range.above(0, 60)),
                    "Friction angle at that depth."),
            required("cohesion_Pa", "cohesion", Types.quantity(Unit.PASCAL, Range.between(0, 1e6)),
                    "Cohesion at that depth."),
            optional("source", "source", Types.WORDS, "not stated", "Where it is from."));

    static final List<Key> DENSITY_AT_DEPTH = List.of(
            required("depth_m", "depth", Types.lengthOrNone(100), "Depth below the surface."),
            required("density_kg_m3", "density", Types.density(), "Density at that depth."));

    static final List<Key> WALL = List.of(
            required("id", "id", Types.NAME, "Its id."),
            required("line", "line", Types.WAY, "Its line in plan."),
            required("height_m", "height", Types.length(100), "Its height."),
            required("thickness_m", "thickness", Types.length(20), "Its thickness."));

    static final List<Key> TUNNEL = List.of(
            required("id", "id", Types.NAME, "Its id."),
            required("from", "from", Types.NAME, "The hatch it leaves, as hull/hatch."),
            required("to", "to", Types.NAME, "The hatch it reaches, as hull/hatch."),
            required("diameter_m", "diameter", Types.length(50), "Its diameter."),
            standard("skin", "skin", Types.many(Hull.SkinLayer.class), Standard.none(),
                    "Layers of its skin, from outside inwards."));

    static final List<Key> KEEP_OUT = List.of(
            required("id", "id", Types.NAME, "Its id."),
            standard("kind", "kind", Types.WORDS, Standard.word("keep-out", CHOSEN), "What is there."),
            required("area", "area", Types.OUTLINE, "Its outline."),
            optional("height_m", "height", Types.lengthOrNone(1000), "nothing may pass over it either",
                    "How high what is there stands over the ground: lines and falling hulls may pass over it with their"
                    + " air."));

    static final List<Key> CORRIDOR = List.of(
            required("id", "id", Types.NAME, "Its id."),
            required("width_m", "width", Types.length(200), "Its width."),
            standard("greatest_grade_deg", "greatestGrade", Types.degrees(0, 60),
                    Standard.of(10, "within 10 to 15 deg for a driving corridor, from memory, low confidence"),
                    "The steepest grade along it."),
            required("line", "line", Types.WAY, "Its middle line."));

    static final List<Key> LANDING_PAD = List.of(
            required("id", "id", Types.NAME, "Its id."),
            required("centre", "centre", Types.PLACE, "Its middle."),
            required("radius_m", "radius", Types.length(1000), "Its radius."),
            standard("stand_off_m", "standOff", Types.lengthOrNone(Types.WIDEST),
                    Standard.of(300, "within 250 to 400 m for bare equipment, from memory, low confidence"),
                    "Distance from its middle at which its traffic harms nothing."));

    static final List<Key> PREPARATION = List.of(
            required("id", "id", Types.NAME, "Its id."),
            required("kind", "kind", Types.choice(Preparation.Kind.values(), Preparation.Kind::word), "What is made."),
            required("area", "area", Types.OUTLINE, "Its outline."),
            optional("level_m", "level", Types.offset(50_000), "the plane that fits the ground best",
                    "Height of its floor, in the datum of the elevation file."),
            standard("greatest_grade_deg", "greatestGrade", Types.degrees(0, 60),
                    Standard.of(1, "1 deg after grading for a mating port, from memory, low confidence"),
                    "The steepest grade of its floor."),
            standard("side_slope_deg", "sideSlope", Types.slope(), Standard.of(30, CHOSEN), "The slope of its sides."));

    static final List<Key> BORROW_GROUND = List.of(
            required("id", "id", Types.NAME, "Its id."),
            required("area", "area", Types.OUTLINE, "Its outline."),
            required("greatest_depth_m", "greatestDepth", Types.length(50), "The deepest cut."),
            standard("side_slope_deg", "sideSlope", Types.slope(), Standard.of(30, CHOSEN), "The slope of its sides."),
            standard("yield_share", "yieldShare", Types.shareAboveNone(), Standard.of(0.9, CHOSEN),
                    "Share of the dug soil that can be used."),
            standard("keep_clear_m", "keepClear", Types.lengthOrNone(1000), Standard.of(5, CHOSEN),
                    "Distance kept from hulls, anchors, pole feet and toes."));

    static final List<Key> STOCKPILE = List.of(
            required("id", "id", Types.NAME, "Its id."),
            required("area", "area", Types.OUTLINE, "Its outline."));

    private SiteKeys() {
    }
}
