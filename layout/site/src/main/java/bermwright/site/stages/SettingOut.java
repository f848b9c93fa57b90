// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.foundation.Vec3;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Points to be staked out: toes, crest, bench corners, anchors, pole feet and pivots with east, north and height.
 *
 * <p>Toes are staked no farther apart than ten metres along their outline, and at its sharpest corners.
 */
public final class SettingOut {
    private static final double TOE_SPACING = 10;
    private static final double CREST_SPACING = 5;

    private final StagesInput input;
    private final ElevationGrid ground;
    private final List<SettingOutPoint> points = new ArrayList<>();

    private SettingOut(StagesInput input) {
        this.input = input;
        this.ground = input.ground();
    }

    /**
     * The points of a plan under its covers.
     *
     * @param input plan, ground and covers; the order of work is not asked for
     * @return the points, each name once
     */
    public static List<SettingOutPoint> of(StagesInput input) {
        SettingOut out = new SettingOut(input);
        SiteShapes shapes = SiteShapes.of(input.plan(), Optional.of(input.ground()), Map.of());
        shapes.hulls().forEach(out::hull);
        input.covers().forEach(out::cover);
        input.plan().preparations().forEach(out::preparation);
        Plan plan = input.plan();
        plan.borrowGrounds().forEach(b -> out.corners(b.id(), SettingOutPoint.Kind.BORROW, b.area()));
        plan.stockpiles().forEach(s -> out.corners(s.id(), SettingOutPoint.Kind.STOCKPILE, s.area()));
        plan.keepOuts().forEach(k -> out.corners(k.id(), SettingOutPoint.Kind.KEEP_OUT, k.area()));
        plan.landingPads().forEach(p -> out.add(p.id(), SettingOutPoint.Kind.PAD, "middle", p.centre()));
        return List.copyOf(out.points);
    }

    private void hull(HullShapes shapes) {
        Hull hull = shapes.hull();
        TrueMetres metres = ground.metres();
        if (hull.arrival() == Hull.Arrival.LOWERED) {
            double half = halfSpread(hull);
            if (half > 0) {
                add(hull.id(), SettingOutPoint.Kind.PIVOT, "right", hull.lyingAt(metres, 0, -half));
                add(hull.id(), SettingOutPoint.Kind.PIVOT, "left", hull.lyingAt(metres, 0, half));
            } else {
                add(hull.id(), SettingOutPoint.Kind.PIVOT, "rim", hull.lyingBase(metres));
            }
        }
        if (hull.arrival() != Hull.Arrival.STAYS_UPRIGHT) {
            axis(hull);
        }
        for (Shape shape : shapes.shapes()) {
            SettingOutPoint.Kind kind = switch (shape.kind()) {
                case ANCHOR -> SettingOutPoint.Kind.ANCHOR;
                case WINCH -> SettingOutPoint.Kind.WINCH;
                case POLE_FOOT -> SettingOutPoint.Kind.POLE_FOOT;
                default -> null;
            };
            if (kind != null) {
                add(hull.id(), kind, shape.part(), shape.outline().centre());
            }
        }
    }

    /** The ends of the axis as the hull comes to lie, and the ground right under them. */
    private void axis(Hull hull) {
        LyingPose.of(hull, ground).ifPresent(pose -> {
            Vec3 start = pose.axisStart();
            Vec3 end = lyingAt(pose, hull.length());
            add(hull.id(), SettingOutPoint.Kind.AXIS, "base", start.plan());
            add(hull.id(), SettingOutPoint.Kind.AXIS, "far", end.plan());
            points.add(new SettingOutPoint(hull.id() + "-axis-end-base", hull.id(), SettingOutPoint.Kind.AXIS_END,
                    start));
            points.add(new SettingOutPoint(hull.id() + "-axis-end-far", hull.id(), SettingOutPoint.Kind.AXIS_END, end));
        });
    }

    /** A place on the axis of a lying hull, in the plan's projected frame. */
    private Vec3 lyingAt(LyingPose pose, double along) {
        return ground.metres().moved(pose.axisStart(), pose.direction().times(along));
    }

    private static double halfSpread(Hull hull) {
        return switch (hull.pivot().kind()) {
            case RIM -> 0;
            case SHOES -> hull.pivot().halfSpread().orElse(0);
            case LEGS -> hull.pivot().footprintRadius().orElse(hull.radius())
                    * Math.sin(Math.PI / hull.pivot().count().orElse(4));
        };
    }

    private void cover(PlacedCover cover) {
        int number = 1;
        for (Ring toe : cover.toes()) {
            for (Point p : along(toe, ground.metres().onPlan(TOE_SPACING))) {
                add(cover.hull(), SettingOutPoint.Kind.TOE, String.format(Locale.ROOT, "%02d", number++), p);
            }
        }
        input.plan().hull(cover.hull()).ifPresent(hull -> crest(hull, cover));
    }

    private void crest(Hull hull, PlacedCover cover) {
        int pieces = (int) Math.ceil(hull.length() / CREST_SPACING);
        LyingPose.of(hull, ground).ifPresent(pose -> {
            for (int i = 0; i <= pieces; i++) {
                Point p = lyingAt(pose, hull.length() * i / pieces).plan();
                double height = cover.finished().height(p);
                if (height > ground.height(p)) {
                    points.add(new SettingOutPoint(String.format(Locale.ROOT, "%s-crest-%02d",
                            hull.id(), i + 1), hull.id(),
                            SettingOutPoint.Kind.CREST, p.at(height)));
                }
            }
        });
    }

    private void preparation(Preparation preparation) {
        int number = 1;
        for (Point p : preparation.area().corners()) {
            String id = preparation.id() + String.format(Locale.ROOT, "-corner-%02d", number++);
            points.add(new SettingOutPoint(id, preparation.id(), SettingOutPoint.Kind.PREPARATION,
                    new Vec3(p.east(), p.north(), preparation.level().orElse(ground.height(p)))));
        }
    }

    private void corners(String subject, SettingOutPoint.Kind kind, Ring area) {
        int number = 1;
        for (Point p : area.corners()) {
            add(subject, kind, String.format(Locale.ROOT, "%02d", number++), p);
        }
    }

    /** Places along an outline, evenly spaced and no farther apart than asked (projected m). */
    private static List<Point> along(Ring ring, double spacing) {
        List<Point> corners = ring.corners();
        double length = 0;
        for (int i = 0; i < corners.size(); i++) {
            length += corners.get(i).distance(corners.get((i + 1) % corners.size()));
        }
        int pieces = Math.max(3, (int) Math.ceil(length / spacing));
        List<Point> places = new ArrayList<>();
        double walked = 0;
        int next = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double piece = a.distance(b);
            while (next < pieces && next * length / pieces <= walked + piece && piece > 0) {
                double t = (next * length / pieces - walked) / piece;
                places.add(new Point(a.east() + t * (b.east() - a.east()), a.north() + t * (b.north() - a.north())));
                next++;
            }
            walked += piece;
        }
        return places;
    }

    private void add(String subject, SettingOutPoint.Kind kind, String name, Point place) {
        String id = subject + "-" + kind.word() + "-" + name.replace(' ', '-').replace(",", "");
        points.add(new SettingOutPoint(id, subject, kind, place.at(ground.height(place))));
    }
}
