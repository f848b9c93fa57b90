// SPDX-License-Identifier: Apache-2.0
/**
 * What changed between two plans: keys, findings and figures.
 */
package bermwright.site.comparison;
