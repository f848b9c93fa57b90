// SPDX-License-Identifier: Apache-2.0
package bermwright.site.egress;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.SiteRule;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.egress.WaysOut.WayToShelter;
import bermwright.site.footprint.HatchPlace;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.haulage.FootWays;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Station;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;

/** Looks for the way to the nearest storm shelter from every station, open hatch and place of work outside. */
final class WaysToShelter {
    private final Plan plan;
    private final TrueMetres metres;
    private final ElevationGrid surface;
    private final BiPredicate<Hull, Hatch> isOpen;
    private final List<FootWays.Door> doors = new ArrayList<>();
    private final Map<String, WayToShelter> within = new HashMap<>();
    private final FootWays ways;

    WaysToShelter(SiteShapes shapes, ElevationGrid surface, BiPredicate<Hull, Hatch> isOpen) {
        plan = shapes.plan();
        metres = shapes.metres();
        this.surface = surface;
        this.isOpen = isOpen;
        for (Hull hull : plan.hulls()) {
            for (Hatch hatch : hull.hatches()) {
                String name = name(hull, hatch);
                Optional<WayToShelter> in = isOpen.test(hull, hatch) ? inside(hull, HatchPlace.along(hull, hatch), name)
                        : Optional.empty();
                in.ifPresent(way -> {
                    within.put(name, way);
                    doors.add(door(hull, hatch, way.inside() / WaysOut.WALK_SPEED * WaysOut.OUTSIDE_SPEED));
                });
            }
        }
        ways = FootWays.to(doors, surface, shapes);
    }

    private static String name(Hull hull, Hatch hatch) {
        return HatchName.of(hull, hatch).toString();
    }

    private FootWays.Door door(Hull hull, Hatch hatch, double beyond) {
        Point place = HatchPlace.place(hull, hatch, metres);
        Azimuth along = hull.layDownAzimuth();
        Point ahead = switch (hatch.end()) {
            case BASE -> place.moved(along, -1, 0);
            case FAR -> place.moved(along, 1, 0);
            case SIDE -> place.moved(along, hull.arrival() == Hull.Arrival.STAYS_UPRIGHT
                    ? -Math.cos(hatch.around()) : 0, Math.sin(hatch.around()));
        };
        return new FootWays.Door(name(hull, hatch), place, ahead, beyond);
    }

    List<WayToShelter> all(List<Finding> findings) {
        List<WayToShelter> found = new ArrayList<>();
        if (plan.hulls().stream().flatMap(h -> h.stations().stream()).noneMatch(Station::stormShelter)) {
            return found;
        }
        for (Hull hull : plan.hulls()) {
            for (Station station : hull.stations()) {
                fromStation(hull, station, findings).ifPresent(found::add);
            }
            for (Hatch hatch : hull.hatches()) {
                if (isOpen.test(hull, hatch)) {
                    Optional.ofNullable(within.get(name(hull, hatch))).or(() -> fromHatch(hull, hatch,
                            name(hull, hatch), 0)).ifPresent(found::add);
                }
            }
        }
        plan.landingPads().forEach(p -> fromPlace(p.id(), p.centre(), p.radius(), findings).ifPresent(found::add));
        plan.borrowGrounds().forEach(b -> fromPlace(b.id(), b.area().centre(),
                metres.length(Math.sqrt(b.area().area())), findings).ifPresent(found::add));
        return found;
    }

    private Optional<WayToShelter> fromStation(Hull hull, Station station, List<Finding> findings) {
        String from = name(hull, station);
        Optional<WayToShelter> way = inside(hull, station.along(), from);
        if (way.isPresent()) {
            return way;
        }
        Optional<WayToShelter> best = Optional.empty();
        for (Hatch hatch : hull.hatches()) {
            Optional<WayToShelter> out = isOpen.test(hull, hatch)
                    ? fromHatch(hull, hatch, from, Math.abs(HatchPlace.along(hull, hatch) - station.along()))
                    : Optional.empty();
            best = out.isPresent() && (best.isEmpty() || out.get().seconds() < best.get().seconds()) ? out : best;
        }
        findings.add(Finding.of(SiteRule.SHELTER_UNREACHABLE, Level.WARN, from, Figures.NONE,
                "No storm shelter can be reached from this station without going outside"
                        + best.map(w -> String.format(Locale.ROOT, "; outside it is %.0f m to %s, %.0f minutes"
                                + " at %.1f m/s", w.distance(), w.shelter(), w.seconds() / 60, WaysOut.OUTSIDE_SPEED))
                                .orElse(", and none from outside either") + ".")
                .at(hull.baseCentre()));
        return best;
    }

    private static String name(Hull hull, Station station) {
        return hull.named(station.id());
    }

    private Optional<WayToShelter> fromHatch(Hull hull, Hatch hatch, String from, double before) {
        return ways.from(door(hull, hatch, 0)).map(w -> through(from, w, before));
    }

    private WayToShelter through(String from, FootWays.Way way, double before) {
        WayToShelter in = within.get(way.door().name());
        return new WayToShelter(from, in.shelter(), before + in.inside(), way.length(), way.places());
    }

    private Optional<WayToShelter> fromPlace(String id, Point place, double reach, List<Finding> findings) {
        if (doors.isEmpty()) {
            return Optional.empty();
        }
        if (!surface.frame().contains(place)) {
            return doors.stream().map(d -> through(id, new FootWays.Way(d, metres.distance(place, d.place()),
                    List.of(place, d.place())), 0)).min((a, b) -> Double.compare(a.seconds(), b.seconds()));
        }
        Optional<WayToShelter> way = ways.from(place, reach).map(w -> through(id, w, 0));
        if (way.isEmpty()) {
            findings.add(Finding.of(SiteRule.SHELTER_CUT_OFF, Level.WARN, id, Figures.NONE, String.format(Locale.ROOT,
                    "No way on foot was found from here to an open hatch with a shelter behind it, around hulls, walls"
                            + " and keep-outs and over ground no steeper than %.0f degrees.", FootWays.STEEPEST_DEG))
                            .at(place));
        }
        return way;
    }

    /** Shortest way over hatches and tunnels; few hulls, so plain relaxation is enough. */
    private Optional<WayToShelter> inside(Hull start, double along, String from) {
        Map<String, Double> reached = new HashMap<>();
        for (Hatch hatch : start.hatches()) {
            reached.put(name(start, hatch), Math.abs(HatchPlace.along(start, hatch) - along));
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
                    best = name(hull, station);
                }
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(new WayToShelter(from, best, shortest, 0, List.of()));
    }

    private static double distance(Hull hull, Station station, double direct, Map<String, Double> reached) {
        double best = direct;
        for (Hatch hatch : hull.hatches()) {
            Double at = reached.get(name(hull, hatch));
            best = at == null ? best : Math.min(best, at + Math.abs(HatchPlace.along(hull, hatch) - station.along()));
        }
        return best;
    }

    private boolean step(String mouth, String other, Map<String, Double> reached) {
        Double at = reached.get(mouth);
        Optional<Hull> hull = HatchName.of(other).hullIn(plan);
        Optional<Point> from = HatchPlace.of(plan, mouth, metres);
        Optional<Point> to = HatchPlace.of(plan, other, metres);
        if (at == null || hull.isEmpty() || from.isEmpty() || to.isEmpty()) {
            return false;
        }
        double there = at + metres.distance(from.get(), to.get());
        double mouthAlong = hull.get().hatches().stream().filter(h -> name(hull.get(), h).equals(other)).findFirst()
                .map(h -> HatchPlace.along(hull.get(), h)).orElse(0.0);
        boolean changed = false;
        for (Hatch hatch : hull.get().hatches()) {
            double way = there + Math.abs(HatchPlace.along(hull.get(), hatch) - mouthAlong);
            if (way < reached.getOrDefault(name(hull.get(), hatch), Double.POSITIVE_INFINITY) - 1e-9) {
                reached.put(name(hull.get(), hatch), way);
                changed = true;
            }
        }
        return changed;
    }
}
