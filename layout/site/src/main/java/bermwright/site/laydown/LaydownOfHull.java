// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.foundation.ModelNote;
import bermwright.lowering.rest.RestPose;
import bermwright.lowering.review.Review;
import bermwright.lowering.review.Reviews;
import bermwright.lowering.sequence.Lowered;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.thrust.LyingLanding;
import bermwright.lowering.thrust.ThrusterLowering;
import bermwright.lowering.thrust.ThrusterResult;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Works out how a hull of a plan comes to lie on its ground. */
public final class LaydownOfHull {
    private static final double USUAL_TOUCHDOWN = 1;
    private final Plan plan;
    private final Hull hull;
    private final ElevationGrid ground;
    private final boolean hasTrials;
    private final List<Finding> findings = new ArrayList<>();
    private final List<ModelNote> notes = new ArrayList<>();
    private Optional<LayPlane> plane = Optional.empty();
    private Optional<LoweringResult> lowering = Optional.empty();
    private Optional<Review> review = Optional.empty();
    private Optional<ThrusterResult> thrusters = Optional.empty();
    private Optional<LyingLanding> landing = Optional.empty();
    private Optional<RestPose> rest = Optional.empty();
    private Optional<LandingDisc> disc = Optional.empty();

    private LaydownOfHull(Plan plan, Hull hull, ElevationGrid ground, boolean hasTrials) {
        this.plan = plan;
        this.hull = hull;
        this.ground = ground;
        this.hasTrials = hasTrials;
    }

    /**
     * How one hull comes to lie.
     *
     * @param plan   the plan, for its ground and rules
     * @param hull   the hull
     * @param ground the ground as it is when it is laid down
     * @return the answer; bad arrangements are findings in it
     */
    public static Laydown of(Plan plan, Hull hull, ElevationGrid ground) {
        return worked(new LaydownOfHull(plan, hull, ground, true));
    }

    /**
     * How one hull comes to lie where it lands as planned; other landings inside its dispersion are not tried, which
     * takes a fraction of the time.
     *
     * @param plan   the plan, for its ground and rules
     * @param hull   the hull
     * @param ground the ground as it is when it is laid down
     * @return the answer without what other landings would find
     */
    public static Laydown asPlanned(Plan plan, Hull hull, ElevationGrid ground) {
        return worked(new LaydownOfHull(plan, hull, ground, false));
    }

    private static Laydown worked(LaydownOfHull work) {
        work.workOut();
        return new Laydown(work.hull.id(), work.plane, work.lowering, work.review, work.thrusters, work.landing,
                work.rest, work.disc, work.findings, work.notes);
    }

    private void workOut() {
        if (hull.arrival() == Hull.Arrival.STAYS_UPRIGHT || !usable()) {
            return;
        }
        Optional<LyingPose> pose = LyingPose.of(hull, ground);
        if (pose.isEmpty()) {
            find(Finding.of(LoweringRule.LOWERING_NO_GROUND, Level.REFUSE, Figures.NONE,
                    "There is no ground under the lying hull: off the grid or no data. Lowering is not worked out."));
            return;
        }
        plane = Optional.of(LayPlane.of(hull, pose.get().bed(), ground));
        try {
            resting();
            if (hull.arrival() == Hull.Arrival.LANDS_LYING) {
                landing(pose.get());
            } else {
                lowered(HullCase.of(plan, hull, pose.get(), ground));
            }
        } catch (IllegalArgumentException unusable) {
            find(Finding.of(LoweringRule.LOWERING_UNUSABLE, Level.REFUSE, Figures.NONE,
                    "Lowering is not worked out, for a size cannot be used: " + unusable.getMessage()));
        }
    }

    private void lowered(HullCase hullCase) {
        if (hull.lowering().isEmpty()) {
            find(Finding.of(LoweringRule.LOWERING_NO_GEAR, Level.REFUSE, Figures.NONE,
                    "The hull is to be lowered and no gear for it is given."));
            return;
        }
        LoweringGear gear = hull.lowering().get();
        boolean byLines = gear.means() == LoweringGear.Means.LINES;
        Optional<LoweringCase> lines = hullCase.byLines(plan, hull, ground);
        if (lines.isPresent()) {
            byLines(lines.get(), byLines);
        } else if (byLines) {
            find(Finding.of(LoweringRule.LOWERING_NO_LINES, Level.REFUSE, Figures.NONE,
                    "The hull is to be lowered by lines and none are given."));
        }
        thrusters = HullCase.thrusters(hull).map(t -> ThrusterLowering.of(hullCase.tipping(), t, gear.rate()));
        thrusters.ifPresent(t -> notes.add(t.note()));
        if (!byLines && thrusters.isEmpty()) {
            find(Finding.of(LoweringRule.LOWERING_NO_THRUSTERS, Level.REFUSE, Figures.NONE,
                    "The hull is to be lowered by side thrusters and none are given."));
        } else if (!byLines) {
            double alpha = hullCase.tipping().centreAngle();
            if (!(hullCase.tipping().balanceTilt() > 0)) {
                find(Finding.of(LoweringRule.LOWERING_FALLS_WHILE_STANDING, Level.REFUSE,
                        Figures.of(Math.toDegrees(hullCase.tipping().ground().slopeAlong()),
                                Math.toDegrees(alpha), "deg"),
                        "The ground falls so steeply along the azimuth that the hull falls while standing."));
            }
            LandingFindings.thrusters(thrusters.get(), plan.ground().pivotFriction()).forEach(this::find);
        }
    }

    private void byLines(LoweringCase lines, boolean chosen) {
        Lowered lowered = Lowering.of(lines);
        lowering = lowered.result();
        review = lowering.map(r -> Reviews.of(lines, r));
        lowering.ifPresent(r -> notes.addAll(r.notes()));
        review.ifPresent(r -> notes.addAll(r.notes()));
        if (chosen) {
            lowered.findings().forEach(this::find);
            double wander = hull.lowering().orElseThrow().wander();
            review.ifPresent(r -> new ReviewFindings(lines, lowering.get().chain(), r, wander).findings()
                    .forEach(this::find));
            backwardWindows();
            dispersion(lowered);
        }
    }

    private void backwardWindows() {
        hull.lowering().orElseThrow().temperature().light().stream().filter(w -> !(w.to() > w.from()))
                .forEach(w -> find(Finding.of(LoweringRule.LOWERING_LIGHT_BACKWARDS, Level.WARN,
                        Figures.of(w.to(), w.from(), "h"),
                        String.format(Locale.ROOT, "A window of %s on the lines begins after %.2f h and ends after"
                                + " %.2f h; it is left out.", w.shade().word(), w.from(), w.to()))));
    }

    /** Gear that stays where it is must do for every landing inside the dispersion. */
    private void dispersion(Lowered lowered) {
        double off = hull.landingDispersion();
        if (!(off > 0) || !hasTrials) {
            return;
        }
        LandingTrials trials = new LandingTrials(plan, hull, ground);
        disc = trials.disc();
        lowering.ifPresent(r -> disc.ifPresent(d -> trials.findings(d, r.chain()).forEach(this::find)));
        Set<String> known = new HashSet<>();
        lowered.findings().stream().filter(t -> t.level() == Level.REFUSE).forEach(t -> known.add(t.id()));
        for (double ahead : new double[] {off, -off}) {
            List<Finding> there = trials.landed(ahead, 0).map(c -> Lowering.of(c).findings()).orElse(List.of());
            for (Finding t : there) {
                if (t.level() == Level.REFUSE && known.add(t.id())) {
                    find(Finding.of(LoweringRule.LOWERING_DISPERSION, Level.REFUSE, t.figures(), String.format(
                            Locale.ROOT, "Landed %.1f m %s, inside its dispersion, with the gear where it is: %s", off,
                            ahead > 0 ? "ahead" : "behind", t.text())).with(t.id()).from(t.source()).todo(t.todo()));
                }
            }
        }
    }

    private void landing(LyingPose pose) {
        Optional<LoweringGear.Landing> given = hull.lowering().flatMap(LoweringGear::landing);
        double speed = given.map(l -> l.touchdownSpeed().orElse(USUAL_TOUCHDOWN)).orElse(USUAL_TOUCHDOWN);
        double pitch = Math.abs(given.map(l -> l.touchdownPitch().orElse(0)).orElse(0.0));
        LyingLanding touchdown = LyingLanding.of(new LyingLanding.Lander(hull.mass(), hull.length(),
                hull.centreOfMassFromBase()), plan.ground().gravity(), speed, pitch);
        landing = Optional.of(touchdown);
        notes.add(touchdown.note());
        LandingFindings.landing(plan, hull, pose, touchdown).forEach(this::find);
    }

    private void resting() {
        rest = LyingPose.rest(hull, ground, plan.ground().gravity());
        if (hull.seat().kind() == bermwright.site.plan.Seat.Kind.GROUND) {
            rest.ifPresent(r -> LandingFindings.rest(r, hull.length()).forEach(this::find));
        }
    }

    /** Refuses what no mechanics can be made of. */
    private boolean usable() {
        if (!(plan.ground().gravity() > 0)) {
            find(Finding.of(LoweringRule.LOWERING_NO_GRAVITY, Level.REFUSE,
                    Figures.of(plan.ground().gravity(), 0, "m/s2"),
                    "Without gravity nothing can be laid down."));
            return false;
        }
        double centre = hull.centreOfMassFromBase();
        if (!(centre > 0 && centre < hull.length())) {
            find(Finding.of(LoweringRule.LOWERING_CENTRE_OF_MASS_OUTSIDE, Level.REFUSE,
                    Figures.of(centre, hull.length(), "m"),
                    "The centre of mass is not between the ends of the hull."));
            return false;
        }
        return true;
    }

    private void find(Finding finding) {
        Finding about = finding.about(hull.id());
        findings.add(about.at(plane.map(p -> new FaultPlaces(hull, p).of(about)).orElse(hull.baseCentre())));
    }
}
