// SPDX-License-Identifier: Apache-2.0
/**
 * From ground and wanted surface: cut and fill volumes, the new ground, and whether the slopes stand.
 */
package bermwright.terrain.earthworks;
