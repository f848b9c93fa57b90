// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import bermwright.foundation.Require;
import bermwright.foundation.Vec3;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A thing on the site, as other programs read it.
 *
 * @param layer      layer it belongs to: lower-case letters, digits and _
 * @param id         its id
 * @param shape      point, line or area
 * @param places     its places in projected metres, heights in metres ({@code NaN} where not known); an area's last
 *                   place is not repeated
 * @param attributes further values, each name ending in its unit where it has one; numbers or words
 */
public record Feature(String layer, String id, Shape shape, List<Vec3> places, Map<String, Object> attributes) {
    /** Copies places and attributes; refuses too few places and attributes that are neither numbers nor words. */
    public Feature {
        places = List.copyOf(places);
        // In one order, whatever order the maker's map has: files made twice must be the same.
        attributes = Collections.unmodifiableMap(new TreeMap<>(attributes));
        Require.that(layer.matches("[a-z][a-z0-9_]*"), "layer is %s; accepted: a-z, 0-9 and _",
                layer);
        Require.that(places.size() >= shape.least, "%s %s has %s places; at least %s are needed.",
                shape.name().toLowerCase(Locale.ROOT), id, places.size(), shape.least);
        attributes.forEach((key, value) -> Require.that(
                value instanceof Double || value instanceof Long || value instanceof String,
                "attribute %s is a %s; accepted: a number or words", key, value.getClass().getSimpleName()));
    }

    /**
     * Features of which no two of a layer have one id: later ones of an id get {@code (2)}, {@code (3)} behind it.
     *
     * @param features the features
     * @return as many, in the same order
     */
    public static List<Feature> withOwnIds(List<Feature> features) {
        Set<List<String>> taken = new HashSet<>();
        features.forEach(f -> taken.add(List.of(f.layer, f.id)));
        Set<List<String>> used = new HashSet<>();
        List<Feature> own = new ArrayList<>();
        for (Feature feature : features) {
            String id = feature.id;
            for (int i = 2; !used.add(List.of(feature.layer, id)); i++) {
                String next = feature.id + " (" + i + ")";
                id = taken.contains(List.of(feature.layer, next)) ? id : next;
            }
            own.add(new Feature(feature.layer, id, feature.shape, feature.places, feature.attributes));
        }
        return own;
    }

    /** Kinds of geometry. */
    public enum Shape {
        /** One place. */
        POINT(1),
        /** Two places or more. */
        LINE(2),
        /** Three corners or more. */
        AREA(3);

        private final int least;

        Shape(int least) {
            this.least = least;
        }
    }

    /**
     * The places of an area with the first repeated at the end, anticlockwise; other shapes as they are.
     *
     * @return the places
     */
    List<Vec3> closed() {
        if (shape != Shape.AREA) {
            return places;
        }
        double twice = 0;
        for (int i = 0; i < places.size(); i++) {
            Vec3 a = places.get(i).minus(places.get(0));
            Vec3 b = places.get((i + 1) % places.size()).minus(places.get(0));
            twice += a.x() * b.y() - b.x() * a.y();
        }
        List<Vec3> ring = new ArrayList<>(places);
        if (twice < 0) {
            Collections.reverse(ring);
        }
        ring.add(ring.get(0));
        return ring;
    }
}
