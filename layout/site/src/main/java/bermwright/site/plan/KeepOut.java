// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Ring;
import java.util.OptionalDouble;

/**
 * An area nothing may touch.
 *
 * @param id   its id
 * @param kind what is there, in free words
 * @param area its outline
 * @param height how high what is there stands over the ground (m); absent where nothing may pass over it either
 * @param annotations note, own keys and the keys given
 */
public record KeepOut(String id, String kind, Ring area, OptionalDouble height, Annotations annotations) {
    /**
     * A keep-out over which nothing may pass.
     *
     * @param id   its id
     * @param kind what is there, in free words
     * @param area its outline
     * @param annotations note, own keys and the keys given
     */
    public KeepOut(String id, String kind, Ring area, Annotations annotations) {
        this(id, kind, area, OptionalDouble.empty(), annotations);
    }
}
