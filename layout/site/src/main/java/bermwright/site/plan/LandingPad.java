// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Point;

/**
 * A landing pad.
 *
 * @param id       its id
 * @param centre   its middle
 * @param radius   radius (m), above zero
 * @param standOff distance at which its traffic harms nothing (m), zero or more
 * @param annotations     note, own keys and the keys given
 */
public record LandingPad(String id, Point centre, double radius, double standOff, Annotations annotations) {
}
