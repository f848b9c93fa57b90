// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Ring;
import bermwright.site.plan.BorrowGround;
import bermwright.terrain.earthworks.BorrowPit;
import bermwright.terrain.earthworks.BuiltGround;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FinerPatch;
import bermwright.terrain.grid.GridFrame;

/** A borrow ground: what it holds, how much of that is dug, and the ground left behind. */
public final class DugGround {
    private final BorrowGround borrow;
    private final BorrowPit pit;
    private final double usable;
    private final double used;

    DugGround(BorrowGround borrow, BorrowPit pit, double used) {
        this.borrow = borrow;
        this.pit = pit;
        this.usable = pit.bank() * borrow.yieldShare();
        this.used = used;
    }

    /** The same ground with so much of it used (bank m3). */
    DugGround withUsed(double volume) {
        return new DugGround(borrow, pit, volume);
    }

    /**
     * Which borrow ground.
     *
     * @return its id
     */
    public String from() {
        return borrow.id();
    }

    /**
     * What it can give: dug to its greatest depth, clear of what must not be undercut, times its yield.
     *
     * @return usable bank volume (m3)
     */
    public double usable() {
        return usable;
    }

    /**
     * What is taken.
     *
     * @return usable bank volume taken (m3)
     */
    public double used() {
        return used;
    }

    /**
     * How deep it is dug for that, strip by strip over its whole area.
     *
     * @return depth below the ground (m)
     */
    public double depth() {
        return used > 0 ? pit.depthFor(Math.min(pit.bank(), used / borrow.yieldShare())) : 0;
    }

    /**
     * The ground with this pit dug; made when asked.
     *
     * @param ground the ground before, on the grid that the earthworks were planned on
     * @return the ground after, with a finer patch where the pit is
     */
    public ElevationGrid dugIn(ElevationGrid ground) {
        ElevationGrid dug = pit.surface(depth());
        double[] taken = pit.surface(0).heights();
        double[] left = dug.heights();
        for (int i = 0; i < taken.length; i++) {
            taken[i] -= left[i];
        }
        ElevationGrid depths = dug.withHeights(taken);
        GridFrame pitNodes = dug.frame();
        ElevationGrid part = FinerPatch.over(ground, new Ring.Box(pitNodes.west(), pitNodes.south(),
                pitNodes.eastEdge(), pitNodes.northEdge()), BuiltGround.SPACING);
        GridFrame nodes = part.frame();
        double[] heights = part.heights();
        for (int i = 0; i < heights.length; i++) {
            double away = depths.height(nodes.east(i % nodes.columns()), nodes.north(i / nodes.columns()));
            heights[i] -= away > 0 ? away : 0;
        }
        return FinerPatch.put(ground, part.withHeights(heights));
    }
}
