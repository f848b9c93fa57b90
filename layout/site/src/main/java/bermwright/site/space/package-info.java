// SPDX-License-Identifier: Apache-2.0
/**
 * Hulls, gear and ground as bodies in space, and how far they are apart.
 *
 * <p>All places are true metres: east and north of the plan times the metre scale, and height.
 */
package bermwright.site.space;
