// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import java.util.ArrayList;
import java.util.List;

/**
 * What the hull passes over in its own plane while it is laid down.
 *
 * <p>The body turns rigidly about the pivot line, so the farthest it reaches in a direction is the farthest its
 * standing section reaches in any direction that the turn carries there. Sampled every eighth of a degree; corners
 * are kept exactly.
 *
 * @param outline the outer edge of all places the hull passes, from the ground behind the standing hull over the top
 *                to the ground before the lying one
 * @param least   least x reached (m)
 * @param most    greatest x reached (m)
 * @param highest greatest height over the ground reached (m)
 */
public record SweptProfile(List<PlanePoint> outline, double least, double most, double highest) {
    private static final int BINS = 1440;

    /** Copies the outline. */
    public SweptProfile {
        outline = List.copyOf(outline);
    }

    /**
     * The profile of a body from standing to lying.
     *
     * @param tipping the body on its pivot
     * @return the profile
     */
    public static SweptProfile of(TippingBody tipping) {
        List<PlanePoint> section = new ArrayList<>();
        for (double[] corner : tipping.body().outline().section()) {
            section.add(tipping.point(corner[0], corner[1], 0));
        }
        double[] standing = reach(section);
        int turn = (int) Math.ceil(tipping.restTilt() / Math.PI * BINS);
        List<PlanePoint> points = new ArrayList<>();
        double least = 0;
        double most = 0;
        double highest = 0;
        for (int bin = BINS; bin >= 0; bin--) {
            double farthest = 0;
            for (int from = bin; from <= Math.min(BINS, bin + turn); from++) {
                farthest = Math.max(farthest, standing[from]);
            }
            if (farthest > 0) {
                double angle = Math.PI * bin / BINS;
                PlanePoint p = new PlanePoint(farthest * Math.cos(angle), farthest * Math.sin(angle));
                points.add(p);
                least = Math.min(least, p.x());
                most = Math.max(most, p.x());
                highest = Math.max(highest, p.z());
            }
        }
        return new SweptProfile(points, least, most, highest);
    }

    /**
     * Whether a point above the ground lies inside the swept profile.
     *
     * @param point the point asked about
     * @return true where the hull passes over it at some tilt
     */
    public boolean covers(PlanePoint point) {
        boolean inside = false;
        for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
            PlanePoint a = outline.get(i);
            PlanePoint b = outline.get(j);
            if ((a.z() > point.z()) != (b.z() > point.z())
                    && point.x() < (b.x() - a.x()) * (point.z() - a.z()) / (b.z() - a.z()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** How far the standing section reaches from the pivot line in each direction (m). */
    private static double[] reach(List<PlanePoint> section) {
        double[] reach = new double[BINS + 1];
        for (int bin = 0; bin <= BINS; bin++) {
            double angle = Math.PI * bin / BINS;
            PlanePoint ray = new PlanePoint(Math.cos(angle), Math.sin(angle));
            for (int c = 0; c < section.size(); c++) {
                reach[bin] = Math.max(reach[bin], crossing(ray, section.get(c),
                        section.get((c + 1) % section.size())));
            }
        }
        for (PlanePoint corner : section) {
            double at = Math.atan2(Math.max(0, corner.z()), corner.x()) / Math.PI * BINS;
            int low = (int) Math.floor(at);
            reach[low] = Math.max(reach[low], corner.norm());
            int high = Math.min(BINS, low + 1);
            reach[high] = Math.max(reach[high], corner.norm());
        }
        return reach;
    }

    /** Distance from the pivot line at which a ray crosses an edge (m), nothing where it does not. */
    private static double crossing(PlanePoint ray, PlanePoint a, PlanePoint b) {
        double dx = b.x() - a.x();
        double dz = b.z() - a.z();
        double across = ray.x() * dz - ray.z() * dx;
        if (Math.abs(across) < 1e-12) {
            return 0;
        }
        double along = (a.x() * dz - a.z() * dx) / across;
        double share = (a.x() * ray.z() - a.z() * ray.x()) / across;
        return along > 0 && share >= 0 && share <= 1 ? along : 0;
    }
}
