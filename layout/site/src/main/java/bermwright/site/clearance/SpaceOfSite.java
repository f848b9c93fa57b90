// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.laydown.LoweringPull;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.space.GroundBelow;
import bermwright.site.space.HullInSpace;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The whole site in space; what did not change is not looked at again. */
final class SpaceOfSite {
    private final Plan plan;
    private final GroundBelow ground;
    private final Map<String, ElevationGrid> covers;
    private final Map<ElevationGrid, GroundBelow> surfaces = new IdentityHashMap<>();
    private final Map<HullShapes, HullInSpace> hulls = new IdentityHashMap<>();
    private final Map<HullShapes, List<Finding>> alone = new IdentityHashMap<>();
    private final Map<Two, List<Finding>> pairs = new HashMap<>();
    private final Map<String, HullInSpace> named = new HashMap<>();
    private final ThingsInSpace things;
    private final List<Finding> findings = new ArrayList<>();

    /** Two things compared, each the very same object. */
    private record Two(Object first, Object second) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Two two && two.first == first && two.second == second;
        }

        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(first) + System.identityHashCode(second);
        }
    }

    SpaceOfSite(SiteShapes shapes, Optional<ElevationGrid> grid, Map<String, ElevationGrid> covers,
            Optional<SpaceOfSite> before) {
        this.plan = shapes.plan();
        this.ground = before.map(b -> b.ground).orElseGet(() -> below(grid, shapes.metres()));
        this.covers = Map.copyOf(covers);
        SpacePairs compare = new SpacePairs(plan, ground);
        this.things = before.map(b -> b.things).orElseGet(() -> new ThingsInSpace(plan, ground, compare));
        StatedOrder order = new StatedOrder(plan);
        List<HullShapes> all = shapes.hulls();
        for (HullShapes one : all) {
            HullInSpace space = before.map(b -> b.hulls.get(one)).orElseGet(() -> HullInSpace.of(one.hull(), grid,
                    ground, plan.ground().gravity(), LoweringPull.of(plan, one.hull(), grid)));
            hulls.put(one, space);
            alone.put(one, before.map(b -> b.alone.get(one)).orElseGet(() -> alone(compare, space, grid.isPresent())));
            findings.addAll(alone.get(one));
        }
        all.forEach(one -> named.put(one.hull().id(), hulls.get(one)));
        all.forEach(one -> findings.addAll(things.tunnels(hulls.get(one), named)));
        for (int i = 0; i < all.size(); i++) {
            for (int j = 0; j < all.size(); j++) {
                HullShapes one = all.get(i);
                HullShapes other = all.get(j);
                if (i < j) {
                    Two two = new Two(one, other);
                    pairs.put(two, before.map(b -> b.pairs.get(two))
                            .orElseGet(() -> compare.compare(hulls.get(one), hulls.get(other))));
                    findings.addAll(pairs.get(two));
                }
                ElevationGrid mound = this.covers.get(other.hull().id());
                if (i != j && mound != null && !order.lowersBeforeCovering(one.hull().id(), other.hull().id())) {
                    Two two = new Two(one, mound);
                    pairs.put(two, before.map(b -> b.pairs.get(two)).orElseGet(() -> mound(one, other, before)));
                    findings.addAll(pairs.get(two));
                }
            }
        }
    }

    /** Ground for checks in space. */
    static GroundBelow below(Optional<ElevationGrid> grid, TrueMetres metres) {
        return grid.isPresent() ? GroundBelow.of(grid) : GroundBelow.level(metres);
    }

    private List<Finding> alone(SpacePairs compare, HullInSpace space, boolean isKnown) {
        List<Finding> found = new ArrayList<>(isKnown ? GroundInSpace.ground(plan, space, ground) : List.of());
        Hull hull = space.hull();
        found.addAll(things.areas(space));
        found.addAll(compare.walls(space, plan.walls().stream().filter(w -> hull.cover().map(c ->
                !c.baseEndWall().equals(Optional.of(w.id())) && !c.farEndWall().equals(Optional.of(w.id())))
                .orElse(true)).toList()));
        return found;
    }

    private List<Finding> mound(HullShapes falls, HullShapes covered, Optional<SpaceOfSite> before) {
        ElevationGrid grid = covers.get(covered.hull().id());
        GroundBelow surface = surfaces.computeIfAbsent(grid, g -> before.map(b -> b.surfaces.get(g))
                .orElseGet(() -> GroundBelow.of(Optional.of(g))));
        return GroundInSpace.mound(plan, hulls.get(falls), new GroundInSpace.Mound(covered.hull().id(), surface,
                ground, Finding.Level.WARN));
    }

    List<Finding> findings() {
        return findings;
    }

    /** Findings on corridors that gear closes, with how high the lines hang over them. */
    List<Finding> withHeights(List<Finding> found) {
        return found.stream().map(f -> things.withHeight(f, named)).toList();
    }

    /** Hulls whose finished cover is known in space. */
    Set<String> mounds() {
        return covers.keySet();
    }

    /** The ground with each known cover on it. */
    Map<String, ElevationGrid> covers() {
        return covers;
    }
}
