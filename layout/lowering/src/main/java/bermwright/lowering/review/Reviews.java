// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.foundation.ModelNote;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.chain.PivotEdge;
import bermwright.lowering.motion.HeldBody;
import bermwright.lowering.motion.Shock;
import bermwright.lowering.motion.Topple;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.TiltState;
import bermwright.lowering.strength.HullBeam;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reviews a lowering that was worked out. */
public final class Reviews {
    /** Slack that is looked at wherever lines may hang slack (m). */
    static final double SLACK = 0.1;
    private static final double CHANGE_TIME = 2;
    private static final double STEP = Math.toRadians(5);

    private Reviews() {
    }

    /**
     * Reviews a lowering.
     *
     * @param setup   the case
     * @param result what came of working it out
     * @return the review
     */
    public static Review of(LoweringCase setup, LoweringResult result) {
        Optional<LiquidReview> liquid = LiquidReview.of(setup, result);
        List<ModelNote> notes = new ArrayList<>(notes(setup.soil().strength().greatest().isBeyondDesign()));
        liquid.ifPresent(l -> notes.add(LiquidReview.note()));
        return new Review(new LinesInSpace(setup, result).review(), PivotEdge.states(setup,
                result.tilts().stream().filter(s -> onStep(s.tilt())).toList()),
                motion(setup, result), CrossSlope.of(setup, result), liquid, beam(setup),
                new SingleFailures(setup, result).all(), notes);
    }

    private static Optional<HullBeam> beam(LoweringCase setup) {
        Body body = setup.tipping().body();
        double length = body.outline().length();
        double lug = setup.rig().lines().lug().along();
        if (lug > length || !HullBeam.Load.fits(length, body.centre().along())) {
            return Optional.empty();
        }
        return Optional.of(HullBeam.of(new HullBeam.Load(setup.tipping().weight(), length, body.centre().along()),
                lug));
    }

    /**
     * The body on all its lowering lines as one spring.
     *
     * @param setup the case
     * @return the body on its lines; absent where the lines have no stiffness given
     */
    static Optional<HeldBody> held(LoweringCase setup) {
        return setup.held();
    }

    private static MotionReview motion(LoweringCase setup, LoweringResult result) {
        TippingBody tipping = setup.tipping();
        double rest = tipping.restTilt();
        double balance = Math.max(0, result.balanceTilt());
        double far = Topple.farRadius(tipping);
        double inertia = tipping.inertiaAboutPivot();
        double heat = tipping.weight() * tipping.fall(balance, rest);
        double free = Topple.rate(tipping, balance, 0, rest);
        double duration = rest / setup.rate();
        return new MotionReview(states(setup, result), duration, heat, heat / ((rest - balance) / setup.rate()),
                setup.rate() * far, inertia * setup.rate() * setup.rate() / 2, free, free * far,
                inertia * free * free / 2, Topple.time(tipping, tipping.balanceTilt() + Math.toRadians(1), rest),
                runOn(setup, result));
    }

    private static double runOn(LoweringCase setup, LoweringResult result) {
        Optional<HeldBody> held = held(setup);
        double tilt = result.handOverTilt();
        if (held.isEmpty() || !snatches(held.get(), tilt)) {
            return 0;
        }
        return Shock.slack(held.get(), tilt, setup.rate(), SLACK).takeUpRate();
    }

    private static List<MotionState> states(LoweringCase setup, LoweringResult result) {
        List<MotionState> states = new ArrayList<>();
        TippingBody tipping = setup.tipping();
        double far = Topple.farRadius(tipping);
        for (TiltState s : result.tilts()) {
            if (s.tilt() < result.handOverTilt() || !onStep(s.tilt()) || !(s.lineTotal() > 0)) {
                continue;
            }
            double rate = Topple.rate(tipping, s.tilt(), setup.rate(), tipping.restTilt());
            double each = s.lineEach() / s.lineTotal();
            double change = inertiaOver(setup, s) * setup.rate() / CHANGE_TIME * each;
            Optional<HeldBody> held = held(setup);
            double stop = held.map(h -> Shock.emergencyStop(h, s.tilt(), setup.rate()).factor()).orElse(0.0);
            double snatch = held.filter(h -> snatches(h, s.tilt()))
                    .map(h -> Shock.slack(h, s.tilt(), 0, SLACK).energy() * each).orElse(0.0);
            states.add(new MotionState(s.tilt(), stop, stop * s.lineEach(), change, snatch, rate, rate * far,
                    tipping.inertiaAboutPivot() * rate * rate / 2));
        }
        return states;
    }

    private static double inertiaOver(LoweringCase setup, TiltState state) {
        return setup.tipping().inertiaAboutPivot() / state.lever();
    }

    private static boolean snatches(HeldBody held, double tilt) {
        double rest = held.tipping().restTilt();
        return tilt > held.tipping().balanceTilt() && held.length(rest) > held.length(tilt) + SLACK
                && held.lever(tilt) > 0;
    }

    static boolean onStep(double tilt) {
        return Math.abs(tilt / STEP - Math.rint(tilt / STEP)) < 1e-6;
    }

    private static List<ModelNote> notes(boolean beyond) {
        return List.of(
                new ModelNote("lowering-shock", "one mass on a spring and energy, with the lines' true geometry",
                        "rigid body, springs without damping, winch and anchors that do not give",
                        "an upper bound; damping and give take a fifth to a half off", ModelNote.Status.COMPUTED,
                        "mechanics, closed form"),
                new ModelNote("lowering-topple", "free fall about the pivot from any tilt, by energy",
                        "rigid body on a pivot that does not slide; past about 55 degrees it does",
                        "some percent once the base slides", ModelNote.Status.COMPUTED, "mechanics, closed form"),
                new ModelNote("cross-slope", "balance in space on sloping ground: weight with its part across, unequal"
                        + " lines, two shoes or a point; on a rim also where it comes to rest by itself",
                        "rigid hull, straight lines paid out alike, a pivot that does not sink; a rim that rolls"
                        + " without sliding",
                        "forces as good as mass and slope; a sunk rim sways less than worked out; the weight in the"
                        + " plane is up to 1/cos of the slope too great", ModelNote.Status.COMPUTED,
                        "statics in space, closed form"),
                new ModelNote("hull-beam", "a beam on base and lugs under weight spread as a straight line",
                        "nearly lying, held still, centre of mass in the middle third; a bare round shell",
                        "concentrated masses can double it; a stop at the set rate multiplies it like the line's load",
                        ModelNote.Status.COMPUTED, "beam statics, closed form"),
                new ModelNote("pivot-edge", "the corner of a cylinder on a bed of springs; bearing by Vesic",
                        "sinkage small against the radius, dry soil",
                        "what the soil is taken for spreads bearing by ten and sinkage by three", beyond
                                ? ModelNote.Status.EXTRAPOLATED : ModelNote.Status.COMPUTED,
                        "Bekker's stiffness, from memory; Vesic (1973)"));
    }
}
