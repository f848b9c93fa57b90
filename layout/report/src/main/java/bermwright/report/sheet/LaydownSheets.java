// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.lowering.rest.RestPose;
import bermwright.lowering.sequence.HoldPoint;
import bermwright.lowering.thrust.LyingLanding;
import bermwright.lowering.thrust.ThrusterResult;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.page.Table;
import bermwright.site.answer.LoweringAnswers;
import bermwright.site.laydown.LandingDisc;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A hull laid down by side thrusters, landing on its side, and at rest on the ground; also for the editor.
 *
 * @param hull the hull
 */
public record LaydownSheets(Hull hull) {
    private static final double KILO = 1000;

    /**
     * Thrust against tilt, with what the thrusters bring.
     *
     * @param result the laying down by thrusters
     * @return the drawing
     */
    public Drawing thrust(ThrusterResult result) {
        List<Chart.Mark> limits = new ArrayList<>();
        hull.lowering().flatMap(LoweringGear::sideThrusters).ifPresent(t -> {
            limits.add(new Chart.Mark("all thrusters, cant counted",
                    t.count() * t.thrustEach() * Math.cos(t.cant()) / KILO, "kN"));
            if (t.count() > 2) {
                limits.add(new Chart.Mark("one out, its counterpart off",
                        (t.count() - 2) * t.thrustEach() * Math.cos(t.cant()) / KILO, "kN"));
            }
        });
        List<Chart.Mark> places = new ArrayList<>(List.of(new Chart.Mark("balance",
                Math.toDegrees(result.balanceTilt()), "°")));
        result.abortTilt().ifPresent(tilt -> places.add(new Chart.Mark("one side lost cannot be held beyond",
                Math.toDegrees(tilt), "°")));
        return new Chart(Drawing.name("thrust", hull.id()), "Hull " + hull.id() + ": thrust against tilt"
                + Marks.of(List.of(result.note())), "tilt from standing (°)", "force (kN)", List.of(
                new Chart.Curve("thrust square to the hull (positive: brakes, negative: pushes over)",
                        result.states().stream().map(s -> new Dot(Math.toDegrees(s.tilt()),
                        s.thrust() / KILO)).toList(),
                        Ink.of(0)),
                new Chart.Curve("pivot, square to the ground", result.states().stream().map(s -> new Dot(
                        Math.toDegrees(s.tilt()), s.pivotUp() / KILO)).toList(), Ink.of(1)),
                new Chart.Curve("pivot, along the ground", result.states().stream().map(s -> new Dot(
                        Math.toDegrees(s.tilt()), s.pivotAlong() / KILO)).toList(), Ink.of(3))), limits, places,
                Chart.Scale.LINEAR).drawing();
    }

    /** The laying down by thrusters in single figures. */
    public Table thrusters(ThrusterResult r) {
        return AnswerSheets.figures(Drawing.name("thrusters", hull.id()), "Hull " + hull.id() + ": side thrusters"
                + Marks.of(List.of(r.note())), LoweringAnswers.THRUSTERS, r);
    }

    /** Where to stop and check while thrusters lay it down, to be signed. */
    public Table holdPoints(ThrusterResult r) {
        List<HoldPoint> points = new ArrayList<>(List.of(
                new HoldPoint(0, "reach of the jets and sweep clear of people and gear; propellant, valves and each"
                        + " thruster checked; pivot held along the ground both ways"),
                new HoldPoint(r.balanceTilt(), "balance: thrust turns round from pushing to braking; compare it with"
                        + " the table")));
        r.abortTilt().ifPresent(tilt -> points.add(new HoldPoint(tilt, "last tilt at which one side lost can be held:"
                + " go on only with all thrusters at work")));
        double contact = r.states().stream().mapToDouble(s -> s.tilt()).max().orElse(Math.PI / 2);
        if (r.atTilt() < contact) {
            points.add(new HoldPoint(r.atTilt(), "hardest braking: compare thrust and rate with the table"));
        }
        points.sort(Comparator.comparingDouble(HoldPoint::tilt));
        points.add(new HoldPoint(contact, "contact, with the hardest braking just before it: thrust off, chocks on both"
                + " sides, jets cold before anybody comes near"));
        return LoweringSheets.holdPoints(hull.id(), points);
    }

    /** Where to stop and check when it lands on its side, to be signed. */
    public Table holdPoints(LyingLanding r) {
        return LoweringSheets.holdPoints(hull.id(), List.of(
                new HoldPoint(Math.PI / 2, "before descent: pad surveyed and clear, nobody within the reach of the"
                        + " plume"),
                new HoldPoint(Math.PI / 2, "after touchdown: chocks on both sides; the far end came down with up to "
                        + Words.said(r.slapSpeed(), "m/s") + ": look the shell over before it is pressurised")));
    }

    /** Landing on the side in single figures. */
    public Table landing(LyingLanding r) {
        return AnswerSheets.figures(Drawing.name("landing", hull.id()), "Hull " + hull.id() + ": landing on its side"
                + Marks.of(List.of(r.note())), LoweringAnswers.LANDING, r);
    }

    /** How it lies on the ground as it is. */
    public Table rest(RestPose r) {
        return AnswerSheets.figures(Drawing.name("rest", hull.id()), "Hull " + hull.id()
                + ": at rest on the ground as it is, before cover", LoweringAnswers.REST, r);
    }

    /** Landings all over the dispersion, the gear where it was set out. */
    public Table landings(LandingDisc disc) {
        return AnswerSheets.table(Drawing.name("landings", hull.id()), "Hull " + hull.id()
                + ": landings inside the dispersion"
                + " of " + Words.fixed(disc.radius(), 1) + " m, the gear where it was set out, the hull let swing "
                + Words.degrees(disc.swing()) + "\u00b0 and its centre of mass shifted " + Words.fixed(disc.centre(), 2)
                + " m to either end; worst for the lines " + disc.worst().where(), LoweringAnswers.SPOTS, disc.spots());
    }
}
