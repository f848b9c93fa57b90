// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Machine;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/** Ways from every place of digging to every place of placing, around what stands or is to lie on the site. */
final class WayNet {
    private static final Set<ShapeKind> OBSTACLES = EnumSet.of(ShapeKind.KEEP_OUT, ShapeKind.WALL, ShapeKind.TUNNEL,
            ShapeKind.LYING);

    private final WayToNeed[][] ways;
    private final List<Optional<Machine>> machines;

    private WayNet(WayToNeed[][] ways, List<Optional<Machine>> machines) {
        this.ways = ways;
        this.machines = machines;
    }

    static WayNet of(EarthworksInput input, SiteShapes site, List<SoilOffer> offers, Progress progress) {
        List<Optional<Machine>> machines = input.needs().stream().map(n -> Hauler.of(input.plan(), n.to())).toList();
        WayToNeed[][] ways = new WayToNeed[offers.size()][input.needs().size()];
        Map<Machine, HaulGround> grounds = new LinkedHashMap<>();
        List<Ring> obstacles = obstacles(input, site);
        machines.forEach(m -> m.ifPresent(one -> grounds.computeIfAbsent(one,
                k -> HaulGround.of(input.ground(), HaulGround.Mover.of(k), obstacles))));
        AtomicInteger done = new AtomicInteger();
        IntStream.range(0, offers.size()).parallel().forEach(i -> {
            progress.check();
            Ring digging = offers.get(i).area();
            Map<Machine, Optional<HaulWays>> from = new LinkedHashMap<>();
            for (int j = 0; j < input.needs().size(); j++) {
                Ring placing = input.needs().get(j).mainOutline();
                Point middle = middle(input, input.needs().get(j));
                ways[i][j] = machines.get(j).map(machine -> {
                    HaulGround ground = grounds.get(machine);
                    return from.computeIfAbsent(machine, k -> from(ground, digging))
                            .map(w -> WayToNeed.over(ground, w, digging, new WayToNeed.Goal(placing, middle)))
                            .orElseGet(() -> WayToNeed.none(digging.centre()));
                }).orElseGet(() -> WayToNeed.straight(digging.centre(), middle,
                        input.ground().metres()));
            }
            progress.report((double) done.incrementAndGet() / offers.size(), "ways over the ground");
        });
        return new WayNet(ways, machines);
    }

    /** Soil for a hull goes to the hull's middle, even where covers run together; else to the outline's middle. */
    private static Point middle(EarthworksInput input, SoilNeed need) {
        return input.plan().hull(need.to()).map(h -> h.arrival() == Hull.Arrival.STAYS_UPRIGHT ? h.baseCentre()
                : h.bed(input.ground().metres()).centre())
                .orElseGet(() -> need.mainOutline().centre());
    }

    /** Ways from the open place nearest to the middle of the digging, empty where none of it is open. */
    private static Optional<HaulWays> from(HaulGround ground, Ring digging) {
        int start = ground.openNear(digging.centre(), Math.sqrt(digging.area()));
        return start < 0 ? Optional.empty() : Optional.of(HaulWays.from(ground, start));
    }

    private static List<Ring> obstacles(EarthworksInput input, SiteShapes shapes) {
        List<Ring> obstacles = standing(shapes);
        input.needs().stream().filter(n -> n.kind() == SoilNeed.Kind.COVER)
                .forEach(n -> obstacles.addAll(n.outlines()));
        return obstacles;
    }

    /** What stands on the site for good, and what may not be entered. */
    static List<Ring> standing(SiteShapes shapes) {
        List<Ring> obstacles = new ArrayList<>();
        for (Shape shape : shapes.all()) {
            boolean stays = shape.kind() == ShapeKind.STANDING && shapes.hull(shape.subject())
                    .filter(h -> h.hull().arrival() == Hull.Arrival.STAYS_UPRIGHT).isPresent();
            if (stays || OBSTACLES.contains(shape.kind())) {
                obstacles.add(shape.outline());
            }
        }
        return obstacles;
    }

    WayToNeed way(int offer, int need) {
        return ways[offer][need];
    }

    Optional<Machine> machine(int need) {
        return machines.get(need);
    }
}
