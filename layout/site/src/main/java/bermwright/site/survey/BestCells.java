// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.NodeRange;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The best cells of a region that lie far enough apart: the best of all, then the best of those that do not overlap
 * it, and so on. Of equal scores the one further south, then further west, comes first.
 *
 * <p>The best cell of each tile is known from the survey. Where it is too near a cell that was taken, the tile is
 * scored anew; so the result is that of looking at every cell, in the memory of one number for each tile.
 */
final class BestCells {
    private static final int TILE = ScoredBlock.TILE;

    private final SurveyOrder order;
    private final BlockScorer scorer;
    private final double apart;
    private final int across;
    private final float[] score;
    private final int[] cell;
    private final Map<Integer, Opened> opened = new HashMap<>();
    private final List<Cell> taken = new ArrayList<>();

    private record Opened(float[] scores, short[] headings) {
    }

    /** A cell of the file with the heading that is best there. */
    record Cell(int row, int column, int heading, float score) {
    }

    BestCells(SurveyOrder order, SurveySetup setup, double apartInCells) {
        this.order = order;
        this.apart = apartInCells;
        this.scorer = new BlockScorer(setup, TILE, true);
        across = (order.window().columns() - 1) / TILE + 1;
        int down = (order.window().rows() - 1) / TILE + 1;
        score = new float[Math.multiplyExact(down, across)];
        java.util.Arrays.fill(score, Float.NaN);
        cell = new int[score.length];
    }

    void put(ScoredBlock block) {
        int tilesAcross = (block.columns - 1) / TILE + 1;
        int firstRow = (block.firstRow - order.window().firstRow()) / TILE;
        int firstColumn = (block.firstColumn - order.window().firstColumn()) / TILE;
        for (int i = 0; i < block.tileScore.length; i++) {
            int tile = (firstRow + i / tilesAcross) * across + firstColumn + i % tilesAcross;
            score[tile] = block.tileScore[i];
            cell[tile] = block.tileCell[i];
        }
    }

    List<Cell> best(int count, Progress progress) {
        while (taken.size() < count) {
            progress.check();
            int tile = bestTile();
            if (tile < 0) {
                break;
            }
            int row = row(tile);
            int column = column(tile);
            Opened values = opened.computeIfAbsent(tile, this::open);
            if (isFree(row, column)) {
                int inTile = cell[tile];
                taken.add(new Cell(row, column, values.headings[inTile / TILE * nodes(tile).columns()
                        + inTile % TILE], score[tile]));
                progress.report((double) taken.size() / count, "choosing places that do not overlap");
            }
            findBest(tile, values);
        }
        return List.copyOf(taken);
    }

    private int bestTile() {
        int best = -1;
        for (int i = 0; i < score.length; i++) {
            if (!Float.isNaN(score[i]) && (best < 0 || score[i] > score[best] || score[i] == score[best]
                    && (row(i) < row(best) || row(i) == row(best) && column(i) < column(best)))) {
                best = i;
            }
        }
        return best;
    }

    private int row(int tile) {
        return order.window().firstRow() + tile / across * TILE + cell[tile] / TILE;
    }

    private int column(int tile) {
        return order.window().firstColumn() + tile % across * TILE + cell[tile] % TILE;
    }

    private NodeRange nodes(int tile) {
        int row = tile / across * TILE;
        int column = tile % across * TILE;
        return new NodeRange(order.window().firstRow() + row, order.window().firstColumn() + column,
                Math.min(TILE, order.window().rows() - row), Math.min(TILE, order.window().columns() - column));
    }

    private Opened open(int tile) {
        NodeRange nodes = nodes(tile);
        Opened values = new Opened(new float[(int) nodes.nodes()], new short[(int) nodes.nodes()]);
        scorer.cells(nodes, values.scores, values.headings);
        return values;
    }

    private boolean isFree(int row, int column) {
        for (Cell t : taken) {
            if (Math.hypot(row - t.row, column - t.column) < apart) {
                return false;
            }
        }
        return true;
    }

    private void findBest(int tile, Opened values) {
        NodeRange nodes = nodes(tile);
        score[tile] = Float.NaN;
        for (int i = 0; i < values.scores.length; i++) {
            int r = i / nodes.columns();
            int c = i % nodes.columns();
            if (!Float.isNaN(values.scores[i]) && !(score[tile] >= values.scores[i])
                    && isFree(nodes.firstRow() + r, nodes.firstColumn() + c)) {
                score[tile] = values.scores[i];
                cell[tile] = r * TILE + c;
            }
        }
    }

    /** The figures of a cell at its heading, and the borrow ground found near it. */
    BlockScorer at(Cell place) {
        scorer.fill(new NodeRange(place.row, place.column, 1, 1));
        return scorer;
    }
}
