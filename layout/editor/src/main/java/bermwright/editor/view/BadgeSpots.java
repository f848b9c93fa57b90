// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Point2D;

/** Finds spots for badges that would hide each other: the first has its place, the next a free one around it. */
final class BadgeSpots {
    private static final int RINGS = 4;
    private static final int SPOTS_A_RING = 6;

    private final double apart;
    private final List<Point2D> taken = new ArrayList<>();

    /**
     * No badges yet.
     *
     * @param apart how far badges stand apart (pixels)
     */
    BadgeSpots(double apart) {
        this.apart = apart;
    }

    /** The same badges, to which others can be added that these know nothing of. */
    BadgeSpots copy() {
        BadgeSpots copy = new BadgeSpots(apart);
        copy.taken.addAll(taken);
        return copy;
    }

    /** A spot as near to a place as there is a free one; the place itself where all around is taken. */
    Point2D free(Point2D place) {
        Point2D spot = place;
        for (int ring = 0; ring <= RINGS && !isFree(spot); ring++) {
            for (int i = 0; i < ring * SPOTS_A_RING && !isFree(spot); i++) {
                double angle = 2 * Math.PI * i / (ring * SPOTS_A_RING) - Math.PI / 2;
                spot = place.add(ring * apart * Math.cos(angle), ring * apart * Math.sin(angle));
            }
        }
        Point2D found = isFree(spot) ? spot : place;
        taken.add(found);
        return found;
    }

    private boolean isFree(Point2D spot) {
        return taken.stream().noneMatch(other -> other.distance(spot) < 0.98 * apart);
    }
}
