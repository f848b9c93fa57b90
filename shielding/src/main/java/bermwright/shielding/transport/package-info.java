// SPDX-License-Identifier: Apache-2.0
/**
 * What becomes of those particles with depth in wall, regolith and tissue.
 */
package bermwright.shielding.transport;
