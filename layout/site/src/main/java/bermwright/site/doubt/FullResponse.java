// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.finding.Finding.Figures;
import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How figures answer to numbers that shape what is built, from full assessments one standard deviation either side.
 *
 * <p>Between and beyond, a figure above zero goes on by the same factor for each standard deviation, on either side by
 * its own, as the bands of doses do; any other by the same difference. Each number is moved by itself: what two of
 * them do together is left out, and samples assessed in full show by how much.
 */
final class FullResponse {
    static final FullResponse NONE = new FullResponse(List.of());

    private final List<OfInput> all;

    private FullResponse(List<OfInput> all) {
        this.all = all;
    }

    /** Figures by full assessment, of a sample. */
    interface Assessed {
        Map<Figure, Double> figures(double[] off);
    }

    private record OfInput(int input, Map<Figure, Sides> sides) {
    }

    /** A figure with the number one standard deviation below its best value, at it and above. */
    record Sides(double below, double best, double above) {
        double moved(double value, double deviations) {
            double side = deviations < 0 ? below : above;
            double steps = Math.abs(deviations);
            return Math.min(best, side) > 0 ? value * Math.pow(side / best, steps) : value + steps * (side - best);
        }
    }

    static FullResponse of(List<UncertainInput> inputs, String plan, Assessed assessed, Progress progress) {
        Map<Figure, Double> best = assessed.figures(new double[inputs.size()]);
        List<OfInput> all = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            progress.report((double) i / inputs.size(), "assessing in full what shapes the site");
            if (inputs.get(i).kind() != UncertainInput.Kind.SHAPE) {
                continue;
            }
            progress.check();
            Map<Figure, Double> below = side(inputs, i, -1, plan, assessed);
            Map<Figure, Double> above = side(inputs, i, 1, plan, assessed);
            Map<Figure, Sides> sides = new HashMap<>();
            for (Map.Entry<Figure, Double> figure : best.entrySet()) {
                if (!below.containsKey(figure.getKey()) || !above.containsKey(figure.getKey())) {
                    throw unusable(inputs.get(i), plan, "a spread that leaves a site of which " + figure.getKey().name()
                            + " can be worked out one standard deviation either side");
                }
                sides.put(figure.getKey(), new Sides(below.get(figure.getKey()), figure.getValue(),
                        above.get(figure.getKey())));
            }
            all.add(new OfInput(i, sides));
        }
        return new FullResponse(List.copyOf(all));
    }

    private static Map<Figure, Double> side(List<UncertainInput> inputs, int input, int deviations, String plan,
            Assessed assessed) {
        double[] off = new double[inputs.size()];
        off[input] = deviations;
        try {
            return assessed.figures(off);
        } catch (IllegalArgumentException | InputException refused) {
            throw unusable(inputs.get(input), plan, "a spread with which the plan can be worked out one standard"
                    + " deviation either side (" + refused.getMessage() + ")");
        }
    }

    private static InputException unusable(UncertainInput input, String plan, String accepted) {
        return InputException.badValue(new InputException.Place(plan, 0, "spread of " + input.group()),
                Figures.number(input.spread()), accepted);
    }

    /** Moves figures of a sample that was worked out with these numbers at their best. */
    void move(Map<Figure, Double> figures, double[] off) {
        for (OfInput of : all) {
            double deviations = off[of.input];
            figures.replaceAll((figure, value) -> of.sides.containsKey(figure)
                    ? of.sides.get(figure).moved(value, deviations) : value);
        }
    }
}
