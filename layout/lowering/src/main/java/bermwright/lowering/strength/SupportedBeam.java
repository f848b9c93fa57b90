// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * The lying hull as a beam on rigid supports that stand level and do not clamp it.
 *
 * <p>Weight spreads along the hull as a straight line, as in {@link HullBeam}. More than two supports share it as a
 * beam of even stiffness does; a support that sinks more than its neighbours bears less than here and they more.
 *
 * @param reactions what each support bears (N); below zero where the hull would lift off it
 * @param hogging   greatest moment over a support, the crown side pulled (N m), zero or more
 * @param sagging   greatest moment between supports, the lay-down side pulled (N m), zero or more
 * @see "Clapeyron (1857), equation of three moments"
 */
public record SupportedBeam(List<Double> reactions, double hogging, double sagging) {
    /** Copies the list. */
    public SupportedBeam {
        reactions = List.copyOf(reactions);
    }

    /**
     * A hull on supports.
     *
     * @param load     what is borne
     * @param supports where the supports are from the base (m), at least two, rising, on the hull
     * @return what they bear and how the hull bends
     */
    public static SupportedBeam on(HullBeam.Load load, List<Double> supports) {
        Require.that(supports.size() >= 2, "%s supports; at least two are needed.", supports.size());
        for (int i = 0; i < supports.size(); i++) {
            Require.within("support from the base", supports.get(i), 0, load.length(), "m");
            Require.that(i == 0 || supports.get(i) > supports.get(i - 1), "supports must stand one after another.");
        }
        int last = supports.size() - 1;
        double right = load.length() - supports.get(last);
        double[] moments = moments(load, supports);
        double[] reactions = new double[supports.size()];
        reactions[0] = (load.at(0) + load.at(supports.get(0))) / 2 * supports.get(0);
        reactions[last] = (load.at(load.length()) + load.at(supports.get(last))) / 2 * right;
        double sagging = 0;
        double hogging = 0;
        for (int i = 0; i < last; i++) {
            Span span = new Span(load, supports.get(i), supports.get(i + 1));
            double tilt = (moments[i + 1] - moments[i]) / span.length();
            double push = span.length() * (2 * span.left() + span.right()) / 6 + tilt;
            reactions[i] += push;
            reactions[i + 1] += span.length() * (span.left() + 2 * span.right()) / 6 - tilt;
            sagging = Math.max(sagging, span.greatest(moments[i], push));
        }
        List<Double> borne = new ArrayList<>();
        for (int i = 0; i <= last; i++) {
            borne.add(reactions[i]);
            hogging = Math.max(hogging, -moments[i]);
        }
        return new SupportedBeam(borne, hogging, sagging);
    }

    private record Span(HullBeam.Load load, double from, double to) {
        double length() {
            return to - from;
        }

        double left() {
            return load.at(from);
        }

        double right() {
            return load.at(to);
        }

        double turnLeft() {
            return Math.pow(length(), 3) * (8 * left() + 7 * right()) / 60;
        }

        double turnRight() {
            return Math.pow(length(), 3) * (7 * left() + 8 * right()) / 60;
        }

        /** Moment where no shear is left, between the ends; the ends themselves are not looked at. */
        double greatest(double moment, double push) {
            double rise = (right() - left()) / length();
            double at = 2 * push / (left() + Math.sqrt(Math.max(0, left() * left() + 2 * rise * push)));
            if (!(at > 0 && at < length())) {
                return Math.max(0, moment);
            }
            return moment + push * at - left() * at * at / 2 - rise * at * at * at / 6;
        }
    }

    /** Moments over the supports: those of both overhangs by hand, the others by elimination. */
    private static double[] moments(HullBeam.Load load, List<Double> supports) {
        int last = supports.size() - 1;
        double[] moments = new double[last + 1];
        double left = supports.get(0);
        double right = load.length() - supports.get(last);
        moments[0] = -left * left * (2 * load.at(0) + load.at(left)) / 6;
        moments[last] = -right * right * (load.at(supports.get(last)) + 2 * load.at(load.length())) / 6;
        double[] factor = new double[last + 1];
        double[] known = new double[last + 1];
        known[0] = moments[0];
        for (int i = 1; i < last; i++) {
            Span before = new Span(load, supports.get(i - 1), supports.get(i));
            Span after = new Span(load, supports.get(i), supports.get(i + 1));
            double pivot = 2 * (before.length() + after.length()) - before.length() * factor[i - 1];
            factor[i] = after.length() / pivot;
            known[i] = (-before.turnRight() - after.turnLeft() - before.length() * known[i - 1]) / pivot;
        }
        for (int i = last - 1; i > 0; i--) {
            moments[i] = known[i] - factor[i] * moments[i + 1];
        }
        return moments;
    }
}
