// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.site.plan.Plan;

/**
 * An arrangement that the full assessment does not refuse.
 *
 * @param plan    the plan with its hulls moved and turned
 * @param figures what the full assessment gives for it
 * @param step    step of the search that found it; 0 for the plan as it was given
 */
public record Arrangement(Plan plan, Figures figures, int step) {
}
