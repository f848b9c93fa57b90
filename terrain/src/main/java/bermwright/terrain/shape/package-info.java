// SPDX-License-Identifier: Apache-2.0
/**
 * Landforms given by a formula, to make test ground and berms.
 */
package bermwright.terrain.shape;
