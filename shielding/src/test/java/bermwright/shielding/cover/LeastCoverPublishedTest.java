// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import bermwright.shielding.scene.HullEnd;
import bermwright.terrain.grid.ElevationGrid;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LeastCoverPublishedTest {
    /** The hull's chord sum and the straight cells of a 0.25 m grid leave this share of the section. */
    private static final double SECTION_SHARE = 5e-4;
    /** The toe is found inside a cell of straight slope, so only the straight cells' rounding is left (m). */
    private static final double TOE = 2e-3;
    /** Half-metre cells round the crest of an end over by this share of its volume. */
    private static final double END_SHARE = 2e-3;
    private static final Azimuth EAST = Azimuth.ofDegrees(90);

    @ParameterizedTest
    @ValueSource(doubles = 0.25)
    @Published(work = "common practice, no source", place = "section of the least cover, r 4, t 3, h 4, 35 degrees",
            printedValue = 170.13, unit = "m2", tolerance = 0.085)
    void sectionOfTheLeastCover(double spacing, PublishedValue printed) {
        printed.assertEqualTo(fillPerLength(4, 3, 35, 0, spacing));
    }

    @ParameterizedTest
    @ValueSource(doubles = 0.5)
    @Published(work = "common practice, no source", place = "toe of the least cover, r 4, t 3, h 4, 35 degrees",
            printedValue = 17.917, unit = "m", tolerance = 0.002)
    void toeOfTheLeastCover(double spacing, PublishedValue printed) {
        printed.assertEqualTo(toe(4, 3, 35, spacing));
    }

    @PublishedTable("/bermwright/shielding/cover/published/berm-over-cylinder.csv")
    void perMetreColumns(PublishedRow row) {
        double r = row.number("radius_m");
        double t = row.number("thickness_m");
        double slope = row.number("slope_deg");
        row.assertNear("toe_m", toe(r, t, slope, 0.5), TOE);
        row.assertShare("fill_m2", fillPerLength(r, t, slope, 0, 0.25), SECTION_SHARE);
        row.assertShare("flat_top_fill_m2",
                fillPerLength(r, t, slope, 2 * row.number("flat_top_half_width_m"), 0.25), SECTION_SHARE);
    }

    /** The ends of the table are a half section turned about its middle: right for half-ball ends. */
    @PublishedTable("/bermwright/shielding/cover/published/berm-over-cylinder.csv")
    void turnedEndsOfHalfBallHulls(PublishedRow row) {
        double r = row.number("radius_m");
        double t = row.number("thickness_m");
        double slope = row.number("slope_deg");
        double ball = 4.0 / 3 * Math.PI * r * r * r;
        Mound mound = LevelCase.mound(CoveredHull.uniform(
                LevelCase.hull(2 * r + 1e-6, r, HullEnd.dome(r), EAST, r), t), slope, LevelCase.level(26, 0.25));
        row.assertShare("ends_m3", mound.placedVolume() + ball, END_SHARE);
    }

    private static double fillPerLength(double r, double t, double slope, double crownWidth, double spacing) {
        ElevationGrid ground = LevelCase.level(42, spacing);
        return (volume(30, r, t, slope, crownWidth, ground) - volume(20, r, t, slope, crownWidth, ground)) / 10;
    }

    private static double volume(double length, double r, double t, double slope, double crownWidth,
            ElevationGrid ground) {
        CoveredHull hull = new CoveredHull(LevelCase.hull(length, r, HullEnd.FLAT, EAST, r),
                CoverThickness.uniform(t), EndCover.COVERED, EndCover.COVERED, crownWidth);
        return LevelCase.mound(hull, slope, ground).placedVolume();
    }

    private static double toe(double r, double t, double slope, double spacing) {
        Mound mound = LevelCase.mound(CoveredHull.uniform(LevelCase.hull(30, r, HullEnd.FLAT, EAST, r), t), slope,
                LevelCase.level(42, spacing));
        double widest = 0;
        for (Point corner : mound.toes().get(0).corners()) {
            widest = Math.max(widest, Math.abs(corner.north()));
        }
        return widest;
    }
}
