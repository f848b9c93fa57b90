// SPDX-License-Identifier: Apache-2.0
/**
 * Materials: density and composition, every figure with its source.
 */
package bermwright.shielding.material;
