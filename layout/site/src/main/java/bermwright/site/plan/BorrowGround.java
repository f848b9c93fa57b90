// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Ring;

/**
 * Where soil is taken.
 *
 * @param id            its id
 * @param area          its outline
 * @param greatestDepth deepest cut (m), above zero
 * @param sideSlope     slope of its sides (rad), above zero, below pi/2
 * @param yieldShare    share of the dug soil that can be used (1), above 0, at most 1
 * @param keepClear     distance kept from hulls, anchors, pole feet and toes (m), zero or more
 * @param annotations          note, own keys and the keys given
 */
public record BorrowGround(String id, Ring area, double greatestDepth, double sideSlope, double yieldShare,
        double keepClear, Annotations annotations) {
}
