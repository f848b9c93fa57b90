// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

/**
 * Squares of nodes, counted from the south-west corner of the file, that share what changes little over some metres:
 * soil, horizon and light.
 *
 * @param nodes   nodes along a side (1), at least 1
 * @param spacing true distance between nodes (m), positive
 */
record SurveySquares(int nodes, double spacing) {
    private static final double SIDE = 16;

    static SurveySquares of(double spacing) {
        return new SurveySquares(Math.max(1, (int) Math.round(SIDE / spacing)), spacing);
    }

    double side() {
        return nodes * spacing;
    }

    int of(int rowOrColumn) {
        return Math.floorDiv(rowOrColumn, nodes);
    }
}
