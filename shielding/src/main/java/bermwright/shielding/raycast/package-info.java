// SPDX-License-Identifier: Apache-2.0
/**
 * Lengths and areal densities along rays leaving a point.
 */
package bermwright.shielding.raycast;
