// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.site.plan.BorrowGround;
import bermwright.terrain.earthworks.BorrowPit;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;

/** A borrow ground: what it holds, how much of that is dug, and the ground left behind. */
public final class DugGround {
    private final BorrowGround borrow;
    private final BorrowPit pit;
    private final GridFrame window;
    private final double usable;
    private final double used;

    DugGround(BorrowGround borrow, BorrowPit pit, GridFrame window, double used) {
        this.borrow = borrow;
        this.pit = pit;
        this.window = window;
        this.usable = pit.bank() * borrow.yieldShare();
        this.used = used;
    }

    /** The same ground with so much of it used (bank m3). */
    DugGround withUsed(double volume) {
        return new DugGround(borrow, pit, window, volume);
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
     * The strips to its greatest depth, from the top.
     *
     * @return the strips, with their bank volumes before the yield
     */
    public List<BorrowPit.Strip> strips() {
        return pit.strips();
    }

    /**
     * The ground with this pit dug; made when asked.
     *
     * @param ground the ground before, on the grid that the earthworks were planned on
     * @return the ground after
     */
    public ElevationGrid dugIn(ElevationGrid ground) {
        GridFrame frame = ground.frame();
        int rowOffset = (int) Math.round((window.south() - frame.south()) / frame.spacing());
        int columnOffset = (int) Math.round((window.west() - frame.west()) / frame.spacing());
        ElevationGrid natural = pit.surface(0);
        ElevationGrid dug = pit.surface(depth());
        double[] heights = ground.heights();
        for (int row = 0; row < window.rows(); row++) {
            for (int column = 0; column < window.columns(); column++) {
                double taken = natural.nodeHeight(row, column) - dug.nodeHeight(row, column);
                if (taken > 0) {
                    heights[(row + rowOffset) * frame.columns() + column + columnOffset] -= taken;
                }
            }
        }
        return ground.withHeights(heights);
    }
}
