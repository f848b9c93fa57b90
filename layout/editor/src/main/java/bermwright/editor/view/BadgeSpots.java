// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;

/** Finds spots for badges that would hide each other: the first has its place, the next a free one around it. */
final class BadgeSpots {
    private static final int RINGS = 4;
    private static final int SPOTS_A_RING = 6;

    private final double apart;
    private final List<Point2D> taken = new ArrayList<>();
    private Optional<HullOutlines> hulls = Optional.empty();

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

    /** Keeps badges off hulls from now on. */
    void keepOff(HullOutlines outlines) {
        hulls = Optional.of(outlines);
    }

    /** A spot as near to a place as there is a free one; the place itself where all around is taken. */
    Point2D free(Point2D place) {
        Point2D from = hulls.map(h -> h.outside(place, apart / 2)).orElse(place);
        Point2D spot = from;
        for (int ring = 0; ring <= RINGS && !isFree(spot); ring++) {
            for (int i = 0; i < ring * SPOTS_A_RING && !isFree(spot); i++) {
                double angle = 2 * Math.PI * i / (ring * SPOTS_A_RING) - Math.PI / 2;
                spot = from.add(ring * apart * Math.cos(angle), ring * apart * Math.sin(angle));
            }
        }
        Point2D found = isFree(spot) ? spot : from;
        taken.add(found);
        return found;
    }

    private boolean isFree(Point2D spot) {
        return taken.stream().noneMatch(other -> other.distance(spot) < 0.98 * apart)
                && hulls.filter(h -> h.isOver(spot, apart / 2)).isEmpty();
    }
}
