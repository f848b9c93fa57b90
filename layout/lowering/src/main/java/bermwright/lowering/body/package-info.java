// SPDX-License-Identifier: Apache-2.0
/**
 * The thing laid down: mass, centre of mass, pivot.
 */
package bermwright.lowering.body;
