// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.arrangement.ArrangedSite.Turned;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.shape.MadeGround;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Plans set out by hand on invented grounds: one hull along the pit's west edge and one along its south edge, as near
 * as toe and edge let them, gear clear of the boulders. From both hulls at one spot far off, the search needs no more
 * hours than a person.
 */
class HandMadePlansLawTest {
    private static final MadeGround.Recipe GENTLE = new MadeGround.Recipe(2.5, 400, 0.85, 0.05, 60, 0, 3);
    private static final int NODES = 403;
    private static final int STEPS = 2;
    private static final Set<Integer> BOTH = Set.of(0, 1);

    private static ArrangedSite site(long seed, Hull a, Hull b) {
        GridFrame frame = new GridFrame(NODES, NODES, 0, 0, 1);
        double[] heights = new double[NODES * NODES];
        new MadeGround(frame, GENTLE, seed).read(NodeRange.all(frame), heights);
        return ArrangedSite.of(Turned.NOT, Optional.empty(), List.of(a, b)).on(ElevationGrid.of(frame, heights));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 5, 6})
    void theSearchTakesNoMoreHoursThanAPlanMadeByHand(long seed) {
        ArrangedSite made = site(seed, Turned.NOT.hull("A", 275, 245, 0), Turned.NOT.hull("B", 330, 157, 90));
        QuickSite quick = made.quick(BOTH);
        assertTrue(quick.of(made.plan().hulls().stream().map(Pose::of).toList()).isAllowed(), "by hand");
        Judge.Verdict byHand = ArrangedSite.judged(quick, made.plan());
        assertEquals(List.of(), byHand.refusals(), "by hand");
        ArrangementSearch.Found found = site(seed, Turned.NOT.hull("A", 60, 60, 0), Turned.NOT.hull("B", 60, 60, 0))
                .search(seed, STEPS);
        double hours = found.arrangements().get(0).figures().hours().orElseThrow();
        assertTrue(hours <= byHand.figures().hours().orElseThrow(), hours + " h, by hand "
                + byHand.figures().hours().orElseThrow());
    }
}
