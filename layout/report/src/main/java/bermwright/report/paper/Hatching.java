// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import bermwright.report.drawing.Dot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Parallel lines that fill an outline.
 *
 * @param angle   their direction against the clock from the right (rad)
 * @param spacing distance between two of them (mm), positive
 * @param pen     how they are drawn
 */
public record Hatching(double angle, double spacing, Pen pen) {
    /** Most lines in one outline; wider apart beyond that. */
    private static final int MOST = 2000;

    /**
     * The lines within outlines; where outlines lie in one another, every other ring is filled.
     *
     * @param outlines closed outlines (mm)
     * @return the lines, each of two points
     */
    public List<List<Dot>> within(List<List<Dot>> outlines) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (List<Dot> outline : outlines) {
            for (Dot p : outline) {
                low = Math.min(low, p.x() * sin + p.y() * cos);
                high = Math.max(high, p.x() * sin + p.y() * cos);
            }
        }
        List<List<Dot>> lines = new ArrayList<>();
        double step = Math.max(spacing, (high - low) / MOST);
        for (double v = Math.ceil(low / step) * step + step / 2; v < high; v += step) {
            double[] cuts = cuts(outlines, v);
            for (int i = 0; i + 1 < cuts.length; i += 2) {
                lines.add(List.of(new Dot(cuts[i] * cos + v * sin, -cuts[i] * sin + v * cos),
                        new Dot(cuts[i + 1] * cos + v * sin, -cuts[i + 1] * sin + v * cos)));
            }
        }
        return lines;
    }

    /** Where the line at a height over its own axis crosses outlines, from left to right. */
    private double[] cuts(List<List<Dot>> outlines, double v) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        List<Double> found = new ArrayList<>();
        for (List<Dot> outline : outlines) {
            for (int i = 0; i < outline.size(); i++) {
                Dot a = outline.get(i);
                Dot b = outline.get((i + 1) % outline.size());
                double va = a.x() * sin + a.y() * cos - v;
                double vb = b.x() * sin + b.y() * cos - v;
                if (va < 0 != vb < 0) {
                    double share = va / (va - vb);
                    double ua = a.x() * cos - a.y() * sin;
                    double ub = b.x() * cos - b.y() * sin;
                    found.add(ua + share * (ub - ua));
                }
            }
        }
        double[] cuts = found.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(cuts);
        return cuts;
    }
}
