// SPDX-License-Identifier: Apache-2.0
package bermwright.site.egress;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.SiteRule;
import bermwright.foundation.Point;
import bermwright.site.exposure.SiteCover;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.haulage.FootWays;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The ways out of every covered hull and the way to shelter from every station.
 *
 * <p>A way out is a hatch to the open that no soil closes, or a tunnel to a hull that has a way out of its own; two
 * ways are independent where they leave the hull by different hatches. Distances inside run along the hulls' axes and
 * straight through tunnels; outside they run over the surface, mounds included, around bodies, walls, keep-outs and
 * ground steeper than {@link FootWays#STEEPEST_DEG}.
 *
 * @param hulls    number of independent ways out by hull
 * @param shelters the way to the nearest storm shelter from each station, from each hull's open hatches and from the
 *                 places outside where people work: landing pads and borrow grounds
 * @param findings what is wrong
 */
public record WaysOut(Map<String, Integer> hulls, List<WayToShelter> shelters, List<Finding> findings) {
    /** Walking inside a hull or tunnel (m/s); our own planning figure. */
    public static final double WALK_SPEED = 1;
    /** Walking in a suit over open ground (m/s); our own planning figure. */
    public static final double OUTSIDE_SPEED = 0.6;
    /** Longer than this to a shelter is too long once an event begins (s); our own planning figure. */
    public static final double WANTED_SECONDS = 1800;
    private static final String TWO_WAYS = "common practice, no source: two independent ways out";

    /** Copies what it is given. */
    public WaysOut {
        hulls = Map.copyOf(hulls);
        shelters = List.copyOf(shelters);
        findings = List.copyOf(findings);
    }

    /**
     * One way to a shelter.
     *
     * @param from    where it begins, as {@code hull/station}, {@code hull/hatch} from outside, or a place's id
     * @param shelter the shelter, as {@code hull/station}
     * @param inside  length of the way inside hulls and tunnels (m)
     * @param outside length of the way over open ground (m)
     * @param way     its bends over open ground from its beginning on, in the plan's frame; empty where it stays
     *                inside, two places where it is taken straight since it begins off the known ground
     */
    public record WayToShelter(String from, String shelter, double inside, double outside, List<Point> way) {
        /** Copies the list. */
        public WayToShelter {
            way = List.copyOf(way);
        }

        /**
         * Length of the whole way.
         *
         * @return length (m)
         */
        public double distance() {
            return inside + outside;
        }

        /**
         * Time at walking speed, without time in locks.
         *
         * @return time (s)
         */
        public double seconds() {
            return inside / WALK_SPEED + outside / OUTSIDE_SPEED;
        }
    }

    /**
     * Looks for the ways.
     *
     * @param shapes the plan's outlines
     * @param cover  its cover, which says which hatches are buried
     * @return the ways
     */
    public static WaysOut of(SiteShapes shapes, SiteCover cover) {
        Plan plan = shapes.plan();
        Search search = new Search(plan, cover);
        Map<String, Integer> ways = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (Hull hull : plan.hulls()) {
            int count = search.ways(hull);
            ways.put(hull.id(), count);
            // A hatch that is not stated is no better than one that leads nowhere.
            Level none = hull.stations().isEmpty() ? Level.WARN : Level.REFUSE;
            if (hull.cover().isPresent() && hull.hatches().isEmpty()) {
                findings.add(Finding.of(SiteRule.WAYS_OUT, none, hull.id(), Figures.of(0, 2, "1"),
                        "The plan states no"
                        + " hatch of the buried hull, so its ways out are not known; two required.")
                        .at(hull.baseCentre()));
            } else if (hull.cover().isPresent() && count < 2) {
                findings.add(Finding.of(SiteRule.WAYS_OUT, count == 0 ? none : Level.WARN, hull.id(),
                        Figures.of(count, 2, "1"), String.format(Locale.ROOT, "The buried hull has %d independent"
                                + " way%s out; two required.", count, count == 1 ? "" : "s"))
                        .at(hull.baseCentre()));
            }
        }
        List<WayToShelter> shelters = new WaysToShelter(shapes, cover.finished(), search::isOpen).all(findings);
        for (WayToShelter way : shelters) {
            if (way.seconds() > WANTED_SECONDS) {
                findings.add(Finding.of(SiteRule.SHELTER_FAR, Level.WARN, way.from(),
                        Figures.of(way.seconds() / 60, WANTED_SECONDS / 60, "min"), String.format(Locale.ROOT,
                                "From here to the shelter %s people walk %.0f m, %.0f m of it outside at %.1f m/s,"
                                        + " %.0f minutes.",
                                way.shelter(), way.distance(), way.outside(), OUTSIDE_SPEED,
                                way.seconds() / 60)));
            }
        }
        return new WaysOut(ways, shelters, findings);
    }

    /** Walks the hulls and tunnels. */
    private static final class Search {
        private final Plan plan;
        private final Set<String> buried;
        private final Map<String, List<Tunnel>> tunnels = new HashMap<>();

        Search(Plan plan, SiteCover cover) {
            this.plan = plan;
            this.buried = cover.buriedHatches();
            for (Tunnel tunnel : plan.tunnels()) {
                tunnels.computeIfAbsent(tunnel.from(), k -> new ArrayList<>()).add(tunnel);
                tunnels.computeIfAbsent(tunnel.to(), k -> new ArrayList<>()).add(tunnel);
            }
        }

        boolean isOpen(Hull hull, Hatch hatch) {
            String name = HatchName.of(hull, hatch).toString();
            return !tunnels.containsKey(name) && !buried.contains(name);
        }

        int ways(Hull hull) {
            int count = 0;
            for (Hatch hatch : hull.hatches()) {
                String name = HatchName.of(hull, hatch).toString();
                boolean leadsOut = isOpen(hull, hatch);
                for (Tunnel tunnel : tunnels.getOrDefault(name, List.of())) {
                    leadsOut |= leadsOut(other(tunnel, name), new HashSet<>(Set.of(hull.id())));
                }
                count += leadsOut ? 1 : 0;
            }
            return count;
        }

        private static String other(Tunnel tunnel, String mouth) {
            return tunnel.from().equals(mouth) ? tunnel.to() : tunnel.from();
        }

        private boolean leadsOut(String mouth, Set<String> seen) {
            Optional<Hull> hull = HatchName.of(mouth).hullIn(plan);
            if (hull.isEmpty() || !seen.add(hull.get().id())) {
                return false;
            }
            for (Hatch hatch : hull.get().hatches()) {
                String name = HatchName.of(hull.get(), hatch).toString();
                if (isOpen(hull.get(), hatch)) {
                    return true;
                }
                for (Tunnel tunnel : tunnels.getOrDefault(name, List.of())) {
                    if (leadsOut(other(tunnel, name), seen)) {
                        return true;
                    }
                }
            }
            return false;
        }
    }
}
