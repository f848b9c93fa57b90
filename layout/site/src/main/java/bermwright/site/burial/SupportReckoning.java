// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import bermwright.lowering.rig.Tube;
import bermwright.lowering.strength.BeamLoad;
import bermwright.lowering.strength.SupportedBeam;
import bermwright.lowering.strength.ThinTube;
import bermwright.regolith.Bearing;
import bermwright.regolith.Regolith;
import bermwright.regolith.Settlement;
import bermwright.regolith.SoilSensitivity;
import bermwright.site.burial.HullSupports.Kind;
import bermwright.site.burial.HullSupports.Stresses;
import bermwright.site.burial.HullSupports.Support;
import bermwright.site.burial.ShellBuckling.ThinShell;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.site.plan.Seat;
import bermwright.site.pose.LyingPose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Reckons what carries one hull. */
final class SupportReckoning {
    /** A lean below this lets the hull lie along its length (rad). */
    private static final double LEAST_LEAN = 1e-4;
    /** Radius over wall up to which the wall's buckling under thrust was measured (1). */
    private static final double THINNEST = 1500;

    private final Hull hull;
    private final Regolith soil;
    private final double gravity;
    private final BeamLoad borne;
    private final Optional<ThinShell> shell;

    SupportReckoning(Plan plan, Hull hull, BeamLoad borne, Optional<ThinShell> shell) {
        this.hull = hull;
        this.borne = borne;
        this.shell = shell;
        gravity = plan.ground().gravity();
        soil = PlanSoil.of(plan.ground()).inPlace();
    }

    private double lean() {
        return Math.atan2(hull.pivotAhead() - hull.radius(), noseAt());
    }

    /** Where the cylinder ends and the nose begins, which touches the ground first (m). */
    private double noseAt() {
        return hull.length() - hull.farEnd().depth();
    }

    HullSupports made(SeatLoad seat) {
        boolean saddles = hull.seat().kind() == Seat.Kind.CRADLE;
        boolean leans = !saddles && LyingPose.standsOnPivot(hull) && lean() > LEAST_LEAN;
        if (!saddles && !leans) {
            return along(seat);
        }
        Kind kind = saddles ? Kind.SADDLES : Kind.FEET_AND_NOSE;
        SupportFindings findings = new SupportFindings(hull);
        if (saddles && !(hull.seat().fromEnd(hull.length()) < hull.length() / 2)) {
            return nothing(kind, findings.saddlesPastMiddle());
        }
        List<Double> places = saddles ? saddles() : List.of(0.0, noseAt());
        SupportedBeam beam = SupportedBeam.resting(borne, places);
        List<Support> supports = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            int number = beam.supports().indexOf(places.get(i));
            double reaction = number < 0 ? 0 : beam.reactions().get(number);
            supports.add(saddles ? saddle(i, places.get(i), reaction)
                    : i == 0 ? feet(reaction) : nose(places.get(i), reaction));
        }
        HullSupports made = new HullSupports(kind, supports, Optional.of(beam),
                shell.map(s -> stresses(s, kind, beam)), List.of(), note(kind));
        return made.with(findings.of(made));
    }

    private HullSupports nothing(Kind kind, Finding why) {
        return new HullSupports(kind, List.of(), Optional.empty(), Optional.empty(), List.of(why), note(kind));
    }

    /** A stiff hull on even ground: the ground's push runs as a straight line under the centre of what it bears. */
    private HullSupports along(SeatLoad seat) {
        double width = Math.max(2 * seat.halfWidth(), Math.ulp(1.0));
        BeamLoad.Stretch push = BeamLoad.weight(borne.total(), hull.length(), borne.centre()).stretches().get(0);
        Support whole = support("the ground along its length", new Load(hull.length() / 2, borne.total(),
                Math.max(push.atFrom(), push.atTo()) / width), width, hull.length());
        HullSupports made = new HullSupports(Kind.ALONG, List.of(whole), Optional.empty(), Optional.empty(), List.of(),
                note(Kind.ALONG));
        return made.with(new SupportFindings(hull).of(made));
    }

    private List<Double> saddles() {
        double first = hull.seat().fromEnd(hull.length());
        int count = hull.seat().saddleCount();
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            places.add(first + (hull.length() - 2 * first) * i / (count - 1));
        }
        return places;
    }

    private Support saddle(int number, double along, double reaction) {
        double chord = 2 * hull.radius() * Math.sin(hull.seat().saddleContact() / 2);
        double width = hull.seat().saddleWidth();
        return support("saddle " + (number + 1), new Load(along, reaction, Math.max(0, reaction) / (chord * width)),
                width, chord);
    }

    private Support feet(double reaction) {
        double area = hull.pivot().footArea().orElse(Pivot.USUAL_FOOT_AREA);
        double side = Math.sqrt(area);
        return support(hull.pivot().kind() == Pivot.Kind.LEGS ? "two leading legs" : "two shoes", new Load(0, reaction,
                Math.max(0, reaction) / (2 * area)), side, side);
    }

    private Support nose(double along, double reaction) {
        if (!(reaction > 0)) {
            return support("nose", new Load(along, reaction, 0), 1, 1);
        }
        NoseLoad load = NoseLoad.on(reaction, hull.radius(), lean(), Settlement.LUNAR_STIFFNESS);
        double reach = Math.min(load.reach(), along);
        return support("nose", new Load(along, reaction, reaction / (load.width() * reach)), load.width(), reach);
    }

    /** What one support bears: its middle from the base plane (m), load (N) and pressure on the soil (Pa). */
    private record Load(double along, double reaction, double pressure) {
    }

    private Support support(String name, Load load, double one, double other) {
        Bearing.Footing footing = new Bearing.Footing(Math.min(one, other), Math.max(one, other), 0);
        ToDoubleFunction<Regolith> bears = ground -> Bearing.ultimate(footing, ground, gravity, 0).sum();
        return new Support(name, load.along, load.reaction, load.pressure, bears.applyAsDouble(soil),
                load.pressure > 0 ? Optional.of(SoilSensitivity.of(soil,
                        ground -> bears.applyAsDouble(ground) / load.pressure)) : Optional.empty());
    }

    private Stresses stresses(ThinShell thin, Kind kind, SupportedBeam beam) {
        Tube tube = new Tube(hull.diameter(), thin.thickness(), thin.yield(), thin.modulus());
        double modulus = tube.secondMoment() / hull.radius();
        Seat seat = hull.seat();
        double kept = kind == Kind.SADDLES ? SaddleShell.keptOverSaddle(seat.saddleContact()) : 1;
        double hardest = beam.reactions().stream().mapToDouble(r -> r).max().orElse(0);
        Optional<Double> horn = kind == Kind.SADDLES ? Optional.of(SaddleShell.hornStress(new SaddleShell.Saddle(
                Math.max(0, hardest), seat.saddleContact(), seat.saddleWidth(), seat.fromEnd(hull.length())), thin,
                hull.radius(), hull.length())) : Optional.empty();
        return new Stresses(beam.hogging() / (kept * modulus), beam.sagging() / modulus,
                ThinTube.capacity(tube) / tube.area(), hull.innerPressure() * hull.radius() / (2 * thin.thickness()),
                horn, thin.yield());
    }

    private ModelNote note(Kind kind) {
        double contact = Math.toDegrees(hull.seat().saddleContact());
        boolean outside = soil.strength().greatest().isBeyondDesign()
                || kind == Kind.SADDLES && (contact < SaddleShell.LEAST_CONTACT_DEG - 1e-9
                || contact > SaddleShell.GREATEST_CONTACT_DEG + 1e-9)
                || kind != Kind.ALONG && shell.filter(s -> hull.radius() / s.thickness() > THINNEST).isPresent();
        return new ModelNote("hull-supports", "A buried hull as a straight, even beam on rigid, level supports"
                + " (balance, and no deflection at a support); the soil straight over it row by row, its own weight"
                + " as a straight line about its centre, a triangle where that lies outside the middle third; shell"
                + " over saddles after Zick; a hull along the ground as a stiff body on even bedding; soil under feet,"
                + " saddles and hull by Vesic's bearing formula at the surface, plumb load",
                "supports that sink alike, soil that neither arches along the hull nor hangs on its flanks, saddles of"
                        + " 120 to 150 degrees, shells up to 1,500 wall thicknesses in radius, no rings or frames",
                "loads of two supports 10 %, of more supports by what they sink unevenly; stresses by a factor of 1.5;"
                        + " bearing by a factor of 3",
                outside ? ModelNote.Status.EXTRAPOLATED : ModelNote.Status.COMPUTED,
                "Macaulay (1919) for more than two supports; Zick (1951) and NASA SP-8007 (1968), from memory;"
                        + " Vesic (1973)");
    }
}
