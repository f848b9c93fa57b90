// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.foundation.Point;
import bermwright.lowering.rest.RestPose;
import bermwright.lowering.thrust.LyingLanding;
import bermwright.lowering.thrust.ThrusterLowering;
import bermwright.lowering.thrust.ThrusterResult;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.pose.LyingPose;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words what is wrong with landings, thrusters and resting places. */
final class LandingFindings {
    /** Steepest ground a landing is made on (rad); a robotic mission's limit and a study, 7 degrees. */
    private static final double LANDING_SLOPE = Math.toRadians(7);
    private static final String LANDING_SOURCE = "landing-site studies: 7 deg";
    private static final String PRACTICE = "common practice, no source";
    /** Fastest that an end may come down (m/s). */
    private static final double CONTACT_SPEED = 1;

    private LandingFindings() {
    }

    static List<Finding> landing(Plan plan, Hull hull, LyingPose pose, LyingLanding landing) {
        List<Finding> findings = new ArrayList<>();
        double slope = pose.bed().slope();
        if (slope > LANDING_SLOPE) {
            findings.add(Finding.of(LoweringRule.LANDING_SLOPE, Level.REFUSE, deg(slope, LANDING_SLOPE),
                    text("The ground under the lying hull slopes %.1f deg, landings are made on up to 7 deg.",
                            Math.toDegrees(slope))));
        }
        Optional<LoweringGear.Landing> given = hull.lowering().flatMap(LoweringGear::landing);
        double pitch = Math.abs(given.map(l -> l.touchdownPitch().orElse(0)).orElse(0.0));
        if (pitch + Math.abs(pose.slopeAlong()) > LANDING_SLOPE) {
            findings.add(Finding.of(LoweringRule.LANDING_PITCH, Level.WARN,
                    deg(pitch + Math.abs(pose.slopeAlong()), LANDING_SLOPE),
                    text("Pitch and slope along together are %.1f deg: one end touches %.1f m before the other.",
                            Math.toDegrees(pitch + Math.abs(pose.slopeAlong())), landing.endRise())));
        }
        if (landing.slapSpeed() > CONTACT_SPEED) {
            findings.add(Finding.of(LoweringRule.LANDING_SLAP, Level.WARN,
                    Figures.of(landing.slapSpeed(), CONTACT_SPEED, "m/s"),
                    text("With its base down first the far end slaps down at %.1f m/s unless thrust holds it.",
                            landing.slapSpeed())));
        }
        if (given.isEmpty() || given.get().touchdownSpeed().isEmpty()) {
            findings.add(Finding.of(LoweringRule.LANDING_NOT_STATED, Level.WARN, Figures.NONE,
                    "Touchdown speed is not given; 1 m/s is taken."));
        }
        pad(plan, hull, given.flatMap(LoweringGear.Landing::pad), findings);
        return findings;
    }

    private static void pad(Plan plan, Hull hull, Optional<String> name, List<Finding> findings) {
        if (name.isEmpty()) {
            findings.add(Finding.of(LoweringRule.LANDING_NO_PAD, Level.WARN, Figures.NONE,
                    "The hull lands on its side and no pad is named for it."));
            return;
        }
        Optional<LandingPad> pad = plan.landingPads().stream().filter(p -> p.id().equals(name.get())).findFirst();
        if (pad.isEmpty()) {
            findings.add(Finding.of(LoweringRule.LANDING_NO_PAD, Level.REFUSE, Figures.NONE,
                    "The hull lands on pad " + name.get() + ", which the plan does not have."));
            return;
        }
        Point far = hull.baseCentre().moved(hull.layDownAzimuth(), hull.length(), 0);
        double reach = Math.max(pad.get().centre().distance(hull.baseCentre()), pad.get().centre().distance(far))
                + hull.radius() + hull.landingDispersion();
        if (reach > pad.get().radius()) {
            findings.add(Finding.of(LoweringRule.LANDING_BESIDE_PAD, Level.WARN,
                    Figures.of(reach, pad.get().radius(), "m"),
                    text("With its dispersion the lying hull reaches %.1f m from the middle of pad %s of %.1f m"
                            + " radius.", reach, name.get(), pad.get().radius())));
        }
    }

    static List<Finding> thrusters(ThrusterResult result, double friction) {
        List<Finding> findings = new ArrayList<>();
        double asked = 1 + ThrusterLowering.IN_HAND;
        if (result.thrustMargin() < asked) {
            findings.add(Finding.of(LoweringRule.THRUSTER_MARGIN,
                    result.thrustMargin() < 1 ? Level.REFUSE : Level.WARN,
                    Figures.of(result.thrustMargin(), asked, "1"),
                    text("Thrust is %.2f times the %.1f kN required at %.0f deg; %d of this size give a quarter in"
                            + " reserve.", result.thrustMargin(), result.greatestBrake() / 1000,
                            Math.toDegrees(result.atTilt()), result.leastCount())));
        }
        if (result.oneOutMargin() < 1) {
            findings.add(Finding.of(LoweringRule.THRUSTER_ONE_OUT, Level.WARN,
                    Figures.of(result.oneOutMargin(), 1, "1"),
                    text("With one thruster out and its counterpart shut off %.2f of the thrust needed is left.",
                            result.oneOutMargin())));
        }
        result.abortTilt().ifPresent(t -> findings.add(Finding.of(LoweringRule.THRUSTER_SIDE_OUT, Level.WARN,
                deg(t, Math.PI / 2),
                text("With all thrusters of one side lost the other side holds the hull up to %.1f deg only, and turns"
                        + " it about its axis; from there it comes down at up to %.1f m/s.", Math.toDegrees(t),
                        result.freeFallSpeed()))));
        if (Double.isInfinite(result.frictionNeeded())) {
            findings.add(Finding.of(LoweringRule.THRUSTER_LIFTS_BASE, Level.REFUSE, Figures.NONE,
                    "At some tilt the thrusters lift the base off the ground."));
        } else if (result.frictionNeeded() > friction) {
            findings.add(Finding.of(LoweringRule.THRUSTER_BASE_SLIDES, Level.REFUSE,
                    Figures.of(result.frictionNeeded(), friction, "1"),
                    text("Friction required at the base %.2f, the ground gives %.2f: it slides.",
                    result.frictionNeeded(), friction)));
        }
        double slowing = result.thrustMargin() * Math.max(result.greatestBrake(), result.greatestPush())
                / Math.max(result.profiled().greatestBrake(), result.profiled().greatestPush());
        if (result.touchdownSpeed() > CONTACT_SPEED && slowing < 1) {
            findings.add(Finding.of(LoweringRule.THRUSTER_CANNOT_SLOW, Level.WARN,
                    Figures.of(slowing, 1, "1"),
                    text("Slowing to %.2f m/s at contact requires %.1f kN; %.2f of it is there.",
                            result.profiled().contactSpeed(), result.profiled().greatestBrake() / 1000, slowing)));
        }
        if (result.touchdownSpeed() > CONTACT_SPEED) {
            findings.add(Finding.of(LoweringRule.LOWERING_CONTACT_SPEED, Level.WARN,
                    Figures.of(result.touchdownSpeed(), CONTACT_SPEED, "m/s"),
                    text("At the set rate the far end comes down at %.2f m/s.",
                            result.touchdownSpeed())));
        }
        return findings;
    }

    static List<Finding> rest(RestPose rest, double length) {
        List<Finding> findings = new ArrayList<>();
        double across = Math.abs(rest.crossSlope());
        if (rest.roll() != RestPose.Roll.STAYS) {
            boolean rolls = rest.roll() == RestPose.Roll.ROLLS;
            findings.add(Finding.of(LoweringRule.REST_ROLLS_AWAY, Level.WARN,
                    deg(across, rolls ? rest.rollsSurely() : rest.staysSurely()),
                    text("The ground falls %.1f deg across: the lying hull %s away unless it is chocked or lies in a"
                            + " trough; it stays of itself up to %.1f deg.", Math.toDegrees(across),
                            rolls ? "rolls" : "may roll", Math.toDegrees(rest.staysSurely()))));
        }
        double least = 0.1 * length;
        if (rest.rockMargin() < least) {
            findings.add(Finding.of(LoweringRule.REST_ROCKS, Level.WARN,
                    Figures.of(rest.rockMargin(), least, "m"),
                    text("The centre of mass lies %.1f m from the nearer of the two places the hull rests on: it may"
                            + " rock.", rest.rockMargin())));
        }
        if (rest.baseGap() > 0.1) {
            findings.add(Finding.of(LoweringRule.REST_BASE_LIFTED, Level.WARN,
                    Figures.of(rest.baseGap(), 0.1, "m"),
                    text("The ground lifts the base %.2f m off its pivot as the hull comes to rest, and the hull then"
                            + " turns about the first high spot.", rest.baseGap())));
        }
        return findings;
    }

    private static Figures deg(double measured, double limit) {
        return Figures.of(Math.toDegrees(measured), Math.toDegrees(limit), "deg");
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
