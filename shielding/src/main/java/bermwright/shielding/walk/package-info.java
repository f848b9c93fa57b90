// SPDX-License-Identifier: Apache-2.0
/**
 * Particles followed by chance through the real scene of one station: a second opinion on the fast doses.
 *
 * <p>Walks begin at the station and go back, against the way of time, to what came in from the sky; areal densities in
 * kg/m2, doses in Sv.
 */
package bermwright.shielding.walk;
