// SPDX-License-Identifier: Apache-2.0
/**
 * From ground and wanted surface: cut and fill volumes, the new ground, and whether the slopes stand.
 *
 * <p>Volumes between two surfaces take each cell as four triangles that meet in its middle at the mean of its corners,
 * so that a whole cell holds its area times the mean of its four corners, as by hand. Cut, fill and the parts of
 * cells along an outline are exact for that shape. All areas and volumes are true: they take the grids' metre scale
 * into account.
 */
package bermwright.terrain.earthworks;
