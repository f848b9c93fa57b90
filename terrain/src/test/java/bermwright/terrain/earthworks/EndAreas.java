// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Require;
import java.util.List;

/**
 * Volumes from cross sections along an axis, as they are reckoned by hand; a check beside the exact volumes.
 *
 * <p>The average end area is too large where a body tapers (by half for a cone); the prismoidal rule is exact where
 * the area changes along the axis as a polynomial of the third degree or less.
 */
public final class EndAreas {
    private EndAreas() {
    }

    /**
     * A cross section.
     *
     * @param station distance along the axis (m)
     * @param area    area of the section (m2), zero or more
     */
    public record Section(double station, double area) {
        /** Refuses negative areas. */
        public Section {
            Require.finite("station", station, "m");
            Require.notNegative("area of a section", area, "m2");
        }
    }

    /**
     * The average of both end areas times the length between them: L (A1 + A2) / 2.
     *
     * @param sections sections in order of their stations, at least two
     * @return the volume (m3)
     */
    public static double average(List<Section> sections) {
        return sum(sections, (length, a, b) -> length * (a + b) / 2);
    }

    /**
     * The average end area, but a pyramid, L A / 3, where one of the two sections has no area.
     *
     * @param sections sections in order of their stations, at least two
     * @return the volume (m3)
     */
    public static double averageWithPyramids(List<Section> sections) {
        return sum(sections, (length, a, b) -> a == 0 || b == 0 ? length * (a + b) / 3 : length * (a + b) / 2);
    }

    /**
     * The prismoidal rule, L (A1 + 4 Am + A2) / 6, over each pair of equal lengths.
     *
     * @param sections sections in order of their stations, an odd number of three or more; each second one lies half
     *                 way between its neighbours
     * @return the volume (m3)
     */
    public static double prismoidal(List<Section> sections) {
        Require.that(sections.size() >= 3 && sections.size() % 2 == 1,
                "%s sections; the prismoidal rule takes an odd number of three or more.", sections.size());
        double volume = 0;
        for (int i = 0; i + 2 < sections.size(); i += 2) {
            Section first = sections.get(i);
            Section middle = sections.get(i + 1);
            Section last = sections.get(i + 2);
            double length = last.station - first.station;
            Require.positive("length between sections", length, "m");
            Require.that(Math.abs(middle.station - (first.station + last.station) / 2) <= 1e-6 * length,
                    "the section at %s m does not lie half way between those at %s m and %s m.", middle.station,
                    first.station, last.station);
            volume += length * (first.area + 4 * middle.area + last.area) / 6;
        }
        return volume;
    }

    /** The volume between two neighbouring sections. */
    private interface Rule {
        double volume(double length, double a, double b);
    }

    private static double sum(List<Section> sections, Rule rule) {
        Require.that(sections.size() >= 2, "%s sections; at least two are needed.", sections.size());
        double volume = 0;
        for (int i = 1; i < sections.size(); i++) {
            double length = sections.get(i).station - sections.get(i - 1).station;
            Require.positive("length between sections", length, "m");
            volume += rule.volume(length, sections.get(i - 1).area, sections.get(i).area);
        }
        return volume;
    }
}
