// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Ring;

/**
 * An area nothing may touch.
 *
 * @param id   its id
 * @param kind what is there, in free words
 * @param area its outline
 * @param annotations note, own keys and the keys given
 */
public record KeepOut(String id, String kind, Ring area, Annotations annotations) {
}
