// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.Point;
import bermwright.lowering.body.PlanePoint;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.gear.GearPlaces;
import bermwright.site.laydown.LayPlane;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where body, lines and poles of a hull are at one tilt on its way down, from the side and from above.
 *
 * <p>From the side, points are those of the lay-down plane: along the fitted ground from the pivot line, and off it.
 * Leaves out how far lines sag and poles bend.
 *
 * @param tilt    tilt (rad), 0 standing
 * @param body    outline of the body from the side
 * @param centre  centre of mass from the side
 * @param ropes   lines, poles and stays from the side
 * @param shadow  outline of the body from above
 * @param above   lines, poles and stays from above
 */
public record HullAtTilt(double tilt, List<PlanePoint> body, PlanePoint centre, List<Rope> ropes,
        List<Point> shadow, List<RopeAbove> above) {
    private static final int STEPS_ALONG = 24;
    private static final int STEPS_AROUND = 24;

    /** Copies the lists. */
    public HullAtTilt {
        body = List.copyOf(body);
        ropes = List.copyOf(ropes);
        shadow = List.copyOf(shadow);
        above = List.copyOf(above);
    }

    /** What a straight piece of gear is. */
    public enum Gear {
        /** A lowering line. */
        LINE,
        /** The line that pulls the hull over its edge. */
        PULL_OVER,
        /** A pole. */
        POLE,
        /** A stay. */
        STAY
    }

    /**
     * A straight piece of gear from the side.
     *
     * @param gear what it is
     * @param from one end
     * @param to   the other end
     */
    public record Rope(Gear gear, PlanePoint from, PlanePoint to) {
    }

    /**
     * A straight piece of gear from above.
     *
     * @param gear what it is
     * @param from one end
     * @param to   the other end
     */
    public record RopeAbove(Gear gear, Point from, Point to) {
    }

    /**
     * A hull at a tilt.
     *
     * @param hull  the hull
     * @param plane the plane it is laid down in
     * @param tilt  tilt (rad), 0 standing
     * @return the hull at that tilt
     */
    public static HullAtTilt of(Hull hull, LayPlane plane, double tilt) {
        return new Picture(hull, plane, tilt).picture();
    }

    private record Picture(Hull hull, LayPlane plane, double tilt) {
        /** A body point as design gives it: x = s sin t + (n - d) cos t, z = s cos t - (n - d) sin t. */
        private PlanePoint at(double along, double off) {
            double n = off - hull.pivotAhead();
            return new PlanePoint(along * Math.sin(tilt) + n * Math.cos(tilt),
                    along * Math.cos(tilt) - n * Math.sin(tilt));
        }

        private Point seen(PlanePoint point, double left) {
            return plane.site(point, left).plan();
        }

        private HullAtTilt picture() {
            List<PlanePoint> body = new ArrayList<>();
            List<Point> spots = new ArrayList<>();
            for (int i = 0; i <= STEPS_ALONG; i++) {
                double s = hull.length() * i / STEPS_ALONG;
                double r = BodyProfile.radiusAt(hull, s);
                body.add(at(s, r));
                for (int j = 0; j < STEPS_AROUND; j++) {
                    double turn = 2 * Math.PI * j / STEPS_AROUND;
                    spots.add(seen(at(s, r * Math.cos(turn)), r * Math.sin(turn)));
                }
            }
            for (int i = STEPS_ALONG; i >= 0; i--) {
                double s = hull.length() * i / STEPS_ALONG;
                body.add(at(s, -BodyProfile.radiusAt(hull, s)));
            }
            List<Rope> ropes = new ArrayList<>();
            List<RopeAbove> above = new ArrayList<>();
            hull.lowering().filter(g -> g.means() == LoweringGear.Means.LINES)
                    .ifPresent(gear -> rig(gear, ropes, above));
            return new HullAtTilt(tilt, body, at(hull.centreOfMassFromBase(), hull.centreOfMassOffAxis()), ropes,
                    around(spots), above);
        }

        private void rig(LoweringGear gear, List<Rope> ropes, List<RopeAbove> above) {
            GearPlaces places = GearPlaces.of(hull);
            gear.lines().ifPresent(lines -> {
                PlanePoint lug = at(lines.lugFromBase(), lines.lugOffAxis());
                for (GearPlaces.LinePlace line : places.lines()) {
                    PlanePoint winch = new PlanePoint(line.winch().ahead(), 0);
                    PlanePoint lead = places.poles().isEmpty() ? winch : head(places.poles().get(0));
                    add(ropes, above, new Rope(Gear.LINE, lug, lead),
                            new double[] {line.lugLeft(), line.lead().left()});
                    if (!places.poles().isEmpty()) {
                        add(ropes, above, new Rope(Gear.LINE, lead, winch),
                                new double[] {line.lead().left(), line.winch().left()});
                    }
                }
            });
            for (GearPlaces.PolePlace pole : places.poles()) {
                double left = pole.foot().left();
                add(ropes, above, new Rope(Gear.POLE, new PlanePoint(pole.foot().ahead(), 0), head(pole)),
                        new double[] {left, left});
            }
            for (GearPlaces.StayPlace stay : places.stays()) {
                GearPlaces.PolePlace pole = places.poles().get(stay.pole());
                add(ropes, above, new Rope(Gear.STAY, head(pole), new PlanePoint(stay.anchor().ahead(), 0)),
                        new double[] {pole.foot().left(), stay.anchor().left()});
            }
            places.pullOver().ifPresent(pull -> add(ropes, above, new Rope(Gear.PULL_OVER, at(pull.lugFromBase(), 0),
                    new PlanePoint(pull.winch().ahead(), 0)), new double[] {0, pull.winch().left()}));
        }

        private static PlanePoint head(GearPlaces.PolePlace pole) {
            return new PlanePoint(pole.foot().ahead(), pole.height());
        }

        private void add(List<Rope> ropes, List<RopeAbove> above, Rope rope, double[] lefts) {
            if (!ropes.contains(rope)) {
                ropes.add(rope);
            }
            above.add(new RopeAbove(rope.gear(), seen(rope.from(), lefts[0]), seen(rope.to(), lefts[1])));
        }

        /** The convex outline around spots, anticlockwise. */
        private static List<Point> around(List<Point> spots) {
            List<Point> sorted = spots.stream()
                    .sorted(Comparator.comparingDouble(Point::east).thenComparingDouble(Point::north)).toList();
            List<Point> outline = new ArrayList<>();
            for (int pass = 0; pass < 2; pass++) {
                int start = outline.size();
                for (int i = 0; i < sorted.size(); i++) {
                    Point next = sorted.get(pass == 0 ? i : sorted.size() - 1 - i);
                    while (outline.size() >= start + 2 && !turnsLeft(outline.get(outline.size() - 2),
                            outline.get(outline.size() - 1), next)) {
                        outline.remove(outline.size() - 1);
                    }
                    outline.add(next);
                }
                outline.remove(outline.size() - 1);
            }
            return outline;
        }

        private static boolean turnsLeft(Point a, Point b, Point c) {
            return (b.east() - a.east()) * (c.north() - a.north()) - (b.north() - a.north()) * (c.east() - a.east())
                    > 1e-9;
        }
    }
}
