// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.ReferenceSystem;
import java.util.List;
import java.util.Optional;

/**
 * What a survey found.
 *
 * @param order   what was asked
 * @param ground  the region's ground in a few facts
 * @param map     the map of scores
 * @param places  the best places that do not overlap, best first
 * @param apart   how far apart they are at least (m)
 * @param soil    soil in the bank that the covers need (m3); zero where no cover is planned
 * @param tally   what became of the cells
 * @param notes   what its reader should know
 */
public record SurveyResult(SurveyOrder order, Ground ground, ScoreMap map, List<SurveyPlace> places, double apart,
        double soil, Tally tally, List<String> notes) {
    /** Copies the lists. */
    public SurveyResult {
        places = List.copyOf(places);
        notes = List.copyOf(notes);
    }

    /**
     * The region's ground.
     *
     * @param frame       where its nodes lie
     * @param trueSpacing true distance between nodes (m)
     * @param system      reference system; absent where it is not known
     */
    public record Ground(GridFrame frame, double trueSpacing, Optional<ReferenceSystem> system) {
    }

    /**
     * What became of the cells.
     *
     * @param cells     cells of the region (1)
     * @param headings  headings of each (1)
     * @param unknown   cells that are not known or taken (1)
     * @param noSoil    cells without soil enough within reach (1)
     * @param tooSteep  cells whose every heading is too steep or too near a pad (1)
     * @param tooRough  cells whose every heading is ruled out by bed, sweep, gear or lines (1)
     * @param noSight   cells from which a relay or the sun is not seen (1)
     * @param admitted  cells where the group can lie (1)
     * @param workedOut headings that no proven bound puts below the best of their cell (1)
     */
    public record Tally(long cells, int headings, long unknown, long noSoil, long tooSteep, long tooRough,
            long noSight, long admitted, long workedOut) {
        static Tally of(SurveyOrder order, long[] counts) {
            return new Tally(order.window().nodes(), order.limits().headings(),
                    counts[ScoredBlock.Count.UNKNOWN.ordinal()], counts[ScoredBlock.Count.NO_SOIL.ordinal()],
                    counts[ScoredBlock.Count.TOO_STEEP.ordinal()], counts[ScoredBlock.Count.TOO_ROUGH.ordinal()],
                    counts[ScoredBlock.Count.NO_SIGHT.ordinal()], counts[ScoredBlock.Count.ADMITTED.ordinal()],
                    counts[ScoredBlock.Count.WORKED_OUT.ordinal()]);
        }
    }
}
