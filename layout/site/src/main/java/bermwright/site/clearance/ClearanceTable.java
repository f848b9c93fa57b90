// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How far each hull, its sweep and the toe of its cover are in plan from what stands near them, for people to read.
 *
 * <p>What is judged stands in the findings: they look in space and at the moment, so that a sweep may cross in plan
 * what is not yet there or lies below it.
 */
public final class ClearanceTable {
    private static final Set<ShapeKind> MINE = EnumSet.of(ShapeKind.LYING, ShapeKind.SWEEP, ShapeKind.COVER_TOE);
    private static final Set<ShapeKind> THEIRS = EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.SWEEP,
            ShapeKind.COVER_TOE, ShapeKind.TUNNEL, ShapeKind.WALL, ShapeKind.CORRIDOR, ShapeKind.KEEP_OUT,
            ShapeKind.PAD, ShapeKind.BORROW, ShapeKind.STOCKPILE);

    private ClearanceTable() {
    }

    /**
     * One distance.
     *
     * @param hull     id of the hull
     * @param part     which part of it: hull, sweep or cover toe, in words
     * @param other    what it is measured to, in words
     * @param distance least distance in plan (m), true metres; nothing where they overlap
     * @param required distance that the plan asks for (m), nothing where they may touch
     * @param joined   whether the two are joined on purpose: a tunnel and its hull, a wall and the cover it holds
     */
    public record Row(String hull, String part, String other, double distance, double required, boolean joined) {
    }

    /**
     * The distances up to a reach, the nearest first; of an object of several outlines the nearest counts.
     *
     * @param shapes the outlines
     * @param reach  how far off an object is still shown (m)
     * @return the distances of pairs that a rule speaks of
     */
    public static List<Row> of(SiteShapes shapes, double reach) {
        List<Outlined> all = shapes.all().stream().filter(s -> THEIRS.contains(s.kind())).map(Outlined::new).toList();
        Map<String, Row> nearest = new LinkedHashMap<>();
        for (HullShapes hull : shapes.hulls()) {
            for (Shape mine : hull.shapes().stream().filter(s -> MINE.contains(s.kind())).toList()) {
                Outlined outlined = new Outlined(mine);
                for (Outlined other : all) {
                    PairRule rule = PairRules.of(mine.kind(), other.shape().kind());
                    rule = rule == null ? PairRules.of(other.shape().kind(), mine.kind()) : rule;
                    if (rule != null && !other.shape().subject().equals(mine.subject())) {
                        Row row = new Row(hull.hull().id(), mine.kind().word(), other.shape().title(),
                                shapes.metres().length(outlined.distance(other)),
                                required(shapes, rule, other.shape()),
                                joined(hull.hull(), other.shape().subject(), shapes));
                        if (row.distance <= reach) {
                            nearest.merge(row.hull + '\n' + row.part + '\n' + row.other, row,
                                    (a, b) -> a.distance <= b.distance ? a : b);
                        }
                    }
                }
            }
        }
        List<Row> rows = new ArrayList<>(nearest.values());
        rows.sort(Comparator.comparingDouble(Row::distance).thenComparing(Row::hull).thenComparing(Row::other));
        return rows;
    }

    private static boolean joined(Hull hull, String other, SiteShapes shapes) {
        return shapes.plan().tunnels().stream().anyMatch(t -> t.id().equals(other)
                && (HatchName.of(t.from()).hull().equals(hull.id()) || HatchName.of(t.to()).hull().equals(hull.id())))
                || hull.cover().map(c -> c.baseEndWall().filter(other::equals).isPresent()
                || c.farEndWall().filter(other::equals).isPresent()).orElse(false);
    }

    private static double required(SiteShapes shapes, PairRule rule, Shape other) {
        return switch (rule.kept()) {
            case HULL_SPACING -> shapes.plan().rules().hullSpacing();
            case BORROW_CLEAR -> shapes.plan().borrowGrounds().stream().filter(b -> b.id().equals(other.subject()))
                    .mapToDouble(BorrowGround::keepClear).findFirst().orElse(0);
            case NOTHING -> 0;
        };
    }
}
