// SPDX-License-Identifier: Apache-2.0
/**
 * Pictures of the ground: shading, slope bands, contour lines, as plain arrays and lines.
 */
package bermwright.terrain.relief;
