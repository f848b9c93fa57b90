// SPDX-License-Identifier: Apache-2.0
/**
 * What is wrong with a plan: rule, measured value, limit, unit, place and the source of the limit.
 */
package bermwright.site.finding;
