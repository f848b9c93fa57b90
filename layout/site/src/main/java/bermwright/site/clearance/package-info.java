// SPDX-License-Identifier: Apache-2.0
/**
 * Distances, overlaps and swept areas; answers in findings, never in exceptions.
 */
package bermwright.site.clearance;
