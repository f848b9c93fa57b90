// SPDX-License-Identifier: Apache-2.0
/**
 * Plan objects as polygons, in metres east and north.
 */
package bermwright.site.footprint;
