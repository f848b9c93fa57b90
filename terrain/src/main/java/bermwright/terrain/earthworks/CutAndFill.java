// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.stream.IntStream;

/**
 * What is taken away and what is put on between two surfaces.
 *
 * <p>By grid prisms, the cells along an outline in part; exact for the surfaces' own shape (see the package). What the
 * grid leaves out, features smaller than a cell, is left out here. The error from heights of independent spread s is
 * about s times the square root of area times cell area, far below that of a shift of one whole surface.
 *
 * @param cut         volume where the later surface is lower (m3), zero or more
 * @param fill        volume where the later surface is higher (m3), zero or more
 * @param cutArea     area in which it is lower (m2)
 * @param fillArea    area in which it is higher (m2)
 * @param area        all of the area that both surfaces know (m2)
 * @param unknownArea area inside the outline where one of them is missing, or beyond the grid (m2)
 */
public record CutAndFill(double cut, double fill, double cutArea, double fillArea, double area, double unknownArea) {
    /** Nothing at all. */
    public static final CutAndFill NONE = new CutAndFill(0, 0, 0, 0, 0, 0);
    /** A share of an area that is rounding. */
    private static final double ROUNDING = 1e-9;

    /**
     * Between two surfaces inside an outline.
     *
     * @param before the earlier surface
     * @param after  the later surface, on the same nodes
     * @param area   the outline, not crossing itself, either way round
     * @return cut and fill
     * @throws IllegalArgumentException if the surfaces do not share their nodes and metre scale
     */
    public static CutAndFill between(ElevationGrid before, ElevationGrid after, Ring area) {
        requireSameNodes(before, after);
        GridFrame frame = before.frame();
        RingCells cells = new RingCells(frame, area);
        int rows = cells.lastRow() - cells.firstRow() + 1;
        CellSum sum = sum(before, after, Math.max(0, rows),
                (row, into) -> cells.visitRow(cells.firstRow() + row, into));
        CutAndFill inside = sum.result(before);
        double outside = area.area() * before.metreScale() * before.metreScale() - inside.area - inside.unknownArea;
        double beyond = outside > ROUNDING * (inside.area + outside) ? outside : 0;
        return new CutAndFill(inside.cut, inside.fill, inside.cutArea, inside.fillArea, inside.area,
                inside.unknownArea + beyond);
    }

    /**
     * Between two surfaces over the whole grid.
     *
     * @param before the earlier surface
     * @param after  the later surface, on the same nodes
     * @return cut and fill
     * @throws IllegalArgumentException if the surfaces do not share their nodes and metre scale
     */
    public static CutAndFill between(ElevationGrid before, ElevationGrid after) {
        requireSameNodes(before, after);
        int lastCell = before.frame().columns() - 2;
        return sum(before, after, before.frame().rows() - 1, (row, into) -> into.whole(row, 0, lastCell))
                .result(before);
    }

    /** Goes over one row of cells. */
    private interface RowVisit {
        void visit(int row, RingCells.Visitor into);
    }

    private static CellSum sum(ElevationGrid before, ElevationGrid after, int rows, RowVisit visit) {
        CellSum[] sums = new CellSum[rows];
        IntStream.range(0, rows).parallel().forEach(row -> {
            CellSum sum = new CellSum(before, after);
            visit.visit(row, sum);
            sums[row] = sum;
        });
        CellSum all = new CellSum(before, after);
        for (CellSum sum : sums) {
            all.add(sum);
        }
        return all;
    }

    static void requireSameNodes(ElevationGrid before, ElevationGrid after) {
        Require.that(before.frame().equals(after.frame()) && before.metreScale() == after.metreScale(),
                "the surfaces lie on different nodes: %s and %s.", before.frame(), after.frame());
    }

    /**
     * Both together.
     *
     * @return cut and fill (m3), zero or more
     */
    public double moved() {
        return cut + fill;
    }

    /**
     * What stands behind the volumes.
     *
     * @return the note
     */
    public static ModelNote note() {
        return new ModelNote("grid-prisms", "Cut and fill by grid prisms, the cells along an outline in part, exact for"
                + " the surface of the grid", "ground features larger than a cell of the grid",
                "spread of the heights times the square root of area times the patch over which errors are alike",
                ModelNote.Status.COMPUTED, "common practice, no source");
    }
}
