// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static bermwright.site.answer.AnswerTable.within;
import static bermwright.site.answer.Figure.maybe;
import static bermwright.site.answer.Figure.of;
import static bermwright.site.answer.Figure.words;

import bermwright.lowering.strength.SupportedBeam;
import bermwright.site.answer.AnswerTable.Part;
import bermwright.site.burial.HullBurial;
import bermwright.site.burial.HullSupports;
import bermwright.site.burial.SeatLoad;
import bermwright.site.exposure.PassedThrough;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Tables of what a cover does to its hull, and of what passes through it. */
public final class CoverAnswers {
    /** Even steps along a hull at which shear and bending are told (1). */
    private static final int STEPS = 20;
    /** What passes through the covers. */
    public static final AnswerTable<PassedThrough> PASSING = new AnswerTable<>("pass_throughs[]",
            "What passes through the covers.", "", List.of(
            words("hull", "hull", PassedThrough::hull), words("id", "part", (PassedThrough p) -> p.thing().id()),
            words("kind", "kind", (PassedThrough p) -> p.thing().kind().word()),
            of("along_m", "from base plane", Unit.M, (PassedThrough p) -> p.thing().along()).digits(1),
            of("around_deg", "from crown", Unit.DEG, (PassedThrough p) -> p.thing().around()).digits(0),
            of("width_m", "around", Unit.M, (PassedThrough p) -> p.thing().width()).filesOnly(),
            of("length_m", "along", Unit.M, (PassedThrough p) -> p.thing().length()).filesOnly(),
            words("state", "state", PassedThrough::state),
            of("deepest_soil_m", "soil over it", Unit.M, PassedThrough::deepest),
            of("share_under_soil", "under soil", Unit.PERCENT, PassedThrough::shareUnderSoil).digits(0).filesOnly(),
            of("open_way_m", "open way through soil", Unit.M, PassedThrough::openWay),
            of("displaced_m3", "soil it takes up", Unit.M3, PassedThrough::displaced).digits(2)));
    private static final AnswerTable<SeatLoad> SEAT = within("The hull bedded along its length.", List.of(
            of("load_kN_m", "load on its bed", Unit.KN_M, SeatLoad::perLength),
            of("sinking_m", "sinks", Unit.M, SeatLoad::sinking),
            of("half_width_m", "half the width in touch", Unit.M, SeatLoad::halfWidth),
            of("greatest_pressure_kPa", "greatest pressure on the ground", Unit.KPA, SeatLoad::greatest)));
    private static final AnswerTable<AlongBeam> BEAM = within("Shear and bending along the hull.", List.of(
            of("along_m", "from base plane", Unit.M, AlongBeam::place),
            of("shear_before_kN", "shear before", Unit.KN, (AlongBeam b) -> b.beam.shearBefore(b.place)),
            of("shear_beyond_kN", "shear beyond", Unit.KN, (AlongBeam b) -> b.beam.shearBeyond(b.place)),
            of("bending_kN_m", "bending", Unit.KNM, (AlongBeam b) -> b.beam.moment(b.place))));
    private static final AnswerTable<HullSupports.Stresses> STRESSES = within("The bare shell over its supports.",
            List.of(
            of("stress_over_support_MPa", "stress over a support", Unit.MPA, HullSupports.Stresses::overSupport),
            of("stress_between_MPa", "stress between", Unit.MPA, HullSupports.Stresses::between),
            of("bearable_stress_MPa", "allowable stress", Unit.MPA, HullSupports.Stresses::bearable),
            of("pressure_pull_MPa", "stress from the pressure inside", Unit.MPA, HullSupports.Stresses::pull),
            of("bending_factor_pressure_on", "factor of safety of the bare shell, pressure on", Unit.ONE,
                    HullSupports.Stresses::pressurisedFactor),
            of("bending_factor_pressure_off", "factor of safety of the bare shell, pressure off", Unit.ONE,
                    HullSupports.Stresses::bendingFactor),
            maybe("saddle_horn_stress_MPa", "stress at the horn of the most loaded saddle", Unit.MPA,
                    (HullSupports.Stresses s) -> number(s.horn()))));
    /** What carries a buried hull, whole. */
    public static final AnswerTable<HullSupports> SUPPORTS = within("What carries a buried hull.", List.of(
            words("kind", "carried by", (HullSupports s) -> s.kind().word()),
            of("bending_over_support_kN_m", "bending over a support", Unit.KNM, HullSupports::hogging).digits(0),
            of("bending_between_kN_m", "bending between supports", Unit.KNM, HullSupports::sagging).digits(0),
            maybe("greatest_shear_kN", "greatest shear", Unit.KN, (HullSupports s) -> number(s.beam()
                    .map(SupportedBeam::greatestShear))).digits(0))).with(List.of(
            Part.all("loads", Answers.SUPPORTS.with(List.of(Part.maybe("soil", LoweringAnswers.SOIL,
                    HullSupports.Support::soil))), HullSupports::supports),
            Part.all("beam", BEAM, s -> s.beam().map(b -> b.shown(STEPS).stream().map(at -> new AlongBeam(b, at))
                    .toList()).orElse(List.of())),
            Part.maybe("", STRESSES, HullSupports::shell)));
    /** What soil and pressure do to a hull's shell; endless factors are left out. */
    public static final AnswerTable<HullBurial> BURIAL = new AnswerTable<>("hulls[].burial",
            "What soil and pressure do to a hull's shell.", "", List.of(
            of("shell_factor", "factor of safety of the shell, pressure on", Unit.ONE, HullBurial::shellFactor),
            maybe("buckling_long_tube_kPa", "empty shell buckles as a long tube", Unit.KPA, (HullBurial b) ->
                    number(b.longTube())),
            maybe("buckling_held_ends_kPa", "empty shell buckles, ends held", Unit.KPA, (HullBurial b) ->
                    number(b.heldEnds())),
            maybe("bending_share_of_yield_unpressurised", "bending stress of yield, pressure off", Unit.PERCENT,
                    (HullBurial b) -> number(b.bendingOff())))).with(List.of(
            Part.one("seat", SEAT, HullBurial::seat), Part.one("supports", SUPPORTS, HullBurial::supports),
            Part.all("lifts", Answers.LIFTS, HullBurial::lifts)));

    private CoverAnswers() {
    }

    /** A place along a beam. */
    private record AlongBeam(SupportedBeam beam, double place) {
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
