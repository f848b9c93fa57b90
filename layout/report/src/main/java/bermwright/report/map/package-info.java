// SPDX-License-Identifier: Apache-2.0
/**
 * The plan drawing: ground, hulls, sweeps, gear, ways and numbered findings on one sheet with scale and both norths.
 */
package bermwright.report.map;
