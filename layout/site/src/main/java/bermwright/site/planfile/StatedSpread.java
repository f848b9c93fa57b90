// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import java.util.Objects;

/**
 * A spread that a plan states beside a number.
 *
 * @param path   path of the number, such as {@code hulls[0].mass_t}
 * @param key    its key, with unit and range
 * @param value  the number, in the unit of the file
 * @param spread its standard deviation, in the unit of the file, zero or more
 */
public record StatedSpread(String path, Key key, double value, double spread) {
    /** Refuses missing parts. */
    public StatedSpread {
        Objects.requireNonNull(key, "key");
    }
}
