// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Several parts put in order together, as one step. */
public final class Arranged {
    private Arranged() {
    }

    private static Point middle(Plan plan, Part part) {
        List<Point> corners = PartOutline.corners(plan, part);
        return new Point(corners.stream().mapToDouble(Point::east).average().orElse(0),
                corners.stream().mapToDouble(Point::north).average().orElse(0));
    }

    private static List<Part> placed(Plan plan, List<Part> parts) {
        return parts.stream().filter(p -> !PartOutline.corners(plan, p).isEmpty()).toList();
    }

    private static String words(String what, List<Part> parts) {
        return what + " " + (parts.size() == 1 ? parts.get(0).words() : parts.size() + " things");
    }

    /**
     * Moves parts by the same way.
     *
     * @param parts the parts
     * @param east  how far east (m)
     * @param north how far north (m)
     * @return the edit
     */
    public static PlanEdit moved(List<Part> parts, double east, double north) {
        return new Together(words("Move", parts), parts.stream().map(p -> (PlanEdit) new Move(p, east, north))
                .toList());
    }

    /**
     * Turns parts about their common middle; hulls lay down another way with them.
     *
     * @param plan  the plan
     * @param parts the parts
     * @param turn  clockwise turn (rad)
     * @return the edit
     */
    public static PlanEdit turned(Plan plan, List<Part> parts, double turn) {
        List<Part> placed = placed(plan, parts);
        double east = placed.stream().mapToDouble(p -> middle(plan, p).east()).average().orElse(0);
        double north = placed.stream().mapToDouble(p -> middle(plan, p).north()).average().orElse(0);
        List<PlanEdit> edits = new ArrayList<>();
        for (Part part : placed) {
            List<Point> corners = PartOutline.corners(plan, part);
            for (int i = 0; i < corners.size(); i++) {
                double e = corners.get(i).east() - east;
                double n = corners.get(i).north() - north;
                edits.add(new ShiftCorner(part, i, new Point(east + e * Math.cos(turn) + n * Math.sin(turn),
                        north - e * Math.sin(turn) + n * Math.cos(turn))));
            }
            plan.hull(part.id()).filter(h -> part.kind() == Part.Kind.HULL)
                    .ifPresent(h -> edits.add(new Turn(h.id(), h.layDownAzimuth().turned(turn))));
        }
        return new Together(words("Turn", placed), edits);
    }

    /**
     * Puts parts in one line with the first: the line runs square to its lay-down way for a hull, else east and west.
     *
     * @param plan  the plan
     * @param parts the parts, the first stays
     * @return the edit
     */
    public static PlanEdit aligned(Plan plan, List<Part> parts) {
        List<Part> placed = placed(plan, parts);
        Point first = middle(plan, placed.get(0));
        Azimuth way = way(plan, placed.get(0));
        return new Together(words("Align", placed), placed.stream().skip(1).map(p -> {
            double ahead = along(first, way, middle(plan, p));
            return (PlanEdit) new Move(p, -ahead * way.east(), -ahead * way.north());
        }).toList());
    }

    /** The way that what is aligned with a part must not stand ahead of it in. */
    private static Azimuth way(Plan plan, Part part) {
        return plan.hull(part.id()).filter(h -> part.kind() == Part.Kind.HULL).map(Hull::layDownAzimuth)
                .orElse(new Azimuth(0));
    }

    /**
     * Lays hulls down the same way as the first.
     *
     * @param plan  the plan
     * @param parts the parts, the first stays as it is
     * @return the edit; nothing is done to what is no hull
     */
    public static PlanEdit parallel(Plan plan, List<Part> parts) {
        return new Together(words("Lay parallel", parts), parts.stream().skip(1)
                .filter(p -> p.kind() == Part.Kind.HULL)
                .map(p -> (PlanEdit) new Turn(p.id(), way(plan, parts.get(0)))).toList());
    }

    /**
     * Spreads parts evenly between the two that are farthest apart.
     *
     * @param plan  the plan
     * @param parts three parts or more
     * @return the edit
     */
    public static PlanEdit spread(Plan plan, List<Part> parts) {
        List<Part> placed = placed(plan, parts);
        Part from = placed.get(0);
        Part to = placed.get(0);
        for (Part one : placed) {
            for (Part other : placed) {
                if (middle(plan, one).distance(middle(plan, other))
                        > middle(plan, from).distance(middle(plan, to))) {
                    from = one;
                    to = other;
                }
            }
        }
        Point start = middle(plan, from);
        Point end = middle(plan, to);
        Azimuth way = start.distance(end) > 0 ? Azimuth.from(start, end) : new Azimuth(0);
        List<Part> along = placed.stream().sorted(Comparator.comparingDouble(p -> along(start, way, middle(plan, p))))
                .toList();
        List<PlanEdit> edits = new ArrayList<>();
        for (int i = 1; i + 1 < along.size(); i++) {
            double wanted = start.distance(end) * i / (along.size() - 1);
            double off = wanted - along(start, way, middle(plan, along.get(i)));
            edits.add(new Move(along.get(i), off * way.east(), off * way.north()));
        }
        return new Together(words("Spread", placed), edits);
    }

    private static double along(Point start, Azimuth way, Point at) {
        return (at.east() - start.east()) * way.east() + (at.north() - start.north()) * way.north();
    }
}
