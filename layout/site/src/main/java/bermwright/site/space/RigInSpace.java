// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;
import bermwright.lowering.strength.Catenary;
import bermwright.site.gear.GearPlaces;
import bermwright.site.gear.Spot;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Where the gear of one hull is in space: the one place that turns its plan into points for the checks of clearance.
 *
 * <p>Gear stands on its own ground. A line that carries no load is kept from sagging more than a fiftieth of its
 * chord by its pretension; so does a line whose weight or tension is not known.
 */
public final class RigInSpace {
    /** Sag of a pretensioned line as a share of its chord (1), common practice, no source. */
    public static final double SLACK_SAG = 0.02;
    private static final double USUAL_POLE_RADIUS = 0.25;
    private final FallingHull falling;
    private final GroundBelow ground;
    private final Pull pull;
    private final List<LinePath> lines = new ArrayList<>();
    private final List<Pole> poles = new ArrayList<>();
    private final Map<LinePath, Convex> fans = new IdentityHashMap<>();

    /**
     * A pole.
     *
     * @param part   what people call it
     * @param foot   its foot
     * @param head   its head
     * @param radius its radius (m)
     */
    public record Pole(String part, Vec3 foot, Vec3 head, double radius) {
    }

    /** What the lines pull while the hull goes down. */
    public interface Pull {
        /**
         * Tension of one lowering line.
         *
         * @param tilt tilt (rad)
         * @return the tension (N), empty where it carries nothing or it is not known
         */
        OptionalDouble each(double tilt);

        /**
         * Tilt up to which the pull-over line works.
         *
         * @return the hand-over tilt (rad), empty where it is not known
         */
        OptionalDouble handOver();
    }

    private RigInSpace(FallingHull falling, GroundBelow ground, Pull pull) {
        this.falling = falling;
        this.ground = ground;
        this.pull = pull;
    }

    /**
     * The gear of a hull that is lowered.
     *
     * @param falling the hull on its way down
     * @param ground  the ground
     * @param gravity gravity (m/s2)
     * @param pull    what the lines pull
     * @return the gear; empty for a hull that is not lowered or has none
     */
    public static RigInSpace of(FallingHull falling, GroundBelow ground, double gravity, Pull pull) {
        RigInSpace rig = new RigInSpace(falling, ground, pull);
        Hull hull = falling.hull();
        if (hull.arrival() == Hull.Arrival.LOWERED) {
            hull.lowering().ifPresent(gear -> rig.gear(gear, gravity));
            rig.lines.forEach(l -> rig.fans.put(l, l.isMoving() ? l.fan(falling.wander()) : l.sheet(l.to(), 0)));
        }
        return rig;
    }

    private void gear(LoweringGear gear, double gravity) {
        GearPlaces places = GearPlaces.of(falling.hull());
        if (gear.means() == LoweringGear.Means.LINES) {
            gear.lines().ifPresent(lines -> places.lines().forEach(at -> line(places, at, lines, gravity)));
            double radius = gear.poles().map(p -> p.diameter().orElse(2 * USUAL_POLE_RADIUS)).orElse(0.0) / 2;
            places.poles().forEach(at -> poles.add(new Pole(at.name(), onGround(at.foot()), head(at), radius)));
            places.stays().forEach(at -> lines.add(new LinePath(at.name(), LinePath.Kind.STAY,
                    new LinePath.AtHead(head(places.poles().get(at.pole()))),
                    new LinePath.AtGround(onGround(at.anchor())), 0, falling.restTilt(), t -> SLACK_SAG)));
        }
        places.pullOver().ifPresent(at -> lines.add(new LinePath(at.name(), LinePath.Kind.PULL_OVER,
                new LinePath.AtLug(falling, new FallingHull.BodyPoint(at.lugFromBase(), 0, 0)),
                new LinePath.AtGround(onGround(at.winch())), 0,
                Math.min(falling.restTilt(), pull.handOver().orElse(Math.PI / 2)), t -> SLACK_SAG)));
    }

    private void line(GearPlaces places, GearPlaces.LinePlace at, LoweringGear.Lines set, double gravity) {
        double weight = set.line().massPerLength().orElse(Double.NaN) * gravity;
        LinePath.End lug = new LinePath.AtLug(falling,
                new FallingHull.BodyPoint(set.lugFromBase(), set.lugOffAxis(), at.lugLeft()));
        LinePath.End winch = new LinePath.AtGround(onGround(at.winch()));
        LinePath.End head = places.poles().stream().filter(p -> p.foot().equals(at.lead())).findFirst()
                .map(p -> (LinePath.End) new LinePath.AtHead(head(p))).orElse(winch);
        lines.add(new LinePath(at.name(), LinePath.Kind.LOWERING, lug, head, 0, falling.restTilt(),
                sag(weight, lug, head)));
        if (head != winch) {
            lines.add(new LinePath(at.name() + ", pole to winch", LinePath.Kind.WINCH, head, winch, 0,
                    falling.restTilt(), sag(weight, head, winch)));
        }
    }

    private DoubleUnaryOperator sag(double weight, LinePath.End from, LinePath.End to) {
        return tilt -> {
            OptionalDouble tension = pull.each(tilt);
            double chord = to.at(tilt, 0).minus(from.at(tilt, 0)).norm();
            return tension.isEmpty() || !(tension.getAsDouble() > 0) || !(weight >= 0) || !(chord > 0) ? SLACK_SAG
                    : Math.min(SLACK_SAG, Catenary.sag(weight, chord, tension.getAsDouble()) / chord);
        };
    }

    private Vec3 head(GearPlaces.PolePlace pole) {
        return onGround(pole.foot()).plus(Vec3.UP.times(pole.height()));
    }

    /** A place on the ground, given level ahead of the pivot line and to the left; on the bed where it is not known. */
    private Vec3 onGround(Spot spot) {
        Hull hull = falling.hull();
        Vec3 pivot = falling.pivot();
        TrueMetres metres = ground.metres();
        Vec3 at = metres.at(metres.moved(metres.plan(pivot), hull.layDownAzimuth(), spot.ahead(), spot.left()),
                pivot.z());
        double height = ground.height(at);
        return new Vec3(at.x(), at.y(), Double.isFinite(height) ? height : falling.onBed(at));
    }

    /**
     * The lines.
     *
     * @return lowering lines, stays and the pull-over line
     */
    public List<LinePath> lines() {
        return List.copyOf(lines);
    }

    /**
     * The convex body around one of the lines at all its tilts, but for the bulge between those looked at.
     *
     * @param line one of {@link #lines()}
     * @return the body
     */
    public Convex fan(LinePath line) {
        return fans.get(line);
    }

    /**
     * The poles.
     *
     * @return the poles
     */
    public List<Pole> poles() {
        return List.copyOf(poles);
    }
}
