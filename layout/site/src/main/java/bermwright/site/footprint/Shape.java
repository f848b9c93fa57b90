// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.foundation.Ring;
import java.util.Objects;

/**
 * One outline on the site.
 *
 * @param kind    what it stands for
 * @param subject id of the plan object it belongs to
 * @param part    which part of it, in a few words; empty where there is only one
 * @param outline the outline, in projected metres, corners on whole millimetres
 */
public record Shape(ShapeKind kind, String subject, String part, Ring outline) {
    /** Refuses missing parts. */
    public Shape {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(outline, "outline");
    }

    /**
     * How people call it.
     *
     * @return such as {@code anchor of A (pull-over)}
     */
    public String title() {
        return kind.word() + " of " + subject + (part.isEmpty() ? "" : " (" + part + ")");
    }
}
