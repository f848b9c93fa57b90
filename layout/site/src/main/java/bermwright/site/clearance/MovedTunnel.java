// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.foundation.Point;
import bermwright.site.footprint.HatchPlace;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.TrueMetres;
import java.util.List;
import java.util.Optional;

/** A tunnel whose hulls move: its ends in the frames of both hulls. */
record MovedTunnel(End from, End to, double half) {
    /**
     * A hatch in the frame of its hull.
     *
     * @param hull place of the hull in the plan
     * @param ahead of the base centre (m)
     * @param left  of it (m)
     * @param outAhead the way straight out of it, ahead
     * @param outLeft  the way straight out of it, to the left
     */
    record End(int hull, double ahead, double left, double outAhead, double outLeft) {
        Point place(List<QuickClearance.Pose> poses) {
            return poses.get(hull).place(ahead, left);
        }

        /** Angle between the way out and the way to a place. */
        double aslant(List<QuickClearance.Pose> poses, Point other) {
            QuickClearance.Pose pose = poses.get(hull);
            Point at = place(poses);
            double dx = other.east() - at.east();
            double dy = other.north() - at.north();
            double length = Math.hypot(dx, dy);
            double out = Math.hypot(outAhead, outLeft);
            if (!(length > 0) || out < 0.5) {
                return 0;
            }
            double ahead = dx * pose.sine() + dy * pose.cosine();
            double toLeft = -dx * pose.cosine() + dy * pose.sine();
            return Math.acos(Math.max(-1, Math.min(1, (ahead * outAhead + toLeft * outLeft) / length / out)));
        }
    }

    static Optional<MovedTunnel> of(Plan plan, Tunnel tunnel, TrueMetres metres) {
        Optional<End> from = end(plan, tunnel.from(), metres);
        Optional<End> to = end(plan, tunnel.to(), metres);
        return from.isEmpty() || to.isEmpty() || from.get().hull == to.get().hull ? Optional.empty()
                : Optional.of(new MovedTunnel(from.get(), to.get(), metres.onPlan(tunnel.diameter() / 2)));
    }

    private static Optional<End> end(Plan plan, String name, TrueMetres metres) {
        HatchName named = HatchName.of(name);
        for (int i = 0; i < plan.hulls().size(); i++) {
            Hull hull = plan.hulls().get(i);
            if (hull.id().equals(named.hull())) {
                int at = i;
                return named.hatchOf(hull).map(h -> end(at, hull, h, metres));
            }
        }
        return Optional.empty();
    }

    private static End end(int at, Hull hull, Hatch hatch, TrueMetres metres) {
        QuickClearance.Pose pose = QuickClearance.Pose.of(hull);
        Point place = HatchPlace.place(hull, hatch, metres);
        double dx = place.east() - pose.east();
        double dy = place.north() - pose.north();
        boolean upright = hull.arrival() == Hull.Arrival.STAYS_UPRIGHT;
        double ahead = hatch.end() == Hatch.End.SIDE ? upright ? -Math.cos(hatch.around()) : 0
                : upright ? 0 : hatch.end() == Hatch.End.BASE ? -1 : 1;
        return new End(at, dx * pose.sine() + dy * pose.cosine(), -dx * pose.cosine() + dy * pose.sine(), ahead,
                hatch.end() == Hatch.End.SIDE ? Math.sin(hatch.around()) : 0);
    }

    double length(List<QuickClearance.Pose> poses) {
        return from.place(poses).distance(to.place(poses));
    }

    double aslant(List<QuickClearance.Pose> poses) {
        return Math.max(from.aslant(poses, to.place(poses)), to.aslant(poses, from.place(poses)));
    }

    ConvexPiece outline(List<QuickClearance.Pose> poses) {
        Point a = from.place(poses);
        Point b = to.place(poses);
        double length = a.distance(b);
        double nx = -(b.north() - a.north()) / length * half;
        double ny = (b.east() - a.east()) / length * half;
        return new ConvexPiece(new double[] {a.east() - nx, b.east() - nx, b.east() + nx, a.east() + nx},
                new double[] {a.north() - ny, b.north() - ny, b.north() + ny, a.north() + ny});
    }
}
