// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import bermwright.regolith.EarthPressure;
import bermwright.regolith.Regolith;
import bermwright.regolith.Soils;
import org.junit.jupiter.api.Test;

/** Anchors against printed tables and worked teaching examples. */
class AnchorPublishedTest {
    private static final String DATA = "/bermwright/lowering/published/";
    /** The table rounds its factors to three digits. */
    private static final double TABLE_SHARE = 0.007;

    @PublishedTable(DATA + "meyerhof-adams-table.csv")
    void plateUplift(PublishedRow row) {
        double n = row.number("depth_ratio");
        double factor = HandbookAnchors.breakoutFactor(n, row.number("shape"), 0.92);
        row.assertShare("factor", factor, TABLE_SHARE);
        row.assertShare("pull_N", factor * 17_000 * n * 0.1 * 0.1 * 0.1, TABLE_SHARE);
    }

    @Test
    @Published(work = "student worksheet on laterally loaded piles by Broms (1964)",
            place = "free head in sand, length 12 widths, pull at the ground: load over Kp g d3, read off the chart",
            printedValue = 75, unit = "1", tolerance = 4)
    void shortPileInSand(PublishedValue printed) {
        // The chart is read to a twentieth of its value.
        Regolith sand = Soils.uniform(17_000 / 9.81, Soils.strength(35, 0));
        double pull = BuriedAnchor.shortPile(new Anchor.Pile(1, 0.4, 4.8), 0, sand, 9.81);
        printed.assertEqualTo(pull / (EarthPressure.passive(Math.toRadians(35)) * 17_000 * Math.pow(0.4, 3)));
    }
}
