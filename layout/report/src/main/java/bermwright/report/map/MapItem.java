// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import java.util.List;

/** Something on the plan drawing, in projected metres. */
public sealed interface MapItem {
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
