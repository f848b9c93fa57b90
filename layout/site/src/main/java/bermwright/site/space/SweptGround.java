// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Ground that stands in the way of a falling hull, or beside it within its margin.
 *
 * <p>The ground on which a hull comes to lie touches it, so its clearance is measured level: how far the hull could be
 * off its path before it strikes. Ground counts where it stands over the bed by more than an allowance, and would stop
 * the hull, so far off, while it is still steeper than it may lie; beside the hull it also counts where it would catch
 * the round body more than thirty degrees up its flank. What lies under the hull and stops it later only pitches it:
 * that is the matter of the belly. Ground under the standing hull carries it, and behind the pivot line nothing comes
 * down: there, too, only what would catch a flank counts. Where the ground at the pivot line stands over the bed, the
 * hull stands higher by as much.
 */
public final class SweptGround {
    private static final double FLANK = 1 - Math.cos(Math.toRadians(30));
    private static final double BELLY_SHARE = 0.9;
    private static final double FINEST_STEP = 0.25;
    private static final double COARSEST_STEP = 1;
    /** Ground nearer than this touches (m). */
    private static final double LEAST_MARGIN = 1e-3;
    private final FallingHull falling;
    private final double allowance;
    private final double steepest;
    private SweptLevels steep;
    private SweptLevels all;

    /**
     * A falling hull over its bed.
     *
     * @param falling   the hull
     * @param allowance height over the bed that needs no care (m), zero or more
     * @param steepest  steepest slope at which the hull may lie against its bed (rad)
     */
    public SweptGround(FallingHull falling, double allowance, double steepest) {
        this.falling = falling;
        this.allowance = allowance;
        this.steepest = steepest;
    }

    /**
     * Ground in the way.
     *
     * @param distance level distance from the swept place (m), nothing where the hull strikes it
     * @param place    the ground
     * @param over     its height over the bed (m)
     * @param tilt     tilt at which the hull strikes it (rad); not a number where it stands beside
     * @param left     how far to the left of the lay-down plane it stands (m)
     */
    public record InTheWay(double distance, Vec3 place, double over, double tilt, double left) {
        private boolean isWorseThan(InTheWay other) {
            if (other == null || distance != other.distance) {
                return other == null || distance < other.distance;
            }
            return Double.isNaN(other.tilt) || tilt < other.tilt || tilt == other.tilt && over > other.over;
        }
    }

    /**
     * The worst of the ground.
     *
     * @param ground the ground
     * @param counts whether ground at a place counts
     * @return what stands in the way nearer than the margin; empty where nothing does
     */
    public Optional<InTheWay> worst(GroundBelow ground, Predicate<Vec3> counts) {
        double reach = falling.reach();
        double margin = falling.margin();
        double side = falling.hull().radius() + margin + reach * Math.sin(falling.wander());
        double step = Math.max(FINEST_STEP, Math.min(COARSEST_STEP, ground.spacing() / 2));
        InTheWay worst = null;
        Vec3 foot = falling.at(0, 0, 0);
        double higher = Math.max(0, falling.seen(new Vec3(foot.x(), foot.y(), ground.height(foot))).z());
        double free = allowance + (Double.isFinite(higher) ? higher : 0);
        int along = (int) Math.ceil((reach + margin) / step);
        int across = (int) Math.ceil(side / step);
        for (int i = -along; i <= along; i++) {
            for (int j = -across; j <= across; j++) {
                Vec3 on = falling.at(i * step, j * step, 0);
                Vec3 place = new Vec3(on.x(), on.y(), ground.height(on));
                Vec3 seen = falling.seen(place);
                if (seen.z() > free && !isUnderStanding(seen) && counts.test(place)) {
                    InTheWay found = at(place, seen, free);
                    worst = found != null && found.isWorseThan(worst) ? found : worst;
                }
            }
        }
        return Optional.ofNullable(worst);
    }

    private boolean isUnderStanding(Vec3 seen) {
        return Math.hypot(seen.x() + falling.hull().pivotAhead(), seen.y()) <= falling.hull().radius();
    }

    private InTheWay at(Vec3 place, Vec3 seen, double free) {
        if (steep == null) {
            steep = new SweptLevels(falling, falling.restTilt() - steepest);
            all = new SweptLevels(falling, falling.restTilt());
        }
        double margin = Math.max(falling.margin(), LEAST_MARGIN);
        double flank = free + FLANK * falling.hull().radius();
        double from = seen.x() < 0 ? flank : free;
        if (!(seen.z() > from)) {
            return null;
        }
        double distance = steep.distance(new Vec3(seen.x(), seen.y(), seen.z() - from), margin);
        boolean beside = Math.abs(seen.y()) > BELLY_SHARE * falling.hull().radius();
        if (distance > 0 && beside && seen.z() > flank) {
            distance = Math.min(distance, all.distance(new Vec3(seen.x(), seen.y(), seen.z() - flank), margin));
        }
        if (distance >= margin) {
            return null;
        }
        double tilt = distance > 0 ? Double.NaN : all.strikes(new Vec3(seen.x(), seen.y(), seen.z() - free));
        return new InTheWay(distance, place, seen.z(), tilt, seen.y());
    }
}
