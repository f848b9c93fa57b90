// SPDX-License-Identifier: Apache-2.0
/**
 * The balance of a hull on its pivot and its lines at one tilt, and of each pole head in space.
 */
package bermwright.lowering.statics;
