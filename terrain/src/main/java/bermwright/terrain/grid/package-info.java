// SPDX-License-Identifier: Apache-2.0
/**
 * The ground as an unchanging regular grid of heights: interpolate, slope, profile, line of sight.
 *
 * <p>Row 0 is the southernmost row of nodes, column 0 the westernmost. A missing height is {@code NaN}.
 * As a surface for rays each cell is two triangles, cut from its south-west to its north-east node.
 */
package bermwright.terrain.grid;
