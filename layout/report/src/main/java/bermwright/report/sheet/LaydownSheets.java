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
import bermwright.site.laydown.LandingDisc;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

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
        Figures f = new Figures();
        f.add("balance tilt", Math.toDegrees(r.balanceTilt()), 2, "°");
        f.add("greatest thrust to push over", r.greatestPush() / KILO, 2, "kN");
        f.add("greatest thrust to brake", r.greatestBrake() / KILO, 2, "kN");
        f.add("at tilt", Math.toDegrees(r.atTilt()), 2, "°");
        f.add("thrust there over what is needed", r.thrustMargin(), 2, "1");
        f.add("the same with one out and its counterpart off", r.oneOutMargin(), 2, "1");
        f.add("least number of thrusters of this size, a quarter in hand", r.leastCount(), 0, "1");
        f.add("propellant", r.propellant(), 0, "kg");
        f.add("time from standing to lying", r.time(), 0, "s");
        f.add("greatest friction factor needed at the pivot", r.frictionNeeded(), 2, "1");
        f.add("speed of the far end at contact", r.touchdownSpeed(), 2, "m/s");
        f.add("speed of the far end if thrust fails at balance", r.freeFallSpeed(), 2, "m/s");
        return new Table(Drawing.name("thrusters", hull.id()), "Hull " + hull.id() + ": side thrusters"
                + Marks.of(List.of(r.note())), Figures.COLUMNS, f.rows);
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
        points.add(new HoldPoint(r.atTilt(), "hardest braking: compare thrust and rate with the table"));
        points.add(new HoldPoint(Math.PI / 2, "contact: thrust off, chocks on both sides, jets cold before anybody"
                + " comes near"));
        points.sort(Comparator.comparingDouble(HoldPoint::tilt));
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
        Figures f = new Figures();
        f.add("thrust to hover", r.hoverThrust() / KILO, 1, "kN");
        f.add("thrust with a quarter in hand", r.thrustInHand() / KILO, 1, "kN");
        f.add("propellant for a hover of 20 s", r.hoverPropellant(), 0, "kg");
        f.add("energy at touchdown", r.touchdownEnergy() / KILO, 1, "kJ");
        f.add("fall to the same speed", r.equivalentDrop(), 3, "m");
        f.add("far end over the ground as the base touches", r.endRise(), 2, "m");
        f.add("speed at which the far end then comes down", r.slapSpeed(), 2, "m/s");
        return new Table(Drawing.name("landing", hull.id()), "Hull " + hull.id() + ": landing on its side"
                + Marks.of(List.of(r.note())), Figures.COLUMNS, f.rows);
    }

    /** How it lies on the ground as it is. */
    public Table rest(RestPose r) {
        Figures f = new Figures();
        f.rows.add(List.of("touches the ground at, from the base plane", r.contacts().stream()
                .map(c -> Words.fixed(c, 1)).collect(Collectors.joining(" and ")), "m"));
        f.add("pitch, far end down", Math.toDegrees(r.pitch()), 2, "°");
        f.add("cross slope, falling to the left", Math.toDegrees(r.crossSlope()), 2, "°");
        f.add("stays unchocked up to a cross slope of", Math.toDegrees(r.staysSurely()), 2, "°");
        f.add("rolls unless chocked from a cross slope of", Math.toDegrees(r.rollsSurely()), 2, "°");
        f.add("centre of mass to the nearer contact", r.rockMargin(), 2, "m");
        f.add("gap under the base edge", r.baseGap(), 2, "m");
        f.add("greatest gap under the belly", r.greatestGap(), 2, "m");
        f.add("sinkage, load spread over the length", r.sinkage(), 3, "m");
        return new Table(Drawing.name("rest", hull.id()), "Hull " + hull.id()
                + ": at rest on the ground as it is, before"
                + " cover", Figures.COLUMNS, f.rows);
    }

    /** Landings all over the dispersion, the gear where it was set out. */
    public Table landings(LandingDisc disc) {
        return new Table(Drawing.name("landings", hull.id()), "Hull " + hull.id() + ": landings inside the dispersion"
                + " of " + Words.fixed(disc.radius(), 1) + " m, the gear where it was set out, the hull let swing "
                + Words.degrees(disc.swing()) + "\u00b0 and its centre of mass shifted " + Words.fixed(disc.centre(), 2)
                + " m to either end; worst for the lines " + disc.worst().where(), List.of(
                Table.Column.number("ahead_m", "ahead (m)"), Table.Column.number("left_m", "left (m)"),
                Table.Column.number("eased_line_each_kN", "one line, eased by a swing (kN)"),
                Table.Column.number("worst_line_each_kN", "at the worst swing and shift (kN)"),
                Table.Column.number("worst_at_tilt_deg", "at tilt (\u00b0)"),
                Table.Column.number("lines_out_of_plane_deg", "lines out of plane (\u00b0)"),
                Table.Column.number("lines_across_kN", "lines across (kN)"),
                Table.Column.words("shoe_lifts", "a shoe lifts")),
                disc.spots().stream().map(s -> List.of(Words.fixed(s.ahead(), 1), Words.fixed(s.left(), 1),
                        Words.kilonewtons(s.eased().tension()), Words.kilonewtons(s.worst().tension()),
                        Words.degrees(s.worst().tilt()), Words.degrees(s.turn()), Words.kilonewtons(s.side()),
                        s.lifts() ? "yes" : "no")).toList());
    }
}
