// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.foundation.Ring;
import bermwright.site.plan.Anchor;
import java.util.Objects;
import java.util.Optional;

/**
 * One outline on the site.
 *
 * @param kind    what it stands for
 * @param subject id of the plan object it belongs to
 * @param part    which part of it, in a few words; empty where there is only one
 * @param outline the outline, in projected metres, corners on whole millimetres
 * @param role    what it is for, where it is a part of the gear
 * @param anchor  the anchor, where it is one
 */
public record Shape(ShapeKind kind, String subject, String part, Ring outline, GearRole role,
        Optional<Anchor> anchor) {
    /** Refuses missing parts. */
    public Shape {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(anchor, "anchor");
    }

    /**
     * An outline that is no part of the gear.
     *
     * @param kind    what it stands for
     * @param subject id of the plan object it belongs to
     * @param part    which part of it; empty where there is only one
     * @param outline the outline
     */
    public Shape(ShapeKind kind, String subject, String part, Ring outline) {
        this(kind, subject, part, outline, GearRole.NONE, Optional.empty());
    }

    /**
     * How people call it.
     *
     * @return such as {@code anchor of A (pull-over)}, {@code lying hull A} or {@code keep-out rim}
     */
    public String title() {
        String name = switch (kind) {
            case STANDING, LYING -> kind.word() + " hull " + subject;
            case LANDING -> "landing spread of " + subject;
            case PAD_STAND_OFF -> "stand-off of pad " + subject;
            case KEEP_OUT -> "keep-out " + subject;
            case BORROW -> "borrow ground " + subject;
            case TUNNEL, WALL, CORRIDOR, PAD, PREPARATION, STOCKPILE -> kind.word() + " " + subject;
            default -> kind.word() + " of " + subject;
        };
        return name + (part.isEmpty() ? "" : " (" + part + ")");
    }
}
