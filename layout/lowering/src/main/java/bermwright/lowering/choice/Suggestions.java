// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.choice;

import bermwright.finding.Finding.Level;
import bermwright.finding.Sentence;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.rig.HeadGear;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Reeving;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Stay;
import bermwright.lowering.rig.Tube;
import bermwright.lowering.rig.Winch;
import bermwright.lowering.sequence.Lowered;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.Statics;
import bermwright.lowering.statics.TiltState;
import bermwright.lowering.strength.Column;
import bermwright.lowering.strength.ThinTube;
import bermwright.numeric.Bracket;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Looks for poles: every place on a grid of half metres behind the pivot, for each the least height by bisection.
 *
 * <p>Held still, the winch still able to haul back over the sheave; the ground under the moved poles is taken as high
 * as under the present ones. The lever must be at least a tenth of the lug's distance from the pivot from hand-over to
 * rest.
 *
 * @param found what was found, by goal; empty where nothing within the limits does
 * @param words the same in plain words
 */
public record Suggestions(List<Suggestion> found, List<String> words) {
    private static final double PLACE_STEP = 0.5;
    private static final double CLOSE = 0.005;
    private static final double STEEL = 7850;
    /** Diameter over wall up to which a tube works as a whole; EN 1993-1-1, class 3 near 355 MPa, from memory. */
    private static final double STOUT = 60;
    private static final Tube USUAL = new Tube(0.5, 0.016, 355e6, 210e9);

    /** Copies the lists. */
    public Suggestions {
        found = List.copyOf(found);
        words = List.copyOf(words);
    }

    /**
     * Looks for poles for a case.
     *
     * @param setup   the case; its own poles, if any, are only the pattern
     * @param limits within what to look
     * @return what was found
     */
    public static Suggestions of(LoweringCase setup, Limits limits) {
        return new Search(setup, limits).search();
    }

    /**
     * What was found for a goal.
     *
     * @param goal the goal
     * @return the suggestion, absent where nothing does
     */
    public Optional<Suggestion> of(Suggestion.Goal goal) {
        return found.stream().filter(s -> s.goal() == goal).findFirst();
    }

    private static final class Search {
        private final LoweringCase setup;
        private final Limits limits;
        /** What the winch may pull at the lug, so that it can still haul back over the sheave (N). */
        private final double allowed;
        private final double[] tilts;

        Search(LoweringCase setup, Limits limits) {
            this.setup = setup;
            this.limits = limits;
            this.allowed = limits.winchRating() * setup.rig().lines().sheaveEfficiency();
            double from = Math.max(0, setup.tipping().balanceTilt());
            this.tilts = new double[46];
            double rest = setup.tipping().restTilt();
            for (int i = 0; i < tilts.length; i++) {
                tilts[i] = i == tilts.length - 1 ? rest : from + (rest - from) * i / (tilts.length - 1);
            }
        }

        Suggestions search() {
            Suggestion lowest = null;
            Suggestion least = null;
            Suggestion lightest = null;
            for (double behind = limits.leastBehind(); behind <= limits.greatestBehind() + 1e-9;
                    behind += PLACE_STEP) {
                Rig high = rig(behind, limits.greatestHeight());
                double atTop = tension(high);
                if (!Double.isFinite(atTop)) {
                    continue;
                }
                if (least == null || atTop < least.greatestTension()) {
                    least = suggestion(Suggestion.Goal.LEAST_TENSION, behind, limits.greatestHeight());
                }
                if (atTop <= allowed) {
                    double height = leastHeight(behind);
                    Suggestion here = suggestion(Suggestion.Goal.LOWEST_POLES, behind, height);
                    lowest = lowest == null || here.height() < lowest.height() - CLOSE ? here : lowest;
                    lightest = lightest == null || here.poleMass() < lightest.poleMass()
                            ? suggestion(Suggestion.Goal.LIGHTEST_POLES, behind, height) : lightest;
                }
            }
            List<Suggestion> found = new ArrayList<>();
            for (Suggestion s : new Suggestion[] {lowest, lightest, least}) {
                if (s != null) {
                    found.add(judged(s));
                }
            }
            return new Suggestions(found, words(found));
        }

        private double leastHeight(double behind) {
            return Bracket.narrowed(0, limits.greatestHeight(), CLOSE,
                    height -> !(tension(rig(behind, height)) <= allowed)).high();
        }

        /** Greatest tension of one line, endless where the lines hold nothing somewhere (N). */
        private double tension(Rig rig) {
            Statics statics = new Statics(setup.tipping(), rig);
            double least = statics.leastHoldingLever();
            double greatest = 0;
            for (double tilt : tilts) {
                Optional<TiltState> state = statics.at(tilt);
                if (state.isEmpty() || statics.holdingLever(tilt) < least) {
                    return Double.POSITIVE_INFINITY;
                }
                greatest = Math.max(greatest, state.get().lineEach());
            }
            return greatest;
        }

        private double thrust(Rig rig) {
            Statics statics = new Statics(setup.tipping(), rig);
            double greatest = 0;
            for (double tilt : tilts) {
                greatest = Math.max(greatest, statics.at(tilt).map(TiltState::poleEach).orElse(0.0));
            }
            return greatest;
        }

        private Suggestion suggestion(Suggestion.Goal goal, double behind, double height) {
            Rig rig = rig(behind, height);
            Tube pattern = setup.rig().poles().flatMap(Poles::tube).orElse(USUAL);
            double thrust = thrust(rig);
            double wall = wall(pattern, height, thrust * setup.rig().factors().pole());
            Tube tube = new Tube(pattern.diameter(), wall, pattern.yield(), pattern.modulus());
            int count = rig.poles().orElseThrow().count();
            return new Suggestion(goal, height, behind, tension(rig), thrust, wall,
                    count * tube.area() * height * STEEL, "", rig);
        }

        /** A suggestion with what governs the whole rig then. */
        private Suggestion judged(Suggestion s) {
            Lowered lowered = Lowering.of(setup.with(s.rig()));
            long refused = lowered.findings().stream().filter(t -> t.level() == Level.REFUSE).count();
            String governs = lowered.result().map(LoweringResult::governingPart).orElse("nothing can be worked out")
                    + (refused == 0 ? ", nothing is refused" : String.format(Locale.ROOT,
                    ", %s it until the rest of the rig"
                    + " is made to fit", refused == 1 ? "one finding refuses" : refused + " findings refuse"));
            return new Suggestion(s.goal(), s.height(), s.behindPivot(), s.greatestTension(), s.greatestThrust(),
                    s.wall(), s.poleMass(), governs, s.rig());
        }

        /** The thinnest wall of the pattern's diameter that bears a thrust; nearly solid where none does (m). */
        private static double wall(Tube pattern, double height, double wanted) {
            return Bracket.narrowed(pattern.diameter() / STOUT, pattern.diameter() * 0.45, 1e-5, wall -> {
                Tube tube = new Tube(pattern.diameter(), wall, pattern.yield(), pattern.modulus());
                return !(Math.min(Column.of(tube, height).capacity(), ThinTube.capacity(tube)) >= wanted);
            }).high();
        }

        /** The rig with poles elsewhere; winches and stays keep their distance from the poles. */
        private Rig rig(double behind, double height) {
            Rig rig = setup.rig();
            LoweringLines lines = rig.lines();
            double level = rig.poles().map(p -> p.foot().z()).orElse(lines.winch().at().z());
            double was = rig.poles().map(p -> p.foot().x()).orElse(-behind);
            double shift = -behind - was;
            double winchX = Math.min(lines.winch().at().x() + shift, -behind);
            Winch winch = new Winch(new PlanePoint(winchX, lines.winch().at().z()), lines.winch().rating(),
                    lines.winch().brakeHeat(), lines.winch().anchor(), lines.winch().holding(),
                    lines.winch().spacing());
            List<Stay> stays = rig.stays().stream().map(s -> new Stay(new PlanePoint(s.anchorAt().x() + shift,
                    s.anchorAt().z()), s.halfSpread(), s.breakingLoad(), s.anchor())).toList();
            double half = rig.poles().map(Poles::halfSpread).orElse(lines.halfSpread());
            Poles poles = new Poles(new PlanePoint(-behind, level), new PlanePoint(-behind, level + height), half,
                    rig.poles().flatMap(Poles::tube), rig.poles().map(Poles::footArea).orElse(OptionalDouble.empty()),
                    rig.poles().map(Poles::count).orElse(Reeving.usualPoles(half)),
                    rig.poles().map(Poles::headGear).orElse(HeadGear.NOT_GIVEN));
            return new Rig(new LoweringLines(lines.count(), lines.lug(), lines.line(), winch,
                    lines.payOutMismatch(), lines.sheaveEfficiency(), lines.ends(), lines.slack()),
                    Optional.of(poles), stays, rig.pullOver(), rig.pivotHold(), rig.factors());
        }

        private List<String> words(List<Suggestion> found) {
            if (found.stream().noneMatch(s -> s.goal() == Suggestion.Goal.LOWEST_POLES)) {
                String best = found.isEmpty() ? "no poles hold the hull" : String.format(Locale.ROOT,
                        "the least tension is %.1f kN", found.get(0).greatestTension() / 1000);
                return List.of(String.format(Locale.ROOT, "Within %.1f to %.1f m behind the pivot and %.1f m of height"
                        + " no poles keep a winch of %.1f kN: %s. Use more or stronger winches.",
                        limits.leastBehind(), limits.greatestBehind(), limits.greatestHeight(),
                        limits.winchRating() / 1000, best));
            }
            return found.stream().map(s -> String.format(Locale.ROOT, "%s: %.1f m high, %.1f m behind the pivot;"
                    + " line %.1f kN, pole %.1f kN, wall %.1f mm, poles together %.1f t. Governed by %s.",
                    Sentence.begin(s.goal().words()), s.height(), s.behindPivot(), s.greatestTension() / 1000,
                    s.greatestThrust() / 1000,
                    s.wall() * 1000, s.poleMass() / 1000, s.governs())).toList();
        }
    }
}
