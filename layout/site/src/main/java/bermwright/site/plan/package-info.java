// SPDX-License-Identifier: Apache-2.0
/**
 * The plan as immutable values: what stands where.
 */
package bermwright.site.plan;
