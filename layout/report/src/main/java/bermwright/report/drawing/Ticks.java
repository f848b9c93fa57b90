// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * An axis: its range and the round values marked on it.
 *
 * @param low         lower end, in the axis's unit
 * @param high        upper end, in the axis's unit, above {@code low}
 * @param marks       values marked, in the axis's unit
 * @param logarithmic whether equal ways are equal factors
 */
public record Ticks(double low, double high, List<Double> marks, boolean logarithmic) {
    /** Copies the marks. */
    public Ticks {
        marks = List.copyOf(marks);
    }

    /**
     * A linear axis whose ends are marks.
     *
     * @param least    least value shown, in the axis's unit
     * @param greatest greatest value shown, in the axis's unit
     * @param wanted   about how many steps (1), at least 1
     * @return the axis
     */
    public static Ticks linear(double least, double greatest, int wanted) {
        double low = Double.isFinite(least) ? least : 0;
        double high = Double.isFinite(greatest) && greatest > low ? greatest : low + 1;
        double step = step((high - low) / wanted);
        double first = Math.floor(low / step + 1e-9) * step;
        double last = Math.ceil(high / step - 1e-9) * step;
        return new Ticks(first, last, every(step, first, last), false);
    }

    /**
     * A linear axis that ends where it is told to, with marks inside.
     *
     * @param low    lower end, in the axis's unit
     * @param high   upper end, in the axis's unit
     * @param wanted about how many steps (1), at least 1
     * @return the axis
     */
    public static Ticks inside(double low, double high, int wanted) {
        double step = step((high - low) / wanted);
        return new Ticks(low, high, every(step, Math.ceil(low / step - 1e-9) * step, high), false);
    }

    /**
     * A logarithmic axis over whole decades or parts of them.
     *
     * @param least    least value shown, in the axis's unit, above zero
     * @param greatest greatest value shown, in the axis's unit
     * @return the axis
     */
    public static Ticks decades(double least, double greatest) {
        double[] parts = {1, 2, 5};
        List<Double> marks = new ArrayList<>();
        double low = floorPart(least);
        for (int decade = (int) Math.floor(Math.log10(low)) - 1; decade < 20; decade++) {
            for (double part : parts) {
                double mark = part * Math.pow(10, decade);
                if (mark >= low * 0.999) {
                    marks.add(mark);
                    if (mark >= greatest * 0.999 && marks.size() > 1) {
                        return new Ticks(low, mark, marks, true);
                    }
                }
            }
        }
        throw new IllegalArgumentException("no logarithmic axis from " + least + " to " + greatest);
    }

    /**
     * Where a value stands on the axis.
     *
     * @param value the value, in the axis's unit
     * @return share of the way from the lower to the upper end (1); outside 0 to 1 for values outside
     */
    public double share(double value) {
        return logarithmic ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
    }

    /**
     * A mark as words.
     *
     * @param mark the value, in the axis's unit
     * @return the text, with the decimals the steps ask for
     */
    public String words(double mark) {
        if (logarithmic) {
            return Drawing.figure(mark, 2);
        }
        double step = marks.size() > 1 ? marks.get(1) - marks.get(0) : 1;
        int places = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
        String text = String.format(Locale.ROOT, "%." + places + "f", mark);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    private static List<Double> every(double step, double first, double last) {
        List<Double> marks = new ArrayList<>();
        for (int i = 0; first + i * step <= last + step * 1e-6; i++) {
            marks.add(first + i * step);
        }
        return marks;
    }

    private static double step(double rough) {
        double decade = Math.pow(10, Math.floor(Math.log10(rough)));
        double part = rough / decade;
        return decade * (part <= 1 ? 1 : part <= 2 ? 2 : part <= 5 ? 5 : 10);
    }

    private static double floorPart(double value) {
        double decade = Math.pow(10, Math.floor(Math.log10(value)));
        double part = value / decade;
        return decade * (part >= 5 ? 5 : part >= 2 ? 2 : 1);
    }
}
