// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static bermwright.site.planfile.Key.optional;
import static bermwright.site.planfile.Key.required;
import static bermwright.site.planfile.Key.standard;

import bermwright.shielding.dose.DoseLimit;
import bermwright.shielding.dose.OrganDose;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.shielding.spectrum.SolarActivity;
import bermwright.lowering.rig.DesignFactors;
import bermwright.site.plan.EventFit;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.HazardPlan;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Person;
import bermwright.site.plan.WorkStep;
import bermwright.site.planfile.Key.Standard;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Keys of machines, exposure, rules and the order of work. */
final class WorkKeys {
    private static final String CHOSEN = "chosen here";
    private static final LocalDate FIRST_SOLAR_DAY = LocalDate.of(1966, 1, 1);
    private static final LocalDate FIRST_WORK_DAY = LocalDate.of(1970, 1, 1);
    /** The sun's place is known to then. */
    private static final LocalDate LAST_WORK_DAY = LocalDate.of(2095, 12, 31);
    /** Quantities of doses and limits. */
    static final String[] QUANTITIES = Stream.concat(Stream.of(LimitInForce.EFFECTIVE_DOSE),
            Arrays.stream(OrganDose.Organ.values()).map(OrganDose.Organ::quantity)).toArray(String[]::new);
    /** Values of a dose limit. */
    static final ValueType LIMIT_VALUE = Types.quantity(Unit.MILLISIEVERT, Range.above(0, 1e6));
    /** Projected places are no farther from the origin (m). */
    private static final double FARTHEST = 1e7;
    private static final String NOT_SURVEYED = "not surveyed";
    private static final String PRACTICE = "common practice, no source";

    static final List<Key> MACHINE = List.of(
            required("id", "id", Types.NAME, "Its id."),
            standard("kind", "kind", Types.WORDS, Standard.word("hauler", CHOSEN), "What it is."),
            standard("count", "count", Types.count(10_000), Standard.of(1, CHOSEN), "How many there are."),
            required("load_t", "load", Types.quantity(Unit.TONNE, Range.above(0, 1000)), "The load of each."),
            required("speed_m_s", "speed", Types.quantity(Unit.METRE_A_SECOND, Range.above(0, 50)),
                    "Its speed on level ground."),
            standard("greatest_grade_deg", "greatestGrade", Types.degrees(0, 60),
                    Standard.of(15, "within 10 to 15 deg for a driving corridor, from memory, low confidence"),
                    "The steepest ground it climbs loaded."),
            standard("width_m", "width", Types.length(50), Standard.of(3, CHOSEN), "Its width."),
            standard("fill_s", "fillTime", Types.quantity(Unit.SECOND, Range.between(0, 1e6)),
                    Standard.of(600, "cycle example worked by hand, no source"), "Time to fill a load."),
            standard("dump_s", "dumpTime", Types.quantity(Unit.SECOND, Range.between(0, 1e6)),
                    Standard.of(120, "cycle example worked by hand, no source"), "Time to dump a load."),
            standard("hours_a_day", "hoursADay", Types.quantity(Unit.HOUR, Range.above(0, 24)),
                    Standard.of(16, CHOSEN), "Working hours a day of 24 h."),
            standard("availability_share", "availabilityShare", Types.shareAboveNone(), Standard.of(0.8, CHOSEN),
                    "Share of those hours in which it works."),
            optional("mass_t", "mass", Types.quantity(Unit.TONNE, Range.above(0, 1000)),
                    "nobody says how much cover it needs under it", "Its own mass, empty."),
            optional("contact_area_m2", "contactArea", Types.quantity(Unit.SQUARE_METRE, Range.above(0, 1000)),
                    "nobody says how much cover it needs under it",
                    "Ground that all its wheels or tracks together stand on."));

    static final List<Key> EXPOSURE = List.of(
            standard("stay_days", "stayDays", Types.quantity(Unit.DAY, Range.above(0, 36_525)),
                    Standard.of(180, CHOSEN), "Length of the stay."),
            standard("hours_outside_a_day", "hoursOutsideADay", Types.quantity(Unit.HOUR, Range.between(0, 24)),
                    Standard.of(1, CHOSEN), "Hours a day outside the hulls."),
            optional("to_shelter_min", "timeToShelter", Types.quantity(Unit.MINUTE, Range.between(0, 10_000)),
                    "no time is counted on the way, which is said",
                    "Time from the first warning of an event until all of the crew are in the shelter."),
            optional("solar_activity", "solarActivity",
                    Types.choice(ExposurePlan.SolarActivity.values(), ExposurePlan.SolarActivity::word),
                    "minimum, which lets in the most cosmic rays, unless solar_date or modulation_W is given",
                    "Solar activity: minimum is a modulation index of 10, maximum of 100."),
            optional("solar_date", "solarDate", new ValueType.Day(FIRST_SOLAR_DAY, SolarActivity.LAST_DAY),
                    "as solar_activity says", "Day whose place in the sunspot cycle gives the modulation index, for"
                            + " days to come a mean cycle and no forecast; stands over the solar activity."),
            optional("modulation_W", "modulationW", Types.factor(0, 200), "as solar_date or solar_activity says",
                    "Solar modulation index; stands over the solar date and the solar activity."),
            optional("event", "event", Types.NAME, "no event is counted", "Name of the solar particle event. "
                    + String.join("; ", EventSpectra.kinds()) + "."),
            optional("event_spectrum_file", "eventSpectrumFile", Types.NAME, "the spectrum of the named event",
                    "Spectrum of an event of your own, as a path beside the plan, with the columns"
                            + " energy_MeV,fluence_above_per_cm2; stands over the event. A line \"# beyond: power law"
                            + " in rigidity\" (or exponential in rigidity, or nothing) says how it goes on above its"
                            + " last energy; without it a power law is taken, and said."),
            optional("event_fit", "eventFit", Types.part(EventFit.class), "the spectrum file or the named event",
                    "The event by a published fit of its fluence above a rigidity, as those of ground-level events"
                            + " are given; stands over file and name."),
            standard("response", "response", Types.NAME, Standard.word("built in", CHOSEN),
                    "\"built in\", or a response table as a path beside the plan."),
            standard("more_responses", "moreResponses", new ValueType.Many(Types.NAME), Standard.none(),
                    "More response tables, as paths beside the plan: of the other time (a day or an event), or of an"
                            + " organ, with a line \"# quantity: gray equivalent, skin\"; limits are judged by them."),
            standard("limits", "limits", Types.many(ExposurePlan.Limit.class), Standard.none(), "Limits to be met."),
            standard("people", "people", Types.many(Person.class), Standard.none(),
                    "Named persons; limits are judged for each of them beside the crew."),
            standard("hazards", "hazards", Types.part(HazardPlan.class), Standard.ofItsParts(),
                    "What covers are judged for besides radiation."));

    static final List<Key> HAZARDS = List.of(
            standard("perforation_chance", "perforationChance", Types.shareAboveNone(),
                    Standard.of(HazardPlan.USUAL.perforationChance(), CHOSEN),
                    "Greatest chance that a meteoroid perforates a hull in the stay."),
            standard("landings", "landings", new ValueType.Count(Range.between(0, 10_000)),
                    Standard.of(HazardPlan.USUAL.landings(), CHOSEN), "Landings on each pad in the stay."),
            standard("thrown_soil_t", "thrownSoil", Types.quantity(Unit.TONNE, Range.between(0, 10_000)),
                    Standard.of(26, "Metzger (2024), Icarus 417: 11 to 26 t for the landers of the first crews, from"
                            + " memory; the greater one"),
                    "Soil that one landing throws about; nothing on a paved pad."),
            standard("mean_surface_temperature_K", "surfaceTemperature",
                    Types.quantity(Unit.KELVIN, Range.between(20, 400)),
                    Standard.of(HazardPlan.USUAL.surfaceTemperature(), "Apollo 15 heat flow, preliminary report: 252 K"
                            + " at 1 m and some 35 K less at the surface; polar ground is far colder"),
                    "Mean temperature of the ground's surface."),
            standard("surface_temperature_swing_K", "surfaceSwing",
                    Types.quantity(Unit.KELVIN, Range.between(0, 200)),
                    Standard.of(HazardPlan.USUAL.surfaceSwing(), "half of 95 to 390 K at the equator, from memory,"
                            + " rounded"),
                    "Swing of that temperature in a lunar day, either way."),
            standard("cabin_temperature_K", "cabinTemperature", Types.quantity(Unit.KELVIN, Range.between(200, 350)),
                    Standard.of(HazardPlan.USUAL.cabinTemperature(), CHOSEN), "Temperature inside the hulls."),
            standard("conductivity_W_m_K", "conductivity",
                    Types.quantity(Unit.WATT_A_METRE_KELVIN, Range.above(0, 10)),
                    Standard.of(HazardPlan.USUAL.conductivity(), "chosen here, between 0.0034 (Hayne et al. 2017, at"
                            + " 1 m) and 0.014 to 0.025 (Apollo 15 heat flow, preliminary report)"),
                    "Heat conductivity of placed soil."),
            standard("specific_heat_J_kg_K", "specificHeat",
                    Types.quantity(Unit.JOULE_A_KILOGRAM_KELVIN, Range.above(0, 5000)),
                    Standard.of(HazardPlan.USUAL.specificHeat(), "Hemingway et al. (1973) at 250 K, from memory"),
                    "Specific heat of soil."),
            standard("quake_acceleration_m_s2", "quakeAcceleration",
                    Types.quantity(Unit.METRE_A_SECOND_SQUARED, Range.between(0, 20)),
                    Standard.of(HazardPlan.USUAL.quakeAcceleration(), "light shaking, 0.14 to 0.38 m/s2 (Wald et al."
                            + " 1999, from memory), as beyond 50 km from a large shallow quake (Watters et al. 2024)"),
                    "Greatest acceleration of the ground in the stay, level."));

    static final List<Key> EVENT_FIT = List.of(
            required("name", "name", Types.WORDS, "Name of the event."),
            required("fluence_per_cm2", "fluence", Types.quantity(Unit.A_SQUARE_CENTIMETRE, Range.above(0, 1e14)),
                    "J of the fit, protons over all directions: the fluence above R is J R^-a exp(-R/R1), R in GV."),
            required("soft_index", "softIndex", Types.factor(-5, 20), "a, the index below the break."),
            required("fold_GV", "foldGV", Types.quantity(Unit.GIGAVOLT, Range.above(0, 100)),
                    "R1, the rigidity of the exponential below the break."),
            required("steep_index", "steepIndex", Types.factor(-5, 30),
                    "b, the index above the break, where the fluence falls as R^-b; above a."),
            optional("steep_fold_GV", "steepFoldGV", Types.quantity(Unit.GIGAVOLT, Range.above(0, 1000)),
                    "a power law to the end", "R2, the rigidity of a second exponential above the break; above R1."),
            required("source", "source", Types.WORDS, "The work that the figures are from."));

    static final List<Key> LIMIT = List.of(
            optional("published", "published", Types.words(LimitInForce.names().toArray(String[]::new)),
                    "the limit is the plan's own, and limit_mSv must be given",
                    "Name of a published limit, which gives quantity, from, over, value and source; "
                            + DoseLimit.CONFIRM + "."),
            optional("quantity", "quantity", Types.words(QUANTITIES), "as published says, else effective dose",
                    "The quantity the limit is for; gray equivalents are those of limits against early harm."),
            optional("from", "from", Types.choice(ExposurePlan.From.values(), ExposurePlan.From::word),
                    "as published says, else all", "What the limit counts."),
            optional("over", "over", Types.choice(ExposurePlan.Over.values(), ExposurePlan.Over::word),
                    "as published says, else stay",
                    "The time the limit runs over; a career is judged by the stay alone, where stay_days is given."),
            optional("limit_mSv", "limit", LIMIT_VALUE, "the value of published, one of both must be given",
                    "The limit, in mSv; in mGy-Eq for a gray equivalent. Beside published the smaller of both holds."),
            optional("source", "source", Types.WORDS, "as published says, else the plan, which names no source",
                    "Where the limit is from."));

    static final List<Key> RULES = List.of(
            standard("greatest_slope_under_hull_deg", "greatestSlopeUnderHull", Types.degrees(0, 45),
                    Standard.of(5, "2 to 5 deg for a hull's bed, from memory, low confidence"),
                    "The steepest ground under a lying hull."),
            standard("hull_spacing_m", "hullSpacing", Types.lengthOrNone(10_000), Standard.of(8, CHOSEN),
                    "The least distance between hulls."),
            standard("line_design_factor", "lineDesignFactor", Types.factor(1, 20),
                    Standard.of(3, "standing ropes of cranes in ASME B30.5, from memory"),
                    "Least breaking load over greatest tension of a line."),
            standard("anchor_design_factor", "anchorDesignFactor", Types.factor(1, 20), Standard.of(2, PRACTICE),
                    "Least capacity over load of an anchor."),
            standard("pole_design_factor", "poleDesignFactor", Types.factor(1, 20), Standard.of(2, PRACTICE),
                    "Least capacity over thrust of a pole."),
            standard("pivot_hold_factor", "pivotHoldFactor", Types.factor(1, 20), Standard.of(1.5, PRACTICE),
                    "Factor on the load along the ground that holds the pivot."),
            standard("shock_design_factor", "shockDesignFactor", Types.factor(1, 20),
                    Standard.of(DesignFactors.USUAL_SHOCK, PRACTICE),
                    "Least capacity of any part over its load in a stop or a snatch; its own factor where that is"
                            + " less."),
            standard("after_loss_design_factor", "afterLossDesignFactor", Types.factor(1, 20),
                    Standard.of(DesignFactors.USUAL_AFTER_LOSS,
                            "an accidental design situation, EN 1990:2002, 6.4.3.3, from memory"),
                    "Least capacity of any part over its load after one thing is lost."),
            optional("work_start", "workStart", new ValueType.Day(FIRST_WORK_DAY, LAST_WORK_DAY),
                    "the work has no dates", "First day of the work, from its begin by universal time; steps then"
                            + " have dates, by the sun's height at the site."),
            standard("night_work_share", "nightWorkShare", Types.share(), Standard.of(0, CHOSEN),
                    "Share of a day's work that is done while the sun is down, on stored power: 0 stands still."),
            standard("as_built_level_m", "asBuiltLevel", Types.length(10), Standard.of(0.1, CHOSEN),
                    "How far a surveyed surface may lie from the plan's before it is a finding."),
            standard("as_built_place_m", "asBuiltPlace", Types.length(10), Standard.of(0.2, CHOSEN),
                    "How far an end of a surveyed hull may lie from its place in the plan before it is a finding."));

    static final List<Key> WORK_STEP = List.of(
            required("id", "id", Types.NAME, "Its id."),
            required("step", "step", Types.choice(WorkStep.Kind.values(), WorkStep.Kind::word), "What is done."),
            required("of", "of", Types.NAME, "Id of the hull, preparation or wall it is done to."),
            optional("lift", "lift", Types.count(1000), "all of the cover", "Cover: number of the lift."),
            optional("up_to_height_m", "upToHeight", Types.length(100), "as high as the cover goes",
                    "Cover: height above the ground up to which the lift reaches."),
            optional("machine", "machine", Types.NAME, "any machine", "Id of the machine that does it."),
            standard("after", "after", new ValueType.Many(Types.NAME), Standard.none(),
                    "Ids of the steps that come before."),
            optional("as_built", "asBuilt", Types.part(WorkStep.AsBuilt.class), "not surveyed yet",
                    "What was surveyed once the step was done."));

    static final List<Key> AS_BUILT = List.of(
            optional("elevation_file", "elevationFile", Types.NAME, "the ground was not surveyed", "Elevation file of"
                    + " the survey, as a path beside the plan, in the reference system of the ground's."),
            optional("surveyed", "surveyed", new ValueType.Day(FIRST_WORK_DAY, LAST_WORK_DAY), "not stated",
                    "Day of the survey."),
            optional("placed_density_kg_m3", "placedDensity", Types.density(), "the plan's placed density",
                    "Density measured in the soil placed so far."),
            optional("base_end", "baseEnd", Types.part(WorkStep.SurveyedEnd.class), NOT_SURVEYED,
                    "Where the middle of the hull's base plane lies, surveyed."),
            optional("far_end", "farEnd", Types.part(WorkStep.SurveyedEnd.class), NOT_SURVEYED,
                    "Where the tip of the hull's far end lies, on its axis, surveyed."));

    static final List<Key> SURVEYED_END = List.of(
            required("east_m", "east", Types.offset(FARTHEST), "East, projected."),
            required("north_m", "north", Types.offset(FARTHEST), "North, projected."),
            optional("height_m", "height", Types.offset(50_000), NOT_SURVEYED, "Height, as in the elevation file."));

    private WorkKeys() {
    }
}
