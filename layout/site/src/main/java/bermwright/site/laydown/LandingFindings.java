// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.foundation.Point;
import bermwright.lowering.rest.RestPose;
import bermwright.lowering.sequence.Trouble;
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

    static List<Trouble> landing(Plan plan, Hull hull, LyingPose pose, LyingLanding landing) {
        List<Trouble> troubles = new ArrayList<>();
        double slope = pose.bed().slope();
        if (slope > LANDING_SLOPE) {
            troubles.add(Trouble.of("landing-slope", Trouble.Level.REFUSE, deg(slope, LANDING_SLOPE), LANDING_SOURCE,
                    text("The ground under the lying hull slopes %.1f deg, landings are made on up to 7 deg.",
                            Math.toDegrees(slope))));
        }
        Optional<LoweringGear.Landing> given = hull.lowering().flatMap(LoweringGear::landing);
        double pitch = Math.abs(given.map(l -> l.touchdownPitch().orElse(0)).orElse(0.0));
        if (pitch + Math.abs(pose.slopeAlong()) > LANDING_SLOPE) {
            troubles.add(Trouble.of("landing-pitch", Trouble.Level.WARN,
                    deg(pitch + Math.abs(pose.slopeAlong()), LANDING_SLOPE), LANDING_SOURCE,
                    text("Pitch and slope along together are %.1f deg: one end touches %.1f m before the other.",
                            Math.toDegrees(pitch + Math.abs(pose.slopeAlong())), landing.endRise())));
        }
        if (landing.slapSpeed() > CONTACT_SPEED) {
            troubles.add(Trouble.of("landing-slap", Trouble.Level.WARN,
                    new Trouble.Figures(landing.slapSpeed(), CONTACT_SPEED, "m/s"), PRACTICE,
                    text("With its base down first the far end slaps down at %.1f m/s unless thrust holds it.",
                            landing.slapSpeed())));
        }
        if (given.isEmpty() || given.get().touchdownSpeed().isEmpty()) {
            troubles.add(Trouble.plain("landing-not-stated", Trouble.Level.WARN,
                    "Touchdown speed is not given; 1 m/s is taken."));
        }
        pad(plan, hull, given.flatMap(LoweringGear.Landing::pad), troubles);
        return troubles;
    }

    private static void pad(Plan plan, Hull hull, Optional<String> name, List<Trouble> troubles) {
        if (name.isEmpty()) {
            troubles.add(Trouble.plain("landing-no-pad", Trouble.Level.WARN,
                    "The hull lands on its side and no pad is named for it."));
            return;
        }
        Optional<LandingPad> pad = plan.landingPads().stream().filter(p -> p.id().equals(name.get())).findFirst();
        if (pad.isEmpty()) {
            troubles.add(Trouble.plain("landing-no-pad", Trouble.Level.REFUSE,
                    "The hull lands on pad " + name.get() + ", which the plan does not have."));
            return;
        }
        Point far = hull.baseCentre().moved(hull.layDownAzimuth(), hull.length(), 0);
        double reach = Math.max(pad.get().centre().distance(hull.baseCentre()), pad.get().centre().distance(far))
                + hull.radius() + hull.landingDispersion();
        if (reach > pad.get().radius()) {
            troubles.add(Trouble.of("landing-beside-pad", Trouble.Level.WARN,
                    new Trouble.Figures(reach, pad.get().radius(), "m"), "size of the pad",
                    text("With its dispersion the lying hull reaches %.1f m from the middle of pad %s of %.1f m"
                            + " radius.", reach, name.get(), pad.get().radius())));
        }
    }

    static List<Trouble> thrusters(ThrusterResult result, double friction) {
        List<Trouble> troubles = new ArrayList<>();
        double asked = 1 + ThrusterLowering.IN_HAND;
        if (result.thrustMargin() < asked) {
            troubles.add(Trouble.of("thruster-margin",
                    result.thrustMargin() < 1 ? Trouble.Level.REFUSE : Trouble.Level.WARN,
                    new Trouble.Figures(result.thrustMargin(), asked, "1"), PRACTICE,
                    text("The thrusters bring %.2f times the %.1f kN needed at %.0f deg; at least %d of this size give"
                            + " a quarter in hand.", result.thrustMargin(), result.greatestBrake() / 1000,
                            Math.toDegrees(result.atTilt()), result.leastCount())));
        }
        if (result.oneOutMargin() < 1) {
            troubles.add(Trouble.of("thruster-one-out", Trouble.Level.WARN,
                    new Trouble.Figures(result.oneOutMargin(), 1, "1"), PRACTICE,
                    text("With one thruster out and its counterpart shut off %.2f of the thrust needed is left.",
                            result.oneOutMargin())));
        }
        result.abortTilt().ifPresent(t -> troubles.add(Trouble.of("thruster-side-out", Trouble.Level.WARN,
                deg(t, Math.PI / 2), PRACTICE,
                text("With all thrusters of one side lost the other side holds the hull up to %.1f deg only, and turns"
                        + " it about its axis; from there it comes down at up to %.1f m/s.", Math.toDegrees(t),
                        result.freeFallSpeed()))));
        if (Double.isInfinite(result.frictionNeeded())) {
            troubles.add(Trouble.plain("thruster-lifts-base", Trouble.Level.REFUSE,
                    "At some tilt the thrusters lift the base off the ground. Set them higher on the hull."));
        } else if (result.frictionNeeded() > friction) {
            troubles.add(Trouble.of("thruster-base-slides", Trouble.Level.REFUSE,
                    new Trouble.Figures(result.frictionNeeded(), friction, "1"), "friction of the plan's ground",
                    text("The base needs a friction of %.2f and the ground gives %.2f: it slides. Set the thrusters"
                            + " higher or hold the pivot.", result.frictionNeeded(), friction)));
        }
        double slowing = result.thrustMargin() * Math.max(result.greatestBrake(), result.greatestPush())
                / Math.max(result.profiled().greatestBrake(), result.profiled().greatestPush());
        if (result.touchdownSpeed() > CONTACT_SPEED && slowing < 1) {
            troubles.add(Trouble.of("thruster-cannot-slow", Trouble.Level.WARN,
                    new Trouble.Figures(slowing, 1, "1"), PRACTICE,
                    text("Slowing to %.2f m/s at contact asks for %.1f kN, %.2f of it is there.",
                            result.profiled().contactSpeed(), result.profiled().greatestBrake() / 1000, slowing)));
        }
        if (result.touchdownSpeed() > CONTACT_SPEED) {
            troubles.add(Trouble.of("lowering-contact-speed", Trouble.Level.WARN,
                    new Trouble.Figures(result.touchdownSpeed(), CONTACT_SPEED, "m/s"), PRACTICE,
                    text("At the set rate the far end comes down at %.2f m/s; slow down before contact.",
                            result.touchdownSpeed())));
        }
        return troubles;
    }

    static List<Trouble> rest(RestPose rest, double length) {
        List<Trouble> troubles = new ArrayList<>();
        double across = Math.abs(rest.crossSlope());
        if (rest.roll() != RestPose.Roll.STAYS) {
            boolean rolls = rest.roll() == RestPose.Roll.ROLLS;
            troubles.add(Trouble.of("rest-rolls-away", Trouble.Level.WARN,
                    deg(across, rolls ? rest.rollsSurely() : rest.staysSurely()),
                    "rigid cylinder on a bed of springs, Bekker's stiffness from memory",
                    text("The ground falls %.1f deg across: the lying hull %s away unless it is chocked or lies in a"
                            + " trough; it stays of itself up to %.1f deg.", Math.toDegrees(across),
                            rolls ? "rolls" : "may roll", Math.toDegrees(rest.staysSurely()))));
        }
        double least = 0.1 * length;
        if (rest.rockMargin() < least) {
            troubles.add(Trouble.of("rest-rocks", Trouble.Level.WARN,
                    new Trouble.Figures(rest.rockMargin(), least, "m"), PRACTICE,
                    text("The centre of mass lies %.1f m from the nearer of the two places the hull rests on: it may"
                            + " rock.", rest.rockMargin())));
        }
        if (rest.baseGap() > 0.1) {
            troubles.add(Trouble.of("rest-base-lifted", Trouble.Level.WARN,
                    new Trouble.Figures(rest.baseGap(), 0.1, "m"), PRACTICE,
                    text("The ground lifts the base %.2f m off its pivot as the hull comes to rest, and the hull then"
                            + " turns about the first high spot.", rest.baseGap())));
        }
        return troubles;
    }

    private static Trouble.Figures deg(double measured, double limit) {
        return new Trouble.Figures(Math.toDegrees(measured), Math.toDegrees(limit), "deg");
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
