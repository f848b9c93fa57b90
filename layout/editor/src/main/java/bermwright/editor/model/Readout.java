// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.editor.edit.PartOutline;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Ways, turns and places in words, as they are read at the pointer. */
final class Readout {
    private static final double LEAST_WAY = 0.005;
    private static final double LEAST_TURN_DEG = 0.005;

    private Readout() {
    }

    /** How a part lies in one plan against how it lay in another. */
    static String between(Part part, Plan from, Plan to) {
        List<String> said = new ArrayList<>();
        List<Point> before = PartOutline.corners(from, part);
        List<Point> after = PartOutline.corners(to, part);
        if (!before.isEmpty() && !after.isEmpty()) {
            double east = after.get(0).east() - before.get(0).east();
            double north = after.get(0).north() - before.get(0).north();
            along(east, "east", "west").ifPresent(said::add);
            along(north, "north", "south").ifPresent(said::add);
        }
        if (part.kind() == Part.Kind.HULL) {
            Optional<Hull> now = to.hull(part.id());
            now.flatMap(h -> from.hull(part.id()).map(b -> turn(b, h))).filter(t -> !t.isEmpty()).ifPresent(said::add);
        }
        return part.words() + ": " + (said.isEmpty() ? "where it was" : String.join(", ", said));
    }

    private static Optional<String> along(double way, String forwards, String backwards) {
        return Math.abs(way) < LEAST_WAY ? Optional.empty()
                : Optional.of(text("%.2f m %s", Math.abs(way), way > 0 ? forwards : backwards));
    }

    private static String turn(Hull before, Hull now) {
        double turn = now.layDownAzimuth().degrees() - before.layDownAzimuth().degrees();
        double least = turn - 360 * Math.rint(turn / 360);
        return Math.abs(least) < LEAST_TURN_DEG ? "" : text("%.2f\u00b0 %s, to %.2f\u00b0", Math.abs(least),
                least > 0 ? "clockwise" : "anticlockwise", now.layDownAzimuth().degrees());
    }

    static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
