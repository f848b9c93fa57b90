// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.report.drawing.Svg;
import java.util.List;

/** Something on the plan drawing, in projected metres. */
public sealed interface MapItem {
    /** Size of labels (px). */
    double LABEL_SIZE = 12;
    /** How wide a label may be (px). */
    double LABEL_ROOM = 230;

    /**
     * How it looks.
     *
     * @return the style
     */
    MapStyle style();

    /**
     * Its words on the drawing.
     *
     * @return the words, empty for none
     */
    String label();

    /**
     * The same thing with words that a drawing has room for.
     *
     * @return this, or a copy whose label is cut
     */
    default MapItem shortened() {
        String words = Svg.cut(label(), LABEL_SIZE, LABEL_ROOM);
        if (words.equals(label())) {
            return this;
        } else if (this instanceof Area area) {
            return new Area(area.style, words, area.ring);
        } else if (this instanceof Line line) {
            return new Line(line.style, words, line.places);
        } else if (this instanceof Spot spot) {
            return new Spot(spot.style, words, spot.place);
        }
        throw new AssertionError("no label for " + this);
    }

    /**
     * Its places.
     *
     * @return the places, in order
     */
    List<Point> places();

    /**
     * An area.
     *
     * @param style how it looks
     * @param label its words, empty for none
     * @param ring  its outline
     */
    record Area(MapStyle style, String label, Ring ring) implements MapItem {
        @Override
        public List<Point> places() {
            return ring.corners();
        }
    }

    /**
     * A line.
     *
     * @param style  how it looks
     * @param label  its words, empty for none
     * @param places its places, two or more
     */
    record Line(MapStyle style, String label, List<Point> places) implements MapItem {
        /** Copies the places. */
        public Line {
            places = List.copyOf(places);
        }
    }

    /**
     * A place.
     *
     * @param style how it looks
     * @param label its words, empty for none
     * @param place where it is
     */
    record Spot(MapStyle style, String label, Point place) implements MapItem {
        @Override
        public List<Point> places() {
            return List.of(place);
        }
    }
}
