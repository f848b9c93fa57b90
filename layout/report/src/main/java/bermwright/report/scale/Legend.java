// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.report.paper.Paper;
import bermwright.report.paper.Patch;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the signs on a sheet mean: those that were drawn on it and no others; for one thread. */
final class Legend {
    private final Map<String, Sign> signs = new LinkedHashMap<>();

    /** How a sign is drawn. */
    interface Sign {
        /**
         * Draws it.
         *
         * @param paper where to
         * @param room  the room it has
         */
        void draw(Paper paper, Patch room);
    }

    /** Notes that a sign was drawn. */
    void add(String words, Sign sign) {
        signs.putIfAbsent(words, sign);
    }

    /** The signs by their words, in the order they were drawn in. */
    Map<String, Sign> signs() {
        return signs;
    }
}
