// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Ring;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A site plan: the ground, what stands and lies on it, what is dug, who works there and how long people stay.
 *
 * @param title         the plan's title
 * @param ground        the ground and its soil
 * @param hulls         the landers
 * @param walls         walls that hold an end of a cover open
 * @param tunnels       connecting tunnels
 * @param keepOuts      areas nothing may touch
 * @param corridors     ways kept free
 * @param landingPads   pads
 * @param preparations  benches, trenches, ramps, pads and spoil grounds
 * @param borrowGrounds where soil is taken
 * @param stockpiles    where soil waits
 * @param machines      what digs and hauls
 * @param exposure      stay, sun, event and limits
 * @param rules         limits and design factors of this plan
 * @param orderOfWork   the steps of the work
 * @param arrangeWithin where hulls may be moved to by a search for arrangements; empty: anywhere on the ground
 * @param annotations          note, own keys and the keys given
 */
public record Plan(String title, GroundPlan ground, List<Hull> hulls, List<Wall> walls, List<Tunnel> tunnels,
        List<KeepOut> keepOuts, List<Corridor> corridors, List<LandingPad> landingPads,
        List<Preparation> preparations, List<BorrowGround> borrowGrounds, List<Stockpile> stockpiles,
        List<Machine> machines, ExposurePlan exposure, Rules rules, List<WorkStep> orderOfWork,
        Optional<Ring> arrangeWithin, Annotations annotations) {
    /** Copies the lists. */
    public Plan {
        hulls = List.copyOf(hulls);
        walls = List.copyOf(walls);
        tunnels = List.copyOf(tunnels);
        keepOuts = List.copyOf(keepOuts);
        corridors = List.copyOf(corridors);
        landingPads = List.copyOf(landingPads);
        preparations = List.copyOf(preparations);
        borrowGrounds = List.copyOf(borrowGrounds);
        stockpiles = List.copyOf(stockpiles);
        machines = List.copyOf(machines);
        orderOfWork = List.copyOf(orderOfWork);
    }

    /**
     * The hull with an id.
     *
     * @param id the id
     * @return the hull, empty where no hull has that id
     */
    public Optional<Hull> hull(String id) {
        return hulls.stream().filter(h -> h.id().equals(id)).findFirst();
    }

    /**
     * This plan with other hulls.
     *
     * @param others the hulls
     * @return the changed copy
     */
    public Plan withHulls(List<Hull> others) {
        return new Plan(title, ground, others, walls, tunnels, keepOuts, corridors, landingPads, preparations,
                borrowGrounds, stockpiles, machines, exposure, rules, orderOfWork, arrangeWithin, annotations);
    }

    /**
     * This plan with another order of work.
     *
     * @param steps the steps
     * @return the changed copy
     */
    public Plan withOrderOfWork(List<WorkStep> steps) {
        return new Plan(title, ground, hulls, walls, tunnels, keepOuts, corridors, landingPads, preparations,
                borrowGrounds, stockpiles, machines, exposure, rules, steps, arrangeWithin, annotations);
    }

    /**
     * This plan with one hull changed.
     *
     * @param id     the hull's id; where no hull has it the plan stays as it is
     * @param change the change
     * @return the changed copy
     */
    public Plan withHull(String id, UnaryOperator<Hull> change) {
        return withHulls(hulls.stream().map(h -> h.id().equals(id) ? change.apply(h) : h).toList());
    }
}
