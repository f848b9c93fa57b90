// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import java.util.List;
import java.util.Set;

/**
 * The work step by step.
 *
 * @param stages        the site after each step, in order
 * @param days          length of the work (days), of steps whose time is known
 * @param criticalChain ids of the steps of which any delay delays the end
 * @param unfinished    hulls whose cover the order of work does not bring to its full height
 * @param lifts         soil against height for each cover
 * @param settingOut    points to be staked out
 * @param notes         models behind the figures
 * @param findings      what was found
 */
public record StagesResult(List<Stage> stages, double days, List<String> criticalChain, Set<String> unfinished,
        List<LiftCurve> lifts, List<SettingOutPoint> settingOut, List<ModelNote> notes, List<Finding> findings) {
    /** Copies the lists. */
    public StagesResult {
        stages = List.copyOf(stages);
        criticalChain = List.copyOf(criticalChain);
        unfinished = Set.copyOf(unfinished);
        lifts = List.copyOf(lifts);
        settingOut = List.copyOf(settingOut);
        notes = List.copyOf(notes);
        findings = List.copyOf(findings);
    }

    /**
     * Soil against height of one cover.
     *
     * @param hull   the hull's id
     * @param points points from the bed to the top
     */
    public record LiftCurve(String hull, List<Point> points) {
        /** Copies the points. */
        public LiftCurve {
            points = List.copyOf(points);
        }

        /**
         * A point of the curve.
         *
         * @param height height over the hull's bed (m)
         * @param placed soil up to it (m3)
         */
        public record Point(double height, double placed) {
        }
    }
}
