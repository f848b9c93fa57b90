// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import bermwright.lowering.body.SweptProfile;
import bermwright.lowering.chain.Chain;
import bermwright.lowering.chain.Factors;
import bermwright.lowering.statics.HandOver;
import bermwright.lowering.statics.TiltState;
import java.util.List;
import java.util.Objects;

/**
 * A whole lowering from upright to lying, by lines; all in SI.
 *
 * @param balanceTilt          tilt at which the centre of mass stands over the pivot line (rad)
 * @param handOverTilt         tilt from which the lowering lines alone hold, wherever the centre of mass is (rad)
 * @param restTilt             tilt at which the hull lies (rad)
 * @param greatestPullOver     greatest tension of the pull-over line (N)
 * @param greatestLineTension  greatest tension of one lowering line with its lateral spread (N)
 * @param atTilt               tilt of that greatest tension (rad)
 * @param lineAngleAtRest      angle of the lowering lines to the ground with the hull lying (rad)
 * @param tilts                forces by tilt in equal steps and at rest; tilts at which nothing holds are left out and
 *                             named in {@code deadPoints}
 * @param factors              factors of the load case that governs each kind of part
 * @param chain                every part asked for every load case
 * @param governingPart        the part with the least margin over its required factor and its load case, in words
 * @param balances             full and hand balance with the hull lying
 * @param handOver             the band in which both lines must be taut
 * @param deadPoints           tilts at which a line holds or tips nothing
 * @param holdPoints           where to stop and check
 * @param sequence             the sequence in plain words
 * @param sweep                what the hull passes over in its own plane
 * @param findings             what is wrong, worst first
 * @param notes                models, ranges and spreads behind the figures
 */
public record LoweringResult(double balanceTilt, double handOverTilt, double restTilt, double greatestPullOver,
        double greatestLineTension, double atTilt, double lineAngleAtRest, List<TiltState> tilts, Factors factors,
        Chain chain, String governingPart, Balances balances, HandOver handOver,
        List<DeadPoint> deadPoints, List<HoldPoint> holdPoints, List<String> sequence, SweptProfile sweep,
        List<Finding> findings, List<ModelNote> notes) {
    /** Said with every result. */
    public static final String CAUTION =
            "Planning figures; a lift plan signed by qualified riggers and engineers decides.";

    /** Copies the lists. */
    public LoweringResult {
        tilts = List.copyOf(tilts);
        deadPoints = List.copyOf(deadPoints);
        holdPoints = List.copyOf(holdPoints);
        sequence = List.copyOf(sequence);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
        Objects.requireNonNull(factors, "factors");
        Objects.requireNonNull(chain, "chain");
        Objects.requireNonNull(governingPart, "governingPart");
        Objects.requireNonNull(balances, "balances");
        Objects.requireNonNull(handOver, "handOver");
        Objects.requireNonNull(sweep, "sweep");
    }
}
