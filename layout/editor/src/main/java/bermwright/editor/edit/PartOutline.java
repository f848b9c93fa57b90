// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.site.plan.Stockpile;
import bermwright.site.plan.Wall;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** The corners that say where a part lies, read from a plan and put back into it. */
public final class PartOutline {
    private PartOutline() {
    }

    /**
     * The corners of a part: a ring's or line's corners, or the one place of a hull or pad.
     *
     * @param plan the plan
     * @param part the part
     * @return the corners in order; none where the part has no place of its own or is not in the plan
     */
    public static List<Point> corners(Plan plan, Part part) {
        String id = part.id();
        return switch (part.kind()) {
            case HULL -> plan.hull(id).map(h -> List.of(h.baseCentre())).orElse(List.of());
            case LANDING_PAD -> first(plan.landingPads(), p -> p.id().equals(id), p -> List.of(p.centre()));
            case KEEP_OUT -> first(plan.keepOuts(), k -> k.id().equals(id), k -> k.area().corners());
            case PREPARATION -> first(plan.preparations(), p -> p.id().equals(id), p -> p.area().corners());
            case BORROW_GROUND -> first(plan.borrowGrounds(), b -> b.id().equals(id), b -> b.area().corners());
            case STOCKPILE -> first(plan.stockpiles(), s -> s.id().equals(id), s -> s.area().corners());
            case CORRIDOR -> first(plan.corridors(), c -> c.id().equals(id), Corridor::line);
            case WALL -> first(plan.walls(), w -> w.id().equals(id), Wall::line);
            default -> List.of();
        };
    }

    /**
     * The fewest corners a part can have.
     *
     * @param kind its kind
     * @return 3 for rings, 2 for lines, 1 for places, 0 where it has none
     */
    public static int fewestCorners(Part.Kind kind) {
        return switch (kind) {
            case KEEP_OUT, PREPARATION, BORROW_GROUND, STOCKPILE -> 3;
            case CORRIDOR, WALL -> 2;
            case HULL, LANDING_PAD -> 1;
            default -> 0;
        };
    }

    /**
     * A plan with other corners for a part.
     *
     * @param plan    the plan
     * @param part    the part; where it is not in the plan the plan stays as it is
     * @param corners the new corners, as many as the part needs at least
     * @return the changed plan
     */
    public static Plan withCorners(Plan plan, Part part, List<Point> corners) {
        String id = part.id();
        Point place = corners.get(0);
        return switch (part.kind()) {
            case HULL -> plan.withHull(id, h -> h.withBaseCentre(place));
            case LANDING_PAD -> PlanParts.withLandingPads(plan, changed(plan.landingPads(), p -> p.id().equals(id),
                    p -> new LandingPad(id, place, p.radius(), p.standOff(), p.annotations())));
            case KEEP_OUT -> PlanParts.withKeepOuts(plan, changed(plan.keepOuts(), k -> k.id().equals(id),
                    k -> new KeepOut(id, k.kind(), new Ring(corners), k.height(), k.annotations())));
            case PREPARATION -> PlanParts.withPreparations(plan, changed(plan.preparations(), p -> p.id().equals(id),
                    p -> new Preparation(id, p.kind(), new Ring(corners), p.level(), p.greatestGrade(),
                            p.sideSlope(), p.annotations())));
            case BORROW_GROUND -> PlanParts.withBorrowGrounds(plan, changed(plan.borrowGrounds(),
                    b -> b.id().equals(id), b -> new BorrowGround(id, new Ring(corners), b.greatestDepth(),
                            b.sideSlope(), b.yieldShare(), b.keepClear(), b.annotations())));
            case STOCKPILE -> PlanParts.withStockpiles(plan, changed(plan.stockpiles(), s -> s.id().equals(id),
                    s -> new Stockpile(id, new Ring(corners), s.annotations())));
            case CORRIDOR -> PlanParts.withCorridors(plan, changed(plan.corridors(), c -> c.id().equals(id),
                    c -> new Corridor(id, c.width(), c.greatestGrade(), corners, c.annotations())));
            case WALL -> PlanParts.withWalls(plan, changed(plan.walls(), w -> w.id().equals(id),
                    w -> new Wall(id, corners, w.height(), w.thickness(), w.annotations())));
            default -> plan;
        };
    }

    private static <T> List<Point> first(List<T> all, Predicate<T> wanted, Function<T, List<Point>> corners) {
        return all.stream().filter(wanted).findFirst().map(corners).orElse(List.of());
    }

    private static <T> List<T> changed(List<T> all, Predicate<T> wanted, UnaryOperator<T> change) {
        return all.stream().map(one -> wanted.test(one) ? change.apply(one) : one).toList();
    }
}
