// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Point;

/**
 * One point of a profile.
 *
 * @param distance true distance in plan from the profile's start (m), zero or more
 * @param place    where it lies, in projected metres
 * @param height   ground height (m), {@code NaN} where not known
 */
public record ProfilePoint(double distance, Point place, double height) {
}
