// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.finding.Rule;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.laydown.LoweringPull;
import bermwright.site.plan.Hull;
import bermwright.site.space.GroundBelow;
import bermwright.site.space.HullInSpace;
import bermwright.site.space.Revolved;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Compares what moves or is rigged at one moment with what stands there at that moment. */
public final class LiveClearance {
    /** Notes that are more than that once the soil stands. */
    private static final Set<Rule> COVERS = Set.of(PairingRule.COVERS_RUN_TOGETHER, PairingRule.COVER_OVER_GEAR);
    private final SiteShapes site;
    private final GroundBelow bare;
    private final Map<String, HullInSpace> hulls;

    /**
     * A site whose moments are compared.
     *
     * @param site   its outlines
     * @param ground the ground without covers
     */
    public LiveClearance(SiteShapes site, ElevationGrid ground) {
        this.site = site;
        this.bare = GroundBelow.of(Optional.of(ground));
        this.hulls = site.plan().hulls().stream().collect(Collectors.toMap(Hull::id, h -> HullInSpace.of(h,
                Optional.of(ground), bare, site.plan().ground().gravity(),
                LoweringPull.of(site.plan(), h, Optional.of(ground))), (a, b) -> a));
    }

    /**
     * The site at a moment.
     *
     * @param standing ids of hulls that stand
     * @param lying    ids of hulls that lie
     * @param covers   the ground with what is placed of a cover, by hull id; only hulls with some soil placed
     */
    public record Moment(Set<String> standing, Set<String> lying, Map<String, ElevationGrid> covers) {
    }

    /**
     * Compares a hull that is lowered, its lines and its dangers, in space with what stands at that moment.
     *
     * @param lowered id of the hull
     * @param moment  the site at that moment
     * @return what was found, without what is a note only
     */
    public List<Finding> lowered(String lowered, Moment moment) {
        List<Finding> found = new ArrayList<>();
        HullInSpace falls = hulls.get(lowered);
        if (falls == null) {
            return found;
        }
        SpacePairs pairs = new SpacePairs(site.plan(), bare);
        hulls.forEach((id, other) -> {
            Optional<Revolved> body = id.equals(lowered) ? Optional.empty()
                    : moment.standing.contains(id) ? other.standing()
                    : moment.lying.contains(id) ? other.lying() : Optional.empty();
            boolean isUp = moment.standing.contains(id);
            body.ifPresent(b -> pairs.lowered(found, falls, other, List.of(new StatesInTime.State(id,
                    (isUp ? "standing hull " : "lying hull ") + id, b, isUp))));
        });
        moment.covers.forEach((id, surface) -> {
            if (!id.equals(lowered)) {
                found.addAll(GroundInSpace.mound(site.plan(), falls, new GroundInSpace.Mound(id,
                        GroundBelow.of(Optional.of(surface)), bare, Finding.Level.REFUSE)));
            }
        });
        return found.stream().filter(f -> f.level() == Finding.Level.REFUSE).toList();
    }

    /**
     * Compares outlines by the same rules as the whole site.
     *
     * @param live  what moves or is rigged
     * @param there what stands there
     * @return what was found between the two, not within either
     */
    public List<Finding> check(List<Shape> live, List<Shape> there) {
        // What stands there now is there now, whatever order the plan states.
        Set<String> inSpace = site.hulls().stream().map(HullShapes::hull).map(Hull::id).collect(Collectors.toSet());
        return new SitePairs(site.plan().withOrderOfWork(List.of()), site.metres(), inSpace)
                .compare(new OutlinedGroup(live), new OutlinedGroup(there)).stream()
                .filter(f -> f.level() != Finding.Level.NOTE || COVERS.contains(f.rule())).toList();
    }
}
