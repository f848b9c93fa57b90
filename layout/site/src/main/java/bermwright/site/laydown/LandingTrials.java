// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.Verdict;
import bermwright.foundation.Point;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.chain.Chain;
import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.chain.LoadCase;
import bermwright.lowering.chain.Part;
import bermwright.lowering.review.Misalignment;
import bermwright.lowering.review.CrossSlope;
import bermwright.lowering.review.CrossState;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.statics.LoweringCase;
import bermwright.site.laydown.LandingDisc.Pull;
import bermwright.site.laydown.LandingDisc.Spot;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Tries landings all over the dispersion: a ring at its edge and one half way in, each on its own ground with the gear
 * where it is, with the hull swung to either side and its centre of mass shifted to either end.
 */
final class LandingTrials {
    private static final int AT_EDGE = 12;
    private static final int HALF_WAY = 6;
    private static final String SOURCE = "landing dispersion and wander of the plan; balance in space";
    private static final Comparator<Pull> BY_TENSION = Comparator.comparingDouble(Pull::tension);
    private static final Set<Part> LINE_PARTS = EnumSet.of(Part.LOWERING_LINE, Part.WINCH, Part.WINCH_ANCHOR);
    private final Plan plan;
    private final Hull hull;
    private final ElevationGrid ground;
    private final double swing;
    private final double centre;

    LandingTrials(Plan plan, Hull hull, ElevationGrid ground) {
        this.plan = plan;
        this.hull = hull;
        this.ground = ground;
        this.swing = hull.lowering().orElseThrow().wander();
        this.centre = Math.min(2 * hull.centreOfMassSpread(), 0.9 * Math.min(hull.centreOfMassFromBase(),
                hull.length() - hull.centreOfMassFromBase()));
    }

    /** Every landing that could be worked out; absent without dispersion, or where the planned one cannot. */
    Optional<LandingDisc> disc() {
        double radius = hull.landingDispersion();
        Optional<Spot> planned = radius > 0 ? spot(0, 0) : Optional.empty();
        if (planned.isEmpty()) {
            return Optional.empty();
        }
        List<Spot> spots = new ArrayList<>(List.of(planned.get()));
        ring(radius, AT_EDGE, spots);
        ring(radius / 2, HALF_WAY, spots);
        return Optional.of(new LandingDisc(radius, swing, centre, spots));
    }

    private void ring(double radius, int count, List<Spot> spots) {
        for (int i = 0; i < count; i++) {
            double way = 2 * Math.PI * i / count;
            spot(radius * Math.cos(way), radius * Math.sin(way)).ifPresent(spots::add);
        }
    }

    /** The lowering of a hull that landed off its place, the gear standing where it was set out. */
    Optional<LoweringCase> landed(double ahead, double left) {
        Point place = ground.metres().moved(hull.baseCentre(), hull.layDownAzimuth(), ahead, left);
        Hull there = hull.withBaseCentre(place);
        return LyingPose.of(there, ground).flatMap(pose -> HullCase.of(plan, there, pose, ground)
                .byLines(plan, there, ground, new GearFromPlan.Landed(ahead, left)));
    }

    private Optional<Spot> spot(double ahead, double left) {
        return landed(ahead, left).flatMap(setup -> spot(setup, ahead, left));
    }

    private Optional<Spot> spot(LoweringCase setup, double ahead, double left) {
        List<Pull> stated = new ArrayList<>();
        List<Pull> all = new ArrayList<>();
        List<CrossState> inPlane = List.of();
        boolean lifts = false;
        for (double shift : centre > 0 ? new double[] {0, -centre, centre} : new double[] {0}) {
            LoweringCase body = setup.with(setup.tipping().with(shifted(setup.tipping().body(), shift)));
            for (double turned : swing > 0 ? new double[] {0, -swing, swing} : new double[] {0}) {
                List<CrossState> states = CrossSlope.misaligned(body, new Misalignment(left, turned));
                inPlane = shift == 0 && turned == 0 ? states.stream().filter(CrossState::lowering).toList() : inPlane;
                lifts |= setup.tipping().pivot().halfWidth() > 0 && states.stream().anyMatch(s ->
                        !(Math.min(s.pivot().upperShoe(), s.pivot().lowerShoe()) > 0));
                Optional<Pull> hardest = states.stream().filter(CrossState::lowering)
                        .map(s -> new Pull(s.hardest(), s.tilt(), turned, shift)).max(BY_TENSION);
                hardest.ifPresent(all::add);
                hardest.filter(p -> shift == 0).ifPresent(stated::add);
            }
        }
        if (stated.isEmpty()) {
            return Optional.empty();
        }
        double turnAt = inPlane.stream().map(CrossState::tilt)
                .min(Comparator.comparingDouble(t -> level(setup, t))).orElse(0.0);
        double side = inPlane.stream().mapToDouble(CrossState::linesAcross).max().orElse(0);
        return Optional.of(new Spot(ahead, left, stated.stream().min(BY_TENSION).orElseThrow(),
                all.stream().max(BY_TENSION).orElseThrow(), Math.atan2(Math.abs(left), level(setup, turnAt)), turnAt,
                side, lifts));
    }

    private static Body shifted(Body body, double shift) {
        MassCentre c = body.centre();
        return body.withCentre(new MassCentre(c.along() + shift, c.offAxis(), c.spread()));
    }

    /** Level length of the lines in the plane, from lug to pole head or winch (m). */
    private static double level(LoweringCase setup, double tilt) {
        PlanePoint lug = setup.tipping().point(setup.rig().lines().lug().along(), setup.rig().lines().lug().offAxis(),
                tilt);
        PlanePoint lead = setup.rig().poles().map(Poles::head).orElse(setup.rig().lines().winch().at());
        return Math.abs(lug.x() - lead.x());
    }

    /** What a disc of landings finds, beside the parts as they hold for the planned one. */
    List<Finding> findings(LandingDisc disc, Chain planned) {
        List<Finding> findings = new ArrayList<>();
        for (ChainRow row : planned.rows()) {
            if (row.load() == LoadCase.HELD && row.verdict() == Verdict.MET && LINE_PARTS.contains(row.part())) {
                weak(disc, row).ifPresent(findings::add);
            }
        }
        Optional<Spot> lifted = disc.spots().stream().filter(Spot::lifts).findFirst();
        if (lifted.isPresent() && !disc.spots().get(0).lifts()) {
            findings.add(Finding.of(LoweringRule.LOWERING_DISPERSION_SHOE, Level.WARN,
                    Figures.of(0, 0, "kN"), text("Landed %s, with the gear where it is and a swing of"
                            + " %.1f deg, a shoe or foot lifts off.", lifted.get().where(), Math.toDegrees(swing))));
        }
        sideways(disc).ifPresent(findings::add);
        return findings;
    }

    /** A part that holds at the planned landing and not at another: refused where no allowed swing helps. */
    private Optional<Finding> weak(LandingDisc disc, ChainRow check) {
        double capacity = check.capacity().orElseThrow();
        boolean always = capacity < check.required() * disc.easedWorst().eased().tension();
        Spot spot = always ? disc.easedWorst() : disc.worst();
        Pull pull = always ? spot.eased() : spot.worst();
        double factor = capacity / pull.tension();
        if (!(factor < check.required())) {
            return Optional.empty();
        }
        String swung = pull.swing() == 0 ? "" : text(", swung %.1f deg to the %s", Math.abs(Math.toDegrees(
                pull.swing())), pull.swing() > 0 ? "left" : "right");
        String shifted = pull.centre() == 0 ? "" : text(", its centre of mass %.2f m nearer the %s",
                Math.abs(pull.centre()), pull.centre() > 0 ? "far end" : "base");
        return Optional.of(Finding.of(LoweringRule.LOWERING_DISPERSION, always ? Level.REFUSE : Level.WARN,
                Figures.of(factor, check.required(), "1"),
                text("Landed %s, inside its dispersion, with the gear where it is%s%s, demand on one line %.1f kN"
                        + " at %.0f deg: factor of safety %.2f of the %s, %.2f required.", spot.where(), swung, shifted,
                        pull.tension() / 1000, Math.toDegrees(pull.tilt()), factor, check.part().words(),
                        check.required())));
    }

    private Optional<Finding> sideways(LandingDisc disc) {
        Spot most = disc.mostTurned();
        double side = disc.spots().stream().mapToDouble(Spot::side).max().orElse(0);
        boolean turns = most.turn() > swing;
        if (!turns && side < 0.01 * hull.mass() * plan.ground().gravity()) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(LoweringRule.LOWERING_DISPERSION_SIDEWAYS, turns ? Level.WARN : Level.NOTE,
                Figures.of(Math.toDegrees(most.turn()), Math.toDegrees(swing), "deg"),
                text("Landed %s, the worst of %d landings tried inside its dispersion, with the gear where it is, the"
                        + " lines lead %.1f deg out of the plane at %.0f deg; of all landings they pull the hull"
                        + " sideways with up to %.1f kN. The plan allows a swing of %.1f deg.", most.where(),
                        disc.spots().size(),
                        Math.toDegrees(most.turn()), Math.toDegrees(most.turnAt()), side / 1000,
                        Math.toDegrees(swing))));
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
