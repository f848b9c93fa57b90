// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullPose;
import bermwright.shielding.scene.HullShape;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;

/**
 * The height of the soil that one hull asks for over a place in plan.
 *
 * <p>Along the barrel the answer is closed: across the axis it is an arc and its tangents. At the ends it is the
 * highest cone over a lattice of skin points, fine enough that the dips between them are below a centimetre.
 */
final class HullEnvelope {
    /** Points on an arc of a rim; at a hull of 4 m radius they stand 0.1 m apart and dip by 0.2 mm. */
    private static final int ARC = 121;
    private static final int END_ROWS = 25;
    /** Points across a face; at a radius of 4 m they stand at most 0.17 m apart and dip by 2 mm under 2 m of soil. */
    private static final int FACE = 49;
    /** Angle from the crown to which rims are followed (rad); below it no cone of theirs is the highest. */
    private static final double RIM_REACH = Math.toRadians(100);

    private final CoveredHull covered;
    private final Repose repose;
    private final Repose across;
    private final boolean liesFlat;
    private final double cosRise;
    private final double sinRise;
    private final double eastAlong;
    private final double northAlong;
    private final Vec3 base;
    /** Where crown and flanks have their full thickness, along the barrel. */
    private final double crownFrom;
    private final double crownTo;
    private final double flankFrom;
    private final double flankTo;
    private final List<SkinPatch> patches = new ArrayList<>();
    private final List<double[]> fronts = new ArrayList<>();
    private final List<UprightFace> walls;

    HullEnvelope(CoveredHull covered, Repose repose, ElevationGrid ground) {
        this.covered = covered;
        this.repose = repose;
        HullPose pose = covered.hull().pose();
        base = pose.base();
        cosRise = Math.hypot(pose.axis().x(), pose.axis().y());
        sinRise = pose.axis().z();
        liesFlat = cosRise > repose.cos * (1 + 1e-9);
        eastAlong = cosRise > 0 ? pose.axis().x() / cosRise : 0;
        northAlong = cosRise > 0 ? pose.axis().y() / cosRise : 0;
        across = liesFlat ? new Repose(repose.cos / cosRise) : repose;
        CoverThickness t = covered.thickness();
        HullShape shape = covered.hull().shape();
        crownFrom = shape.barrelStart() + covered.runOut(false, t.crown());
        crownTo = shape.barrelEnd() - covered.runOut(true, t.crown());
        flankFrom = shape.barrelStart() + covered.runOut(false, t.flank());
        flankTo = shape.barrelEnd() - covered.runOut(true, t.flank());
        walls = liesFlat ? covered.faces() : List.of();
        edge(false);
        edge(true);
        end(false, covered.base(), ground);
        end(true, covered.far(), ground);
    }

    /** The barrel's edge at one end: the whole run-out where the end is to have less, else the rim alone. */
    private void edge(boolean far) {
        CoverThickness t = covered.thickness();
        double crown = CoverThickness.CROWN_HALF_ANGLE;
        HullShape shape = covered.hull().shape();
        double rim = far ? shape.barrelEnd() : shape.barrelStart();
        if (!liesFlat) {
            strip(rim, rim, new double[] {-Math.PI, Math.PI}, Math.max(t.crown(), t.flank()));
            return;
        }
        strip(rim, far ? crownTo : crownFrom, new double[] {-crown, crown}, t.crown());
        strip(rim, far ? flankTo : flankFrom, new double[] {crown, RIM_REACH}, t.flank());
        strip(rim, far ? flankTo : flankFrom, new double[] {-RIM_REACH, -crown}, t.flank());
        if (covered.crownWidth() > 0) {
            double half = covered.crownWidth() / 2;
            double along = far ? crownTo : crownFrom;
            patches.add(new SkinPatch(new int[] {1, ARC}, u -> 0, repose, (u, v) -> covered.hull().pose()
                    .point(along, half * (2 * v - 1), shape.radius() + t.crown())));
        }
    }

    /** Skin from a rim inwards, as far as its thickness runs out towards the end. */
    private void strip(double rim, double full, double[] angles, double thickness) {
        double r = covered.hull().shape().radius();
        boolean runsOut = rim != full;
        double middle = (angles[0] + angles[1]) / 2;
        patches.add(new SkinPatch(new int[] {runsOut ? END_ROWS : 1, ARC},
                u -> runsOut ? covered.wanted(rim + (full - rim) * u, middle) : thickness, repose, (u, v) -> {
                    double around = angles[0] + (angles[1] - angles[0]) * v;
                    return covered.hull().pose().point(runsOut ? rim + (full - rim) * u : rim,
                            r * Math.sin(around), r * Math.cos(around));
                }));
    }

    private void end(boolean far, EndCover cover, ElevationGrid ground) {
        HullShape shape = covered.hull().shape();
        HullEnd end = far ? shape.farEnd() : shape.baseEnd();
        double tip = far ? shape.length() : 0;
        if (cover != EndCover.COVERED) {
            if (liesFlat && cover == EndCover.OPEN) {
                Vec3 at = covered.hull().pose().point(tip, 0, 0);
                double sign = far ? 1 : -1;
                fronts.add(new double[] {at.x(), at.y(), sign * eastAlong, sign * northAlong,
                    ground.height(at.plan())});
            }
            return;
        }
        double thickness = far ? covered.thickness().farEnd() : covered.thickness().baseEnd();
        double reach = liesFlat ? RIM_REACH : Math.PI;
        if (end.shape() == HullEnd.Shape.FLAT && !liesFlat) {
            face(tip, thickness);
            return;
        }
        if (end.shape() == HullEnd.Shape.FLAT) {
            strip(tip, tip, new double[] {-reach, reach}, thickness);
            return;
        }
        double sign = far ? -1 : 1;
        patches.add(new SkinPatch(new int[] {END_ROWS, ARC}, u -> thickness, repose, (u, v) -> {
            // Rows crowd towards the tip as the cosine does, so that a dome is followed evenly.
            double inwards = end.shape() == HullEnd.Shape.DOME ? end.depth() * (1 - Math.cos(u * Math.PI / 2))
                    : end.depth() * u;
            return covered.hull().skin(tip + sign * inwards, reach * (2 * v - 1));
        }));
    }

    /** The whole face of a flat end that may look up; of one that stands upright the rim is enough. */
    private void face(double tip, double thickness) {
        double r = covered.hull().shape().radius();
        patches.add(new SkinPatch(new int[] {FACE, FACE}, u -> thickness, repose, (u, v) -> {
            // A square brought onto the disc, so that neighbours on it are neighbours there.
            double a = 2 * u - 1;
            double b = 2 * v - 1;
            return covered.hull().pose().point(tip, r * a * Math.sqrt(1 - b * b / 2), r * b * Math.sqrt(1 - a * a / 2));
        }));
    }

    int patches() {
        return patches.size();
    }

    /** A point in the middle of a patch, to begin climbing from. */
    int middle(int patch) {
        return patches.get(patch).points() / 2;
    }

    /** The tangent of the stable slope. */
    double slope() {
        return repose.tan;
    }

    /** The highest point any soil of this hull reaches. */
    double top() {
        HullShape shape = covered.hull().shape();
        double highest = Math.max(base.z(), base.z() + shape.length() * sinRise);
        return highest + shape.radius() * cosRise + covered.thickness().greatest() / repose.cos;
    }

    /**
     * The height asked for; negative infinity where the soil of this hull may not lie.
     *
     * @param floor  a height below which the answer does not matter (m)
     * @param starts where the search of each patch last ended; changed
     */
    double height(double east, double north, double floor, int[] starts) {
        double limit = limit(east, north);
        if (limit <= floor) {
            return limit;
        }
        double best = liesFlat ? barrel(east, north) : Double.NEGATIVE_INFINITY;
        for (int i = 0; i < patches.size(); i++) {
            SkinPatch patch = patches.get(i);
            if (patch.bound(east, north) > Math.max(best, floor)) {
                starts[i] = patch.climb(east, north, starts[i]);
                best = Math.max(best, patch.at(starts[i], east, north));
            }
        }
        return Math.min(best, limit);
    }

    /**
     * The share of a node's cell that lies behind the walls of held ends (1): so much of its soil stands there. The
     * straight surface between the nodes then has as much soil behind a wall as stands there, wherever the nodes lie.
     */
    double behindWalls(double east, double north, double spacing) {
        double share = 1;
        for (UprightFace face : walls) {
            share = Math.min(share, face.share(east, north, spacing));
        }
        return share;
    }

    private double limit(double east, double north) {
        double limit = Double.POSITIVE_INFINITY;
        for (double[] front : fronts) {
            double ahead = (east - front[0]) * front[2] + (north - front[1]) * front[3];
            if (ahead > 0) {
                return Double.NEGATIVE_INFINITY;
            }
            limit = Math.min(limit, front[4] - ahead * repose.tan);
        }
        return limit;
    }

    private double barrel(double east, double north) {
        double p = (east - base.x()) * eastAlong + (north - base.y()) * northAlong;
        double q = Math.abs((north - base.y()) * eastAlong - (east - base.x()) * northAlong);
        CoverThickness t = covered.thickness();
        double r = covered.hull().shape().radius();
        double crown = CoverThickness.CROWN_HALF_ANGLE;
        double best = lift(p, arcHeight(q, r, t.crown(), new double[] {0, crown}), crownFrom, crownTo);
        best = Math.max(best, lift(p, arcHeight(q, r, t.flank(), new double[] {crown, Math.PI / 2}), flankFrom,
                flankTo));
        if (covered.crownWidth() > 0) {
            double out = Math.max(0, q - covered.crownWidth() / 2);
            best = Math.max(best, lift(p, new double[] {r + t.crown() - out * across.tan, out}, crownFrom, crownTo));
        }
        return best;
    }

    /** From a height across the axis to a height in the site; negative infinity beside the stretch. */
    private double lift(double p, double[] section, double from, double to) {
        double height = section[0];
        // On a slope the steepest way down runs a little along a rising axis: the skin it stands on lies further up.
        double askew = section[1] * repose.tan / Math.sqrt(repose.tan * repose.tan - sinRise * sinRise
                / (cosRise * cosRise)) * sinRise * (repose.tan + 1 / repose.tan);
        double along = (p + height * sinRise) / cosRise + askew;
        if (along < from || along > to) {
            return Double.NEGATIVE_INFINITY;
        }
        return base.z() + p * sinRise / cosRise + height / cosRise;
    }

    /** Height over the axis, across it, of the soil that skin between two angles asks for; width of its slope. */
    private double[] arcHeight(double q, double r, double thickness, double[] angles) {
        double from = angles[0];
        double to = angles[1];
        double outer = r + thickness;
        double steepest = Math.asin(across.sin);
        if (q < outer * Math.sin(from) || from >= steepest) {
            return single(r * Math.cos(from), Math.abs(q - r * Math.sin(from)), thickness);
        }
        double last = Math.min(to, steepest);
        if (q <= outer * Math.sin(last)) {
            return new double[] {Math.sqrt(outer * outer - q * q), 0};
        }
        if (last < to) {
            double out = q - outer * across.sin;
            return new double[] {outer * across.cos - out * across.tan, out};
        }
        return single(r * Math.cos(to), q - r * Math.sin(to), thickness);
    }

    private double[] single(double skin, double distance, double thickness) {
        return new double[] {skin + across.rise(distance, thickness), Math.max(0, distance - thickness * across.sin)};
    }
}
