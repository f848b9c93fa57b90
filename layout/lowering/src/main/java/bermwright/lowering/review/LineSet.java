// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.foundation.Vec3;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.GearPoints;
import bermwright.lowering.rig.PullOver;
import bermwright.lowering.rig.Rig;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines at work at one tilt, in space: x along the azimuth, y to the left, z square to the ground.
 *
 * @param ends where they are made fast to the hull and where they lead, from right to left
 */
record LineSet(List<End> ends) {
    /**
     * One line.
     *
     * @param lug   where it is made fast
     * @param lead  where it leads
     * @param share its place across, -1 for the outermost on the right, 1 on the left, 0 in the plane
     */
    record End(Vec3 lug, Vec3 lead, double share) {
        Vec3 pull() {
            return lead.minus(lug).direction();
        }
    }

    /** The lowering lines, spread evenly at lugs and heads. */
    static LineSet lowering(TippingBody tipping, Rig rig, double tilt) {
        GearPoints points = GearPoints.of(rig);
        List<GearPoints.LinePath> paths = points.lines(tipping, rig.lines().lug(), tilt);
        List<End> ends = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            double share = paths.size() == 1 ? 0 : 2.0 * i / (paths.size() - 1) - 1;
            ends.add(new End(paths.get(i).lug(), paths.get(i).lead(), share));
        }
        return new LineSet(ends);
    }

    /** The pull-over line alone. */
    static LineSet pullOver(TippingBody tipping, PullOver over, double tilt) {
        return new LineSet(List.of(new End(at(tipping.point(over.lug().along(), over.lug().offAxis(), tilt), 0),
                at(over.anchorAt(), 0), 0)));
    }

    /** The same lines with heads that stand plumb: seen square to ground that falls across they lean up the slope. */
    LineSet plumb(Ground ground) {
        double lean = ground.fall().y() / ground.fall().z();
        return lean == 0 ? this : new LineSet(ends.stream().map(e -> new End(e.lug(),
                new Vec3(e.lead().x(), e.lead().y() + lean * e.lead().z(), e.lead().z()), e.share())).toList());
    }

    /** The same lines of a hull that stands aside of its gear. */
    LineSet seen(Misalignment misalignment) {
        return misalignment.equals(Misalignment.NONE) ? this
                : new LineSet(ends.stream().map(e -> new End(e.lug(), misalignment.seen(e.lead()), e.share()))
                        .toList());
    }

    static Vec3 at(PlanePoint point, double left) {
        return new Vec3(point.x(), left, point.z());
    }

    /** One newton in each line. */
    Wrench common() {
        return ends.stream().map(e -> Wrench.at(e.lug(), e.pull())).reduce(Wrench::plus).orElseThrow();
    }

    /** One newton more in the outermost line on the left, one less on the right, the rest in between. */
    Wrench difference() {
        return ends.stream().map(e -> Wrench.at(e.lug(), e.pull()).times(e.share())).reduce(Wrench::plus)
                .orElseThrow();
    }

    /** Whether the lines stand side by side on the hull, so that unequal tension turns it. */
    boolean isSpread() {
        return ends.size() > 1 && ends.get(0).lug().y() != ends.get(ends.size() - 1).lug().y();
    }

    /** Where a side line would be made fast: in the plane, between the lugs. */
    Vec3 middle() {
        Vec3 lug = ends.get(0).lug();
        return new Vec3(lug.x(), 0, lug.z());
    }
}
