// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.HandOver;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.Statics;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a cross slope does to a lowering: the balance in space at every listed tilt.
 *
 * @param sideForce  weight across the plane (N)
 * @param overstated how much too great the weight square to the ground is taken in the plane, 1 / cos of the slope
 *                   less 1 (1)
 * @param states     the balance by tilt, at least one
 */
public record CrossSlope(double sideForce, double overstated, List<CrossState> states) {
    private static final int ASIDE_STEP_DEG = 15;

    /** Copies the list. */
    public CrossSlope {
        states = List.copyOf(states);
    }

    /**
     * The balance of a lowering on its cross slope.
     *
     * @param setup   the case
     * @param result what came of working it out
     * @return the balance; absent where nothing could be balanced at any tilt
     */
    static Optional<CrossSlope> of(LoweringCase setup, LoweringResult result) {
        CrossBalance balance = new CrossBalance(setup);
        List<CrossState> states = result.tilts().stream()
                .filter(s -> s.lineTotal() <= 0 || s.tilt() >= result.handOverTilt())
                .map(balance::at).flatMap(Optional::stream).toList();
        if (states.isEmpty()) {
            return Optional.empty();
        }
        double across = setup.tipping().ground().slopeAcross();
        return Optional.of(new CrossSlope(setup.tipping().weight() * Math.abs(setup.tipping().ground().fall().y()),
                1 / Math.cos(across) - 1, states));
    }

    /**
     * The balance of a hull that stands aside of its gear: standing, at hand-over, every fifteenth degree and lying.
     *
     * @param setup  the case, its gear given along the lay-down plane the hull now stands in
     * @param misalignment how far the hull stands aside, and how far it has swung
     * @return the balance by tilt; tilts at which nothing holds are left out
     */
    public static List<CrossState> misaligned(LoweringCase setup, Misalignment misalignment) {
        Statics statics = new Statics(setup.tipping(), setup.rig());
        CrossBalance balance = new CrossBalance(setup, misalignment);
        double handOver = HandOver.of(setup.tipping()).to();
        double rest = setup.tipping().restTilt();
        List<Double> tilts = new ArrayList<>(List.of(0.0));
        if (handOver < rest) {
            tilts.add(handOver);
        }
        for (int deg = ASIDE_STEP_DEG; deg < Math.toDegrees(rest); deg += ASIDE_STEP_DEG) {
            if (Math.toRadians(deg) > handOver) {
                tilts.add(Math.toRadians(deg));
            }
        }
        tilts.add(rest);
        return tilts.stream().map(statics::at).flatMap(Optional::stream).map(balance::at).flatMap(Optional::stream)
                .toList();
    }

    /**
     * The tilt that asks most of a lowering line.
     *
     * @return the state; absent where the lowering lines hold at no tilt
     */
    public Optional<CrossState> hardest() {
        return lowering(Comparator.comparingDouble(CrossState::hardest));
    }

    /**
     * The tilt with the greatest difference between the outermost lines.
     *
     * @return the state; absent where the lowering lines hold at no tilt
     */
    public Optional<CrossState> mostUnequal() {
        return lowering(Comparator.comparingDouble(s -> Math.abs(s.lower() - s.upper())));
    }

    /**
     * The tilt that asks most of a side line.
     *
     * @return the state
     */
    public CrossState mostSideLine() {
        return states.stream().max(Comparator.comparingDouble(CrossState::sideLine)).orElseThrow();
    }

    /**
     * The tilt at which a hull on its rim swings furthest out of its plane if let.
     *
     * @return the state; absent on shoes and legs
     */
    public Optional<CrossState> mostSway() {
        return states.stream().filter(s -> s.sway().isPresent())
                .max(Comparator.comparingDouble(s -> s.sway().orElseThrow().angle()));
    }

    /**
     * The tilt at which the upper shoe or foot carries least.
     *
     * @return the state
     */
    public CrossState lightestShoe() {
        return states.stream().min(Comparator.comparingDouble(s -> s.pivot().upperShoe())).orElseThrow();
    }

    /**
     * The states at whole multiples of a step.
     *
     * @param stepDeg the step, in degrees, positive
     * @return the states, by tilt
     */
    public List<CrossState> every(double stepDeg) {
        return states.stream().filter(s -> Math.abs(Math.IEEEremainder(Math.toDegrees(s.tilt()), stepDeg)) < 1e-6)
                .toList();
    }

    private Optional<CrossState> lowering(Comparator<CrossState> by) {
        return states.stream().filter(CrossState::lowering).max(by);
    }
}
