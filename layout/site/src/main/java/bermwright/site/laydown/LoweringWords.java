// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.review.CrossSlope;
import bermwright.lowering.review.CrossState;
import bermwright.lowering.review.LiquidReview;
import bermwright.lowering.review.Review;
import bermwright.lowering.sequence.HoldPoint;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.thrust.LyingLanding;
import bermwright.lowering.thrust.ThrusterResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How a hull comes to lie, in plain words.
 *
 * @param sequence   the sequence, one step a line
 * @param holdPoints where to stop and check, one a line
 * @param governing  what governs, and the parts that come next
 * @param balances   which balance is higher and what each is safe for; empty without lines
 * @param motion     what motion brings, one fact a line
 * @param caution    said with every result
 */
public record LoweringWords(List<String> sequence, List<String> holdPoints, List<String> governing, String balances,
        List<String> motion, String caution) {
    /** Copies the lists. */
    public LoweringWords {
        sequence = List.copyOf(sequence);
        holdPoints = List.copyOf(holdPoints);
        governing = List.copyOf(governing);
        motion = List.copyOf(motion);
    }

    /**
     * A laying down in words.
     *
     * @param laydown the laying down
     * @return the words
     */
    public static LoweringWords of(Laydown laydown) {
        List<String> motion = new ArrayList<>();
        laydown.review().ifPresent(r -> motion.addAll(motion(r)));
        laydown.thrusters().ifPresent(t -> motion.addAll(thrusters(t)));
        laydown.landing().ifPresent(l -> motion.addAll(landing(l)));
        return new LoweringWords(laydown.lowering().map(LoweringResult::sequence).orElse(List.of()),
                laydown.lowering().map(r -> r.holdPoints().stream().map(LoweringWords::hold).toList())
                        .orElse(List.of()),
                laydown.lowering().map(LoweringWords::governing).orElse(List.of()),
                laydown.lowering().map(LoweringWords::balances).orElse(""), motion, LoweringResult.CAUTION);
    }

    private static String hold(HoldPoint point) {
        return text("%.1f deg: %s.", Math.toDegrees(point.tilt()), point.check());
    }

    private static List<String> governing(LoweringResult result) {
        return result.chain().governing().stream().filter(r -> r.factor().isPresent()).limit(5)
                .map(r -> part(result, r)).toList();
    }

    private static String part(LoweringResult result, ChainRow row) {
        return text("%s, %s: factor of safety %.2f, %.2f required, at %.1f deg (%s).", row.part().words(),
                row.loadWords(), row.factor().orElseThrow(), row.required(), Math.toDegrees(row.tilt()),
                row.source() + result.chain().soil(row).map(s -> "; " + s.words()).orElse(""));
    }

    private static String balances(LoweringResult result) {
        String hand = result.balances().hand().isPresent()
                ? text("%.1f kN", result.balances().hand().getAsDouble() / 1000) : "no answer";
        return text("Lying: full balance %.1f kN, hand balance %s. ", result.balances().full() / 1000, hand)
                + result.balances().words();
    }

    private static List<String> motion(Review review) {
        List<String> lines = new ArrayList<>();
        lines.add(text("The move takes %.0f min; the brakes take up %.2f MJ, %.1f kW on the mean.",
                review.motion().duration() / 60, review.motion().brakeHeat() / 1e6,
                review.motion().meanBrakePower() / 1000));
        lines.add(text("With nothing to hold it the hull topples from balance in %.0f s and its far end comes down at"
                + " %.1f m/s.", review.motion().freeTime(), review.motion().freeSpeed()));
        review.motion().states().stream().max((a, b) -> Double.compare(a.stopFactor(), b.stopFactor()))
                .filter(s -> s.stopFactor() > 0).ifPresent(s -> lines.add(text("A winch stopping dead multiplies the"
                        + " tension by %.2f at %.0f deg.", s.stopFactor(), Math.toDegrees(s.tilt()))));
        review.motion().states().stream().max((a, b) -> Double.compare(a.snatchEach(), b.snatchEach()))
                .filter(s -> s.snatchEach() > 0).ifPresent(s -> lines.add(text("A tenth of a metre of slack coming taut"
                        + " at %.0f deg pulls each line with %.0f kN.", Math.toDegrees(s.tilt()),
                        s.snatchEach() / 1000)));
        review.cross().filter(c -> c.sideForce() > 0).ifPresent(c -> lines.add(cross(c)));
        review.liquid().flatMap(LiquidReview::worst).ifPresent(s -> lines.add(text("Liquid that runs freely in the"
                + " hull's own cylinder, a bound, brings balance at %.1f deg and moves the centre of mass %.2f m"
                + " towards the far end and %.2f m to the lay-down side: up to %.1f kN a line at %.0f deg, %.1f kN"
                + " with the liquid held.", Math.toDegrees(review.liquid().get().balance()), s.along(), s.off(),
                s.free() / 1000, Math.toDegrees(s.tilt()), s.held() / 1000)));
        review.beam().ifPresent(b -> lines.add(text("As a beam on base and lugs the hull bends with %.0f kN m between"
                + " them and %.0f kN m at the lugs; lugs at %.1f m bend it least.", b.between() / 1000,
                b.atLugs() / 1000, b.bestLug())));
        lines.add(text("A line that cools by %.0f K shortens by %.2f m; a hull that hangs free follows it, on a"
                + " chocked one the line gains up to %s.", review.lines().cooling(), review.lines().coolingShortening(),
                review.lines().coolingGain().isPresent()
                        ? text("%.0f kN", review.lines().coolingGain().getAsDouble() / 1000) : "a load not known"));
        return lines;
    }

    private static String cross(CrossSlope cross) {
        String unequal = cross.mostUnequal().map(c -> text(" At %.0f deg the line of the lower side carries %.1f kN,"
                + " that of the upper side %.1f kN; the hull is kept in its plane by %s.", Math.toDegrees(c.tilt()),
                c.lower() / 1000, c.upper() / 1000, c.held().word())).orElse("");
        CrossState shoe = cross.lightestShoe();
        String shoes = shoe.pivot().upperShoe() > 0 ? text(" The upper shoe never carries less than %.1f kN (%.0f"
                + " deg, the lower then %.1f kN).", shoe.pivot().upperShoe() / 1000, Math.toDegrees(shoe.tilt()),
                shoe.pivot().lowerShoe() / 1000) : "";
        CrossState side = cross.mostSideLine();
        String line = side.sideLine() > 0 ? text(" Side lines at the lugs, on the upper side, for up to %.1f kN (%.0f"
                + " deg).", side.sideLine() / 1000, Math.toDegrees(side.tilt())) : "";
        return text("The cross slope pulls %.1f kN sideways.", cross.sideForce() / 1000) + unequal + shoes + line;
    }

    private static List<String> thrusters(ThrusterResult result) {
        return List.of(text("Side thrusters: push over with %.1f kN, brake with up to %.1f kN at %.0f deg, %.0f kg of"
                + " propellant, %.0f s.", result.greatestPush() / 1000, result.greatestBrake() / 1000,
                Math.toDegrees(result.atTilt()), result.propellant(), result.time()),
                text("Slowed from %.0f deg on to come down at %.2f m/s: %.1f kN, %.0f kg, %.0f s.",
                        Math.toDegrees(result.profiled().profile().slowFrom()), result.profiled().contactSpeed(),
                        result.profiled().greatestBrake() / 1000, result.profiled().propellant(),
                        result.profiled().time()));
    }

    private static List<String> landing(LyingLanding landing) {
        return List.of(text("Lands lying: %.1f kN to hover, %.1f kN with a quarter in hand; touchdown %.0f kJ, a drop"
                + " of %.2f m.", landing.hoverThrust() / 1000, landing.thrustInHand() / 1000,
                landing.touchdownEnergy() / 1000, landing.equivalentDrop()));
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
