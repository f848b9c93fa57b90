// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.statics;

import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.GearPoints;
import bermwright.lowering.rig.Rig;
import java.util.List;

/**
 * The lowering lines between hull and head at one tilt.
 *
 * @param paths     the lines in space, from right to left
 * @param direction direction from the lugs to where they lead in the lay-down plane, of length one
 * @param lever     lever of the lines about the pivot in the plane (m)
 * @param inPlane   length of the lines from lug to lead seen in the plane (m)
 */
public record LineGeometry(List<GearPoints.LinePath> paths, PlanePoint direction, double lever, double inPlane) {
    /** Copies the lines. */
    public LineGeometry {
        paths = List.copyOf(paths);
    }

    /**
     * Where the lines lead in the lay-down plane: the pole head, or the winch where there are no poles.
     *
     * @param rig the rig
     * @return the point
     */
    public static PlanePoint leadPoint(Rig rig) {
        return rig.poles().map(p -> p.head()).orElse(rig.lines().winch().at());
    }

    /**
     * The lines at a tilt.
     *
     * @param tipping the body on its pivot
     * @param rig     the rig
     * @param tilt    tilt (rad), 0 standing
     * @return the lines
     */
    public static LineGeometry at(TippingBody tipping, Rig rig, double tilt) {
        return at(tipping, rig, GearPoints.of(rig), tilt);
    }

    /**
     * The lines at a tilt, of gear whose points are known.
     *
     * @param tipping the body on its pivot
     * @param rig     the rig
     * @param points  its points
     * @param tilt    tilt (rad), 0 standing
     * @return the lines
     */
    public static LineGeometry at(TippingBody tipping, Rig rig, GearPoints points, double tilt) {
        PlanePoint lug = tipping.point(rig.lines().lug().along(), rig.lines().lug().offAxis(), tilt);
        PlanePoint lead = leadPoint(rig);
        PlanePoint direction = lug.directionTo(lead);
        return new LineGeometry(points.lines(tipping, rig.lines().lug(), tilt), direction, lug.lever(direction),
                lug.distance(lead));
    }

    /**
     * Length of the longest line from lug to lead.
     *
     * @return the length (m)
     */
    public double length() {
        return paths.stream().mapToDouble(p -> p.lead().minus(p.lug()).norm()).max().orElse(inPlane);
    }

    /**
     * Length of the longest line from lug to winch.
     *
     * @return the length (m)
     */
    public double toWinch() {
        return paths.stream().mapToDouble(GearPoints.LinePath::length).max().orElse(inPlane);
    }

    /**
     * Tension of each line, all pulled alike.
     *
     * @param total pull of all together in the lay-down plane (N)
     * @return the tension (N)
     */
    public double each(double total) {
        double shares = 0;
        for (GearPoints.LinePath path : paths) {
            shares += inPlane / path.lead().minus(path.lug()).norm();
        }
        return total / shares;
    }

    /**
     * Angle of the lines to the ground at the lug.
     *
     * @return the angle (rad)
     */
    public double angle() {
        return Math.atan2(direction.z(), -direction.x());
    }
}
