// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.foundation.Vec3;
import bermwright.lowering.body.TippingBody;
import bermwright.site.gear.GearPlaces;
import bermwright.site.gear.Spot;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;

/**
 * A hull's lowering gear in space, in site coordinates: x east, y north, z up, all in the plan's reference system.
 *
 * <p>Heads, feet, winches and anchors are taken at any tilt, in which only lugs move; the body's
 * own points from {@link #body(double, double, double, double)}. Each part stands on its own ground; where the grid has
 * none, on the fitted plane carried on. Lines are straight: their sag comes on top. Statics reckons with the mean
 * height of what stands alike on both sides of the lay-down plane, see {@code GearPoints}.
 *
 * @param hull    the hull
 * @param tipping the body on its pivot
 * @param plane   the plane it is laid down in
 * @param places  where its gear stands in plan
 * @param ground  the ground
 */
public record GearInSpace(Hull hull, TippingBody tipping, LayPlane plane, GearPlaces places, ElevationGrid ground) {
    /** What a part is. */
    public enum Kind {
        /** A lowering line from lug to head or winch. */
        LINE,
        /** A lowering line from head to winch. */
        LINE_TO_WINCH,
        /** A pole from foot to head. */
        POLE,
        /** A stay from head to anchor. */
        STAY,
        /** The pull-over line from lug to winch. */
        PULL_OVER
    }

    /**
     * A straight part.
     *
     * @param kind what it is
     * @param name its name, such as {@code left pole}
     * @param from its end at the hull or on high: lug or head; of a pole its foot
     * @param to   its other end: head, winch or anchor
     */
    public record Part(Kind kind, String name, Vec3 from, Vec3 to) {
    }

    /**
     * A point of the body.
     *
     * @param along   distance from the base plane along the axis (m)
     * @param offAxis distance off the axis, positive to the lay-down side (m)
     * @param left    distance to the left of the lay-down plane (m)
     * @param tilt    tilt (rad), 0 standing
     * @return the point in site coordinates (m)
     */
    public Vec3 body(double along, double offAxis, double left, double tilt) {
        return plane.site(tipping.point(along, offAxis, tilt), left);
    }

    /**
     * A place on the ground, raised.
     *
     * @param spot  the place
     * @param above height over the ground there (m)
     * @return the point in site coordinates (m)
     */
    public Vec3 standing(Spot spot, double above) {
        double height = ground.height(plane.place(spot.ahead(), spot.left()));
        double level = Double.isFinite(height) ? height : plane.height() - spot.ahead() * Math.tan(plane.slopeAlong());
        return plane.place(spot.ahead(), spot.left()).at(level + above);
    }

    /**
     * The head of a pole.
     *
     * @param pole number of the pole, from 0 on the right
     * @return the head in site coordinates (m)
     */
    public Vec3 head(int pole) {
        GearPlaces.PolePlace place = places.poles().get(pole);
        return standing(place.foot(), place.height());
    }

    private void lines(LoweringGear.Lines lines, double tilt, List<Part> parts) {
        for (int i = 0; i < places.lines().size(); i++) {
            GearPlaces.LinePlace line = places.lines().get(i);
            Vec3 winch = standing(line.winch(), 0);
            Vec3 lead = places.poles().isEmpty() ? winch : head(places.reeving().orElseThrow().poleOf(i));
            parts.add(new Part(Kind.LINE, line.name(), body(lines.lugFromBase(), lines.lugOffAxis(), line.lugLeft(),
                    tilt), lead));
            if (!places.poles().isEmpty()) {
                parts.add(new Part(Kind.LINE_TO_WINCH, line.name(), lead, winch));
            }
        }
    }
}
