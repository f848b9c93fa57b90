// SPDX-License-Identifier: Apache-2.0
/**
 * Solids a ray can cross, a sealed set: hull, mound, ground, slab.
 */
package bermwright.shielding.scene;
