// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.lowering.strength.SupportedBeam;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.page.Table;
import bermwright.site.answer.Answers;
import bermwright.site.burial.HullBurial;
import bermwright.site.burial.HullSupports;
import bermwright.site.plan.Hull;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/**
 * What soil does to a hull's shell, lift by lift; also for the editor.
 *
 * @param hull   the hull
 * @param burial what was reckoned for it
 */
public record BurialSheets(Hull hull, HullBurial burial) {
    private static final double KILO = 1000;
    private static final double MEGA = 1e6;
    /** Even steps along a hull at which shear and bending are drawn (1). */
    private static final int STEPS = 120;

    /**
     * Greatest pressure of soil on the skin against the height of the soil, with what stands against it.
     *
     * @return the drawing
     */
    public Drawing pressure() {
        List<Chart.Mark> limits = new ArrayList<>();
        if (hull.innerPressure() > 0) {
            limits.add(new Chart.Mark("pressure inside", hull.innerPressure() / KILO, "kPa"));
        }
        burial.heldEnds().ifPresent(p -> limits.add(new Chart.Mark("empty shell buckles, ends held", p / KILO, "kPa")));
        burial.longTube().ifPresent(p -> limits.add(new Chart.Mark("empty shell buckles as a long tube", p / KILO,
                "kPa")));
        return new Chart(Drawing.name("soil-pressure", hull.id()), "Hull " + hull.id()
                + ": pressure of soil on the skin as the cover rises", "height of soil over the hull's bed (m)",
                "pressure (kPa)", List.of(new Chart.Curve("greatest pressure of soil on the upper half",
                burial.lifts().stream().map(l -> new Dot(l.height(), l.greatest() / KILO)).toList(),
                Ink.of(0).withMarker(Ink.Marker.CIRCLE))), limits, List.of(), Chart.Scale.LINEAR).drawing();
    }

    /** The lifts as a table. */
    public Table lifts() {
        return AnswerSheets.table(Drawing.name("lifts", hull.id()), "Hull " + hull.id()
                + ": what each lift does to the shell", Answers.LIFTS, burial.lifts());
    }

    /** What carries the hull, as a table. */
    public Table supports() {
        return AnswerSheets.table(Drawing.name("supports", hull.id()), "Hull " + hull.id()
                + ": what carries it under its cover", Answers.SUPPORTS, burial.supports().supports());
    }

    /**
     * Shear and bending along a hull that is carried at places; none where it lies along its length.
     *
     * @return the drawings, bending first
     */
    public List<Drawing> beam() {
        return burial.supports().beam().map(beam -> List.of(
                along("bending", "bending, lay-down side pulled (MN m)", place ->
                        DoubleStream.of(beam.moment(place) / MEGA)),
                along("shear", "shear (kN)", place ->
                        DoubleStream.of(beam.shearBefore(place) / KILO, beam.shearBeyond(place) / KILO))))
                .orElse(List.of());
    }

    private Drawing along(String quantity, String up, DoubleFunction<DoubleStream> values) {
        SupportedBeam beam = burial.supports().beam().orElseThrow();
        List<Dot> dots = beam.shown(STEPS).stream().flatMap(place -> values.apply(place)
                .mapToObj(value -> new Dot(place, value))).toList();
        List<Chart.Mark> places = burial.supports().supports().stream()
                .map(s -> new Chart.Mark(s.name(), s.along(), "m")).toList();
        return new Chart(Drawing.name(quantity + "-along", hull.id()), "Hull " + hull.id() + ": " + quantity
                + " along it under its cover", "from the base plane (m)", up,
                List.of(new Chart.Curve(quantity, dots, Ink.of(0))), List.of(), places, Chart.Scale.LINEAR).drawing();
    }

    /** What it means, in plain words. */
    public List<String> words() {
        List<String> words = new ArrayList<>();
        words.add("Soil presses on the skin; the pressure inside holds it off. Least factor with pressure on: "
                + Words.said(burial.shellFactor(), "1") + ".");
        burial.heldEnds().ifPresent(p -> words.add("With the pressure off the empty shell buckles at about "
                + Words.said(p / KILO, "kPa") + " with its ends held" + burial.longTube().map(t -> ", "
                + Words.said(t / KILO, "kPa") + " as a long tube").orElse("")
                        + ": keep the pressure on in every lift."));
        HullSupports supports = burial.supports();
        if (supports.hogging() > 0 || supports.sagging() > 0) {
            words.add("Weight and soil bend the hull as a beam with " + Words.said(supports.hogging() / KILO, "kN m")
                    + " over a support and " + Words.said(supports.sagging() / KILO, "kN m") + " between"
                    + supports.beam().map(beam -> ", and shear it with up to "
                            + Words.said(beam.greatestShear() / KILO, "kN")).orElse("")
                    + supports.shell().map(BurialSheets::borne).orElse("") + ".");
        }
        words.add("Bedded along its length it presses up to " + Words.said(burial.seat().greatest() / KILO, "kPa")
                + " on the ground and sinks " + Words.said(burial.seat().sinking(), "m") + ".");
        return words;
    }

    private static String borne(HullSupports.Stresses shell) {
        return "; factor of safety of the bare shell " + Words.said(shell.pressurisedFactor(), "1")
                + " with the pressure on and " + Words.said(shell.bendingFactor(), "1") + " with it off"
                + shell.horn().map(horn -> ", and at the horn of the most loaded saddle its wall is stressed with "
                        + Words.said(horn / MEGA, "MPa")).orElse("");
    }
}
