// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Ring;

/**
 * Where soil waits.
 *
 * @param id   its id
 * @param area its outline
 * @param annotations note, own keys and the keys given
 */
public record Stockpile(String id, Ring area, Annotations annotations) {
}
