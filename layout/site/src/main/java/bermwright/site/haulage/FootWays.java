// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.footprint.SiteShapes;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shortest ways on foot over a surface to the best of several doors, around bodies, walls, keep-outs and ground too
 * steep to walk on.
 *
 * <p>Between a door and the nearest open ground ahead of it the way is straight, so that the narrow lane that is kept
 * clear there need not fall on the lattice. Slopes that are walked on at all are walked at one speed.
 */
public final class FootWays {
    /** Steepest ground walked on in a suit, in degrees; our own planning figure. */
    public static final double STEEPEST_DEG = 20;
    /** Width of the strip a person needs (m); our own planning figure. */
    private static final double WIDTH = 1;
    /** How far ahead of a door open ground is looked for (m). */
    private static final double AHEAD = 25;

    private final HaulGround ground;
    private final ElevationGrid surface;
    private final Map<Integer, Door> feet = new HashMap<>();
    private final Optional<HaulWays> ways;

    private FootWays(ElevationGrid surface, List<Ring> obstacles, List<Door> doors) {
        this.surface = surface;
        ground = HaulGround.of(surface, new HaulGround.Mover(WIDTH, Math.toRadians(STEEPEST_DEG), 0), obstacles);
        Map<Integer, Double> starts = new HashMap<>();
        for (Door door : doors) {
            int foot = foot(door);
            if (foot >= 0) {
                double cost = door.beyond + ground.distance(foot, door.place);
                if (!starts.containsKey(foot) || cost < starts.get(foot)) {
                    starts.put(foot, cost);
                    feet.put(foot, door);
                }
            }
        }
        ways = starts.isEmpty() ? Optional.empty() : Optional.of(HaulWays.lazily(ground, starts));
    }

    /**
     * A way in.
     *
     * @param name   its name
     * @param place  where it is
     * @param ahead  a place straight ahead of it; the same place where it faces no way, as in a crown
     * @param beyond length outside that takes as long as what follows inside (m), zero or more
     */
    public record Door(String name, Point place, Point ahead, double beyond) {
    }

    /**
     * A way over the ground.
     *
     * @param door   the door it leads to
     * @param length its length, up and down included (m)
     * @param places its bends from the start to the door, both included
     */
    public record Way(Door door, double length, List<Point> places) {
        /** Copies the list. */
        public Way {
            places = List.copyOf(places);
        }
    }

    /**
     * Ways over a surface to doors.
     *
     * @param doors   the doors
     * @param surface the surface people walk on, mounds included
     * @param shapes  what stands on it
     * @return the ways
     */
    public static FootWays to(List<Door> doors, ElevationGrid surface, SiteShapes shapes) {
        return new FootWays(surface, WayNet.standing(shapes), doors);
    }

    /**
     * The way from a place outside.
     *
     * @param start where it begins
     * @param reach how far off the nearest open ground may be (m)
     * @return the way to the door that is reached soonest, what lies beyond it included; empty where there is none
     */
    public Optional<Way> from(Point start, double reach) {
        int nearest = ground.openNear(start, surface.metres().onPlan(reach));
        if (nearest < 0 || ways.isEmpty()) {
            return Optional.empty();
        }
        // Of the lattice points about as near, the one on the way, so that nobody walks back first.
        double near = ground.place(nearest).distance(start) + surface.metres().onPlan(1.5 * ground.trueStep());
        return ground.openWithin(start, near).stream()
                .min(Comparator.comparingDouble(at -> ways.get().reach(at).costTo(at) + ground.distance(at, start)))
                .flatMap(at -> way(at, start));
    }

    /**
     * The way from a door that is no goal itself.
     *
     * @param start the door
     * @return the way; empty where there is none
     */
    public Optional<Way> from(Door start) {
        return way(foot(start), start.place);
    }

    private Optional<Way> way(int at, Point start) {
        if (at < 0 || ways.isEmpty() || !ways.get().reach(at).isReached(at)) {
            return Optional.empty();
        }
        PulledWay pulled = PulledWay.of(ground, ways.get(), ways.get().wayTo(at));
        Door door = feet.get(pulled.nodes().get(0));
        List<Point> places = new ArrayList<>(List.of(door.place));
        pulled.nodes().forEach(n -> places.add(ground.place(n)));
        places.add(start);
        Collections.reverse(places);
        double ends = ground.distance(pulled.nodes().get(0), door.place) + ground.distance(at, start);
        return Optional.of(new Way(door, pulled.levelled() + ends, WayToNeed.straightened(places)));
    }

    /** The first open lattice point straight ahead of a door; -1 where there is none near. */
    private int foot(Door door) {
        double away = door.place.distance(door.ahead);
        double step = surface.metres().onPlan(ground.trueStep());
        int found = -1;
        for (double way = 0; found < 0 && way <= surface.metres().onPlan(AHEAD); way += step / 2) {
            double share = away > 0 ? way / away : 0;
            Point on = new Point(door.place.east() + share * (door.ahead.east() - door.place.east()),
                    door.place.north() + share * (door.ahead.north() - door.place.north()));
            found = ground.openNear(on, away > 0 ? step : way);
        }
        return found;
    }
}
