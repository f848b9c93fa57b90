// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.Point;
import bermwright.report.drawing.Dot;
import bermwright.report.section.HullSection;
import bermwright.report.section.UnrolledDepth;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.PassThrough;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;

/** What passes through a hull's cover or lies on its skin, as the sections and the unrolled map show it. */
final class PassageOutlines {
    /** How thick a thing on the skin is drawn (m). */
    private static final double ON_SKIN = 0.25;
    /** A section across shows what is this near to the cut (m). */
    private static final double NEAR = 1;
    private static final double STEP = 0.05;
    private static final double FARTHEST = 40;

    private final Hull hull;
    private final ElevationGrid finished;
    private final List<PassThrough> all;

    PassageOutlines(Hull hull, ElevationGrid finished) {
        this.hull = hull;
        this.finished = finished;
        this.all = hull.cover().map(CoverPlan::passThroughs).orElse(List.of()).stream()
                .filter(p -> p.along() <= hull.length()).toList();
    }

    /**
     * As seen from the side of the section along the axis.
     *
     * @param line  places of the ground under ways along the section
     * @param skin  the section's place of a place along the axis and up from it
     */
    List<HullSection.Passage> along(DoubleFunction<Point> line, BiFunction<Double, Double, Dot> skin) {
        List<HullSection.Passage> seen = new ArrayList<>();
        for (PassThrough one : all) {
            double up = BodyProfile.radiusAt(hull, one.along()) * Math.cos(one.around());
            Dot from = skin.apply(one.along() - one.length() / 2, up);
            Dot to = skin.apply(one.along() + one.length() / 2, up);
            double rise = rises(one) ? 1 : Math.cos(one.around());
            seen.add(new HullSection.Passage(one.id() + " (" + one.kind().word() + side(one) + ")",
                    outline(one, from, to, new Dot(0, rise), line), one.isVoid()));
        }
        return seen;
    }

    /**
     * As cut across.
     *
     * @param cut    where, from the base plane (m)
     * @param line   places of the ground under ways across, right positive
     * @param middle height of the axis at the cut (m)
     */
    List<HullSection.Passage> across(double cut, DoubleFunction<Point> line, double middle) {
        List<HullSection.Passage> seen = new ArrayList<>();
        for (PassThrough one : all) {
            if (Math.abs(one.along() - cut) > one.length() / 2 + NEAR) {
                continue;
            }
            double radius = BodyProfile.radiusAt(hull, one.along());
            double half = one.width() / 2 / Math.max(radius, ON_SKIN);
            Dot out = rises(one) ? new Dot(0, 1) : new Dot(-Math.sin(one.around()), Math.cos(one.around()));
            seen.add(new HullSection.Passage(one.id() + " (" + one.kind().word() + ", at "
                    + Words.fixed(one.along(), 1) + " m)", outline(one, onSkin(one.around() + half, radius, middle),
                    onSkin(one.around() - half, radius, middle), out, line), one.isVoid()));
        }
        return seen;
    }

    /** As patches of the unrolled skin. */
    List<UnrolledDepth.Patch> patches() {
        return all.stream().map(one -> new UnrolledDepth.Patch(one.id(), one.along(), Math.toDegrees(one.around()),
                one.length(), Math.toDegrees(one.width() / Math.max(BodyProfile.radiusAt(hull, one.along()), ON_SKIN))))
                .toList();
    }

    private static Dot onSkin(double turn, double radius, double middle) {
        return new Dot(-radius * Math.sin(turn), middle + radius * Math.cos(turn));
    }

    /** Whether it goes straight up instead of square to the skin. */
    private static boolean rises(PassThrough one) {
        return one.kind() == PassThrough.Kind.SHAFT && Math.cos(one.around()) > 0;
    }

    private static String side(PassThrough one) {
        double turn = Math.IEEEremainder(Math.toDegrees(one.around()), 360);
        return Math.abs(turn) < 1 ? "" : ", " + Words.fixed(Math.abs(turn), 0) + "° " + (turn > 0 ? "left" : "right");
    }

    /** From two places on the skin outwards: to the open for what passes through, a thin sheet for what lies on it. */
    private List<Dot> outline(PassThrough one, Dot from, Dot to, Dot out, DoubleFunction<Point> line) {
        boolean isThrough = !one.kind().isSpoiltBySoil();
        double way = isThrough ? Math.max(ON_SKIN, Math.max(open(from, out, line), open(to, out, line))) : ON_SKIN;
        return List.of(new Dot(from.x() + way * out.x(), from.y() + way * out.y()),
                new Dot(to.x() + way * out.x(), to.y() + way * out.y()), to, from);
    }

    private double open(Dot skin, Dot out, DoubleFunction<Point> line) {
        double way = 0;
        while (way < FARTHEST && finished.height(line.apply(skin.x() + way * out.x())) > skin.y() + way * out.y()) {
            way += STEP;
        }
        return way < FARTHEST ? way : ON_SKIN;
    }
}
