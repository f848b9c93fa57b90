// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.foundation.ModelNote;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.FreeSurface;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.TiltState;
import bermwright.numeric.Bracket;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What liquid does that stays level while the tank tips: a bound, for the plan states how much there is and not in
 * which tank.
 *
 * <p>The tank is taken as the hull's own cylinder from the base plane over its whole length, without baffles; the
 * stated centre of mass as that of the hull standing plumb. The lines carry something between the liquid held where it
 * was and this.
 *
 * @param mass    mass of the liquid (kg), positive
 * @param balance balance tilt with the liquid free (rad)
 * @param states  what it does by tilt, while the lowering lines hold; lighter or heavier liquid, whichever asks more
 */
public record LiquidReview(double mass, double balance, List<State> states) {
    /** Lightest and heaviest liquid taken (kg/m3): a hydrogen and oxygen mixture, liquid oxygen; from memory. */
    static final double[] DENSITIES = {360, 1140};
    private static final double CLOSE = 1e-9;

    /** Copies the list. */
    public LiquidReview {
        states = List.copyOf(states);
    }

    /**
     * What the liquid does at one tilt.
     *
     * @param tilt  tilt (rad)
     * @param along how far it moves the hull's centre of mass towards the far end (m)
     * @param off   how far it moves it to the lay-down side (m)
     * @param held  tension of one lowering line with the liquid held where it was (N)
     * @param free  tension with the liquid free (N)
     */
    public record State(double tilt, double along, double off, double held, double free) {
    }

    /** The review; absent without liquid, or where it would fill more than the hull. */
    static Optional<LiquidReview> of(LoweringCase setup, LoweringResult result) {
        Body body = setup.tipping().body();
        double volume = Math.PI * body.outline().radius() * body.outline().radius() * body.outline().length();
        if (!(body.residualPropellant() > 0) || !(body.residualPropellant() < DENSITIES[0] * volume)) {
            return Optional.empty();
        }
        List<State> states = new ArrayList<>();
        for (TiltState s : result.tilts()) {
            boolean rest = s.tilt() >= setup.tipping().restTilt() - CLOSE;
            if (s.lineTotal() > 0 && s.tilt() >= result.handOverTilt() && (Reviews.onStep(s.tilt()) || rest)) {
                states.add(worst(setup, s));
            }
        }
        return Optional.of(new LiquidReview(body.residualPropellant(), balance(setup), states));
    }

    private static State worst(LoweringCase setup, TiltState s) {
        return Arrays.stream(DENSITIES).mapToObj(density -> at(setup.tipping(), s, density))
                .max(Comparator.comparingDouble(State::free)).orElseThrow();
    }

    private static State at(TippingBody tipping, TiltState s, double density) {
        MassCentre moved = moved(tipping, density, s.tilt());
        double moment = tipping.with(tipping.body().withCentre(moved)).tippingMoment(s.tilt());
        MassCentre stated = tipping.body().centre();
        return new State(s.tilt(), moved.along() - stated.along(), moved.offAxis() - stated.offAxis(), s.lineEach(),
                s.lineEach() * Math.max(0, moment) / tipping.tippingMoment(s.tilt()));
    }

    /** The first tilt at which the hull with free liquid stands over its pivot. */
    private static double balance(LoweringCase setup) {
        double first = setup.tipping().balanceTilt();
        for (double density : DENSITIES) {
            TippingBody tipping = setup.tipping();
            Bracket over = Bracket.narrowed(0, tipping.balanceTilt(), CLOSE, tilt ->
                    !(tipping.with(tipping.body().withCentre(moved(tipping, density, tilt))).tippingMoment(tilt) > 0));
            first = Math.min(first, over.high());
        }
        return first;
    }

    private static MassCentre moved(TippingBody tipping, double density, double tilt) {
        Body body = tipping.body();
        FreeSurface liquid = new FreeSurface(body.outline().radius(), body.outline().length(),
                body.residualPropellant() / density);
        double plumb = tilt + tipping.ground().slopeAlong();
        FreeSurface.Centre now = liquid.centre(Math.max(0, plumb));
        double share = body.residualPropellant() / body.mass();
        MassCentre c = body.centre();
        return new MassCentre(c.along() + share * (now.along() - liquid.depthStanding() / 2),
                c.offAxis() + share * now.off(), c.spread());
    }

    /**
     * The tilt at which the free liquid asks most of a line.
     *
     * @return the state; absent where the lowering lines hold at no listed tilt
     */
    public Optional<State> worst() {
        return states.stream().max(Comparator.comparingDouble(State::free));
    }

    static ModelNote note() {
        return new ModelNote("lowering-liquid", "liquid at rest with a level surface, its centre by sections at every"
                + " tilt",
                "the tank taken as the hull's own cylinder over its whole length, without baffles, density 360 to 1,140"
                + " kg/m3; centre of mass stated for the hull standing plumb; slow tilting",
                "a bound: the true tension lies between liquid held and liquid free; waves come on top, see the band of"
                + " hand-over", ModelNote.Status.COMPUTED, "hydrostatics, closed form; densities from memory");
    }
}
