// SPDX-License-Identifier: Apache-2.0
package bermwright.site.egress;

import bermwright.foundation.Point;
import bermwright.site.exposure.SiteCover;
import bermwright.site.finding.Finding;
import bermwright.site.finding.Finding.Figures;
import bermwright.site.finding.Finding.Level;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Station;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.ElevationGrid;
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
 * straight through tunnels; outside they run straight over the surface, mounds included, and obstacles are not walked
 * round.
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
     */
    public record WayToShelter(String from, String shelter, double inside, double outside) {
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
     * @param plan  the plan
     * @param cover its cover, whose findings say which hatches are buried
     * @return the ways
     */
    public static WaysOut of(Plan plan, SiteCover cover) {
        Search search = new Search(plan, cover);
        Map<String, Integer> ways = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (Hull hull : plan.hulls()) {
            int count = search.ways(hull);
            ways.put(hull.id(), count);
            if (hull.cover().isPresent() && hull.hatches().isEmpty()) {
                findings.add(Finding.of("ways-out", Level.WARN, hull.id(), Figures.of(0, 2, "1"), "The plan states no"
                        + " hatch of the buried hull, so its ways out are not known; people need two.")
                        .at(hull.baseCentre()).from(TWO_WAYS));
            } else if (hull.cover().isPresent() && count < 2) {
                findings.add(Finding.of("ways-out", count == 0 ? Level.REFUSE : Level.WARN, hull.id(),
                        Figures.of(count, 2, "1"), String.format(Locale.ROOT, "The buried hull has %d independent"
                                + " way%s out; people need two. Keep a second end open, hold the soil there with a"
                                + " wall, or join it to another hull by a tunnel.", count, count == 1 ? "" : "s"))
                        .at(hull.baseCentre()).from(TWO_WAYS));
            }
        }
        List<WayToShelter> shelters = search.shelters(findings);
        for (WayToShelter way : shelters) {
            if (way.seconds() > WANTED_SECONDS) {
                findings.add(Finding.of("shelter-far", Level.WARN, way.from(),
                        Figures.of(way.seconds() / 60, WANTED_SECONDS / 60, "min"), String.format(Locale.ROOT,
                                "From here to the shelter %s people walk %.0f m, %.0f m of it outside at %.1f m/s: a"
                                        + " shelter nearer by, or a vehicle, is needed when an event begins.",
                                way.shelter(), way.distance(), way.outside(), OUTSIDE_SPEED))
                        .from("our own planning figure"));
            }
        }
        return new WaysOut(ways, shelters, findings);
    }

    /** Walks the hulls and tunnels. */
    private static final class Search {
        private final Plan plan;
        private final ElevationGrid surface;
        private final Set<String> buried = new HashSet<>();
        private final Map<String, List<Tunnel>> tunnels = new HashMap<>();

        Search(Plan plan, SiteCover cover) {
            this.plan = plan;
            surface = cover.finished();
            for (Finding finding : cover.findings()) {
                if (finding.rule().equals("cover-hatch-buried")) {
                    buried.add(finding.subject());
                }
            }
            for (Tunnel tunnel : plan.tunnels()) {
                tunnels.computeIfAbsent(tunnel.from(), k -> new ArrayList<>()).add(tunnel);
                tunnels.computeIfAbsent(tunnel.to(), k -> new ArrayList<>()).add(tunnel);
            }
        }

        private boolean isOpen(Hull hull, Hatch hatch) {
            String name = hull.id() + "/" + hatch.id();
            return !tunnels.containsKey(name) && !buried.contains(name);
        }

        int ways(Hull hull) {
            int count = 0;
            for (Hatch hatch : hull.hatches()) {
                boolean leadsOut = isOpen(hull, hatch);
                for (Tunnel tunnel : tunnels.getOrDefault(hull.id() + "/" + hatch.id(), List.of())) {
                    leadsOut |= leadsOut(other(tunnel, hull.id() + "/" + hatch.id()),
                            new HashSet<>(Set.of(hull.id())));
                }
                count += leadsOut ? 1 : 0;
            }
            return count;
        }

        private static String other(Tunnel tunnel, String mouth) {
            return tunnel.from().equals(mouth) ? tunnel.to() : tunnel.from();
        }

        private boolean leadsOut(String mouth, Set<String> seen) {
            Optional<Hull> hull = plan.hull(mouth.split("/", 2)[0]);
            if (hull.isEmpty() || !seen.add(hull.get().id())) {
                return false;
            }
            for (Hatch hatch : hull.get().hatches()) {
                String name = hull.get().id() + "/" + hatch.id();
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

        List<WayToShelter> shelters(List<Finding> findings) {
            List<WayToShelter> ways = new ArrayList<>();
            boolean any = plan.hulls().stream().flatMap(h -> h.stations().stream()).anyMatch(Station::stormShelter);
            if (!any) {
                return ways;
            }
            for (Hull hull : plan.hulls()) {
                for (Station station : hull.stations()) {
                    way(hull, station.along(), hull.id() + "/" + station.id(), findings).ifPresent(ways::add);
                }
                for (Hatch hatch : hull.hatches()) {
                    if (isOpen(hull, hatch)) {
                        String name = hull.id() + "/" + hatch.id();
                        nearest(hull, alongOf(hull, hatch), name).or(() -> outside(place(hull, hatch), name))
                                .ifPresent(ways::add);
                    }
                }
            }
            plan.landingPads().forEach(p -> outside(p.centre(), p.id()).ifPresent(ways::add));
            plan.borrowGrounds().forEach(b -> outside(b.area().centre(), b.id()).ifPresent(ways::add));
            return ways;
        }

        private static Point place(Hull hull, Hatch hatch) {
            return hull.lyingBase().moved(hull.layDownAzimuth(), alongOf(hull, hatch), 0);
        }

        /** The quickest way over open ground to an open hatch and from it inside to a shelter. */
        private Optional<WayToShelter> outside(Point start, String from) {
            Optional<WayToShelter> best = Optional.empty();
            for (Hull hull : plan.hulls()) {
                for (Hatch hatch : hull.hatches()) {
                    Optional<WayToShelter> in = isOpen(hull, hatch) ? nearest(hull, alongOf(hull, hatch), from)
                            : Optional.empty();
                    if (in.isPresent()) {
                        WayToShelter way = new WayToShelter(from, in.get().shelter(), in.get().inside(),
                                overGround(start, place(hull, hatch)));
                        best = best.isEmpty() || way.seconds() < best.get().seconds() ? Optional.of(way) : best;
                    }
                }
            }
            return best;
        }

        /** Length of the straight way over the surface, up and down (m); level where the ground is not known. */
        private double overGround(Point a, Point b) {
            int steps = (int) Math.max(1, Math.ceil(a.distance(b) / surface.frame().spacing()));
            double flat = a.distance(b) * surface.metreScale() / steps;
            double length = 0;
            double before = surface.height(a);
            for (int i = 1; i <= steps; i++) {
                double s = (double) i / steps;
                double here = surface.height(a.east() + s * (b.east() - a.east()),
                        a.north() + s * (b.north() - a.north()));
                double rise = here - before;
                length += Math.hypot(flat, Double.isNaN(rise) ? 0 : rise);
                before = here;
            }
            return length;
        }

        /** From a station out by the best open hatch and over the ground. */
        private Optional<WayToShelter> goingOut(Hull hull, double along, String from) {
            Optional<WayToShelter> best = Optional.empty();
            for (Hatch hatch : hull.hatches()) {
                Optional<WayToShelter> on = isOpen(hull, hatch) ? outside(place(hull, hatch), from) : Optional.empty();
                if (on.isPresent()) {
                    WayToShelter way = new WayToShelter(from, on.get().shelter(),
                            on.get().inside() + Math.abs(alongOf(hull, hatch) - along), on.get().outside());
                    best = best.isEmpty() || way.seconds() < best.get().seconds() ? Optional.of(way) : best;
                }
            }
            return best;
        }

        private Optional<WayToShelter> way(Hull hull, double along, String from, List<Finding> findings) {
            Optional<WayToShelter> found = nearest(hull, along, from);
            if (found.isEmpty()) {
                Optional<WayToShelter> out = goingOut(hull, along, from);
                findings.add(Finding.of("shelter-unreachable", Level.WARN, from, Figures.NONE,
                        "No storm shelter can be reached from this station without going outside"
                                + out.map(w -> String.format(Locale.ROOT, "; outside it is %.0f m to %s, %.0f minutes"
                                        + " at %.1f m/s", w.distance(), w.shelter(), w.seconds() / 60, OUTSIDE_SPEED))
                                        .orElse(", and none from outside either") + ".")
                        .at(hull.baseCentre()));
                return out;
            }
            return found;
        }

        private static double alongOf(Hull hull, Hatch hatch) {
            return hatch.end() == Hatch.End.BASE ? 0 : hatch.end() == Hatch.End.FAR ? hull.length() : hatch.along();
        }

        /** Shortest way over hatches; few hulls, so plain relaxation is enough. */
        private Optional<WayToShelter> nearest(Hull start, double along, String from) {
            Map<String, Double> reached = new HashMap<>();
            for (Hatch hatch : start.hatches()) {
                reached.put(start.id() + "/" + hatch.id(), Math.abs(alongOf(start, hatch) - along));
            }
            boolean changed = true;
            while (changed) {
                changed = false;
                for (Tunnel tunnel : plan.tunnels()) {
                    changed |= step(tunnel.from(), tunnel.to(), reached);
                    changed |= step(tunnel.to(), tunnel.from(), reached);
                }
            }
            String best = "";
            double shortest = Double.POSITIVE_INFINITY;
            for (Hull hull : plan.hulls()) {
                for (Station station : hull.stations()) {
                    double distance = !station.stormShelter() ? Double.POSITIVE_INFINITY
                            : distance(hull, station, hull == start ? Math.abs(station.along() - along)
                                    : Double.POSITIVE_INFINITY, reached);
                    if (distance < shortest) {
                        shortest = distance;
                        best = hull.id() + "/" + station.id();
                    }
                }
            }
            return best.isEmpty() ? Optional.empty()
                    : Optional.of(new WayToShelter(from, best, shortest, 0));
        }

        private static double distance(Hull hull, Station station, double direct, Map<String, Double> reached) {
            double best = direct;
            for (Hatch hatch : hull.hatches()) {
                Double at = reached.get(hull.id() + "/" + hatch.id());
                best = at == null ? best : Math.min(best, at + Math.abs(alongOf(hull, hatch) - station.along()));
            }
            return best;
        }

        private boolean step(String mouth, String other, Map<String, Double> reached) {
            Double at = reached.get(mouth);
            Optional<Hull> hull = plan.hull(other.split("/", 2)[0]);
            Optional<Hull> from = plan.hull(mouth.split("/", 2)[0]);
            if (at == null || hull.isEmpty() || from.isEmpty()) {
                return false;
            }
            double there = at + between(from.get(), mouth, hull.get(), other);
            boolean changed = false;
            for (Hatch hatch : hull.get().hatches()) {
                double way = there + Math.abs(alongOf(hull.get(), hatch) - alongOf(hull.get(), other));
                String name = hull.get().id() + "/" + hatch.id();
                if (way < reached.getOrDefault(name, Double.POSITIVE_INFINITY) - 1e-9) {
                    reached.put(name, way);
                    changed = true;
                }
            }
            return changed;
        }

        private static double alongOf(Hull hull, String mouth) {
            return hull.hatches().stream().filter(h -> mouth.endsWith("/" + h.id())).findFirst()
                    .map(h -> alongOf(hull, h)).orElse(0.0);
        }

        private static double between(Hull from, String mouth, Hull to, String other) {
            return from.lyingBase().moved(from.layDownAzimuth(), alongOf(from, mouth), 0)
                    .distance(to.lyingBase().moved(to.layDownAzimuth(), alongOf(to, other), 0));
        }
    }
}
