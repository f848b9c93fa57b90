// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import bermwright.report.drawing.Dot;
import java.util.ArrayList;
import java.util.List;

/** Lines and outlines cut off at the edges of a part of a sheet. */
public final class Cropped {
    private Cropped() {
    }

    /**
     * What of a line lies inside; places that are not known break it.
     *
     * @param points its corners (mm)
     * @param frame  the part, not turned
     * @return the pieces, each of two corners or more
     */
    public static List<List<Dot>> line(List<Dot> points, Patch frame) {
        List<List<Dot>> pieces = new ArrayList<>();
        List<Dot> piece = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            Dot a = points.get(i);
            Dot b = points.get(i + 1);
            double[] part = a.isKnown() && b.isKnown() ? part(a, b, frame) : new double[] {1, 0};
            if (part[0] < part[1]) {
                if (piece.isEmpty() || part[0] > 0) {
                    keep(piece, pieces);
                    piece = new ArrayList<>(List.of(at(a, b, part[0])));
                }
                piece.add(at(a, b, part[1]));
            }
            if (part[1] < 1 || part[0] >= part[1]) {
                keep(piece, pieces);
                piece = new ArrayList<>();
            }
        }
        keep(piece, pieces);
        return pieces;
    }

    private static void keep(List<Dot> piece, List<List<Dot>> pieces) {
        if (piece.size() > 1) {
            pieces.add(List.copyOf(piece));
        }
    }

    private static Dot at(Dot a, Dot b, double share) {
        return share == 0 ? a : share == 1 ? b
                : new Dot(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
    }

    private static double[] part(Dot a, Dot b, Patch frame) {
        double[] part = {0, 1};
        slab(a.x() - frame.middle().x(), b.x() - frame.middle().x(), frame.halfWidth(), part);
        slab(a.y() - frame.middle().y(), b.y() - frame.middle().y(), frame.halfHeight(), part);
        return part;
    }

    private static void slab(double a, double b, double half, double[] part) {
        if (a == b) {
            part[1] = Math.abs(a) <= half ? part[1] : -1;
            return;
        }
        double first = (-half - a) / (b - a);
        double second = (half - a) / (b - a);
        part[0] = Math.max(part[0], Math.min(first, second));
        part[1] = Math.min(part[1], Math.max(first, second));
    }

    /**
     * What of an outline's inside lies inside the part.
     *
     * @param points its corners (mm)
     * @param frame  the part, not turned
     * @return its corners; fewer than three where nothing is left
     */
    public static List<Dot> area(List<Dot> points, Patch frame) {
        List<Dot> left = points;
        for (int side = 0; side < 4; side++) {
            List<Dot> kept = new ArrayList<>();
            for (int i = 0; i < left.size(); i++) {
                Dot a = left.get(i);
                Dot b = left.get((i + 1) % left.size());
                double da = inside(a, frame, side);
                double db = inside(b, frame, side);
                if (da >= 0) {
                    kept.add(a);
                }
                if (da < 0 != db < 0) {
                    kept.add(at(a, b, da / (da - db)));
                }
            }
            left = kept;
        }
        return left;
    }

    private static double inside(Dot p, Patch frame, int side) {
        double value = side < 2 ? p.x() - frame.middle().x() : p.y() - frame.middle().y();
        double half = side < 2 ? frame.halfWidth() : frame.halfHeight();
        return side % 2 == 0 ? half - value : half + value;
    }
}
