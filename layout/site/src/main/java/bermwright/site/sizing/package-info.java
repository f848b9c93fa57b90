// SPDX-License-Identifier: Apache-2.0
/**
 * The least cover that keeps every station within the plan's limits, and what more soil would gain.
 */
package bermwright.site.sizing;
