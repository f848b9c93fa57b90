// SPDX-License-Identifier: Apache-2.0
/**
 * The least stable cover over hulls on given ground, and its depth over every point of skin.
 */
package bermwright.shielding.cover;
