// SPDX-License-Identifier: Apache-2.0
/**
 * The whole chain of parts that carry a lowering, each asked for every load case: demand, capacity, factor of safety.
 */
package bermwright.lowering.chain;
