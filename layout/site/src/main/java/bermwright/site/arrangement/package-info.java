// SPDX-License-Identifier: Apache-2.0
/**
 * Moves and turns hulls so that nothing refuses the plan and the work gets less; answers in plans, none better in all.
 *
 * <p>A coarse raster of places and headings gives starts, a solver searches from them over quick estimates, and
 * whoever runs the search brings the full assessment that every answer has to pass.
 */
package bermwright.site.arrangement;
