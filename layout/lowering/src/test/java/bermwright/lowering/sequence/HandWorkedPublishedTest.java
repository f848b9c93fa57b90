// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.lowering.body.Body;
import bermwright.lowering.body.EndShape;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.MassCentre;
import bermwright.lowering.body.Outline;
import bermwright.lowering.body.Pivot;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.DesignFactors;
import bermwright.lowering.rig.Ends;
import bermwright.lowering.rig.Line;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Lug;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.ThermalAction;
import bermwright.lowering.rig.Winch;
import bermwright.lowering.statics.Statics;
import bermwright.lowering.statics.TiltState;
import bermwright.published.Published;
import bermwright.published.PublishedValue;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Figures of the trade worked by hand at 1.6 N/kg; each chained from its own input. */
class HandWorkedPublishedTest {
    private static final String PRACTICE = "common practice, no source";
    private static final double GRAVITY = 1.6;
    /** Half a unit of the last digit worked. */
    private static final double HALF_UNIT = 0.5;
    private static final double HALF_TENTH = 0.05;

    private static TiltState lying(double headHeight) {
        Body body = Body.uniform(new Outline(50, 4.5, EndShape.FLAT, EndShape.FLAT), 95_000, new MassCentre(28.5, 0,
                0));
        LoweringLines lines = new LoweringLines(1, new Lug(35, 0, 0),
                new Line(OptionalDouble.empty(), 0, OptionalDouble.empty(), OptionalDouble.empty(),
                        ThermalAction.USUAL),
                new Winch(new PlanePoint(-9, 0), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty()),
                0, 1, Ends.USUAL, LoweringLines.USUAL_SLACK);
        Rig rig = new Rig(lines, Optional.of(plain(headHeight, 9, 0)), List.of(), Optional.empty(),
                Optional.empty(),
                DesignFactors.COMMON_PRACTICE);
        return new Statics(new TippingBody(body, new Pivot.Rim(), new Ground(GRAVITY, 0, 0, 0.4)), rig)
                .at(Math.PI / 2).orElseThrow();
    }

    @Test
    @Published(work = PRACTICE, place = "95 t with its centre of mass at 28.5 m, held at 35 m: load on the line end",
            printedValue = 77, unit = "t", tolerance = HALF_UNIT)
    void leversPutMostOnTheLineEnd(PublishedValue printed) {
        printed.assertEqualTo(Statics.byLevers(95, 28.5, 35));
    }

    @Test
    @Published(work = PRACTICE, place = "the same: load on the base", printedValue = 18, unit = "t",
            tolerance = HALF_UNIT)
    void leversLeaveTheRestOnTheBase(PublishedValue printed) {
        printed.assertEqualTo(95 - Statics.byLevers(95, 28.5, 35));
    }

    @Test
    @Published(work = PRACTICE, place = "line angle of a rise of 25.5 m over a run of 44 m", printedValue = 30,
            unit = "deg", tolerance = HALF_UNIT)
    void aHighHeadGivesThirtyDegrees(PublishedValue printed) {
        printed.assertEqualTo(Math.toDegrees(lying(30).lineAngle()));
    }

    @Test
    @Published(work = PRACTICE, place = "line angle of a rise of 12 m over a run of 44 m", printedValue = 15,
            unit = "deg", tolerance = HALF_UNIT)
    void aLowHeadGivesFifteenDegrees(PublishedValue printed) {
        printed.assertEqualTo(Math.toDegrees(lying(16.5).lineAngle()));
    }

    @Test
    @Published(work = PRACTICE, place = "77 t weigh", printedValue = 123, unit = "kN", tolerance = HALF_UNIT)
    void theRoundedLoadWeighs(PublishedValue printed) {
        Body body = Body.uniform(new Outline(50, 4.5, EndShape.FLAT, EndShape.FLAT), 77_000, new MassCentre(28.5, 0,
                0));
        printed.assertEqualTo(new TippingBody(body, new Pivot.Rim(), new Ground(GRAVITY, 0, 0, 0.4)).weight() / 1000);
    }

    @Test
    @Published(work = PRACTICE, place = "along a line at 30 deg the rounded 123 kN ask for", printedValue = 246,
            unit = "kN", tolerance = HALF_UNIT)
    void theRoundedLoadAsksAlongTheLine(PublishedValue printed) {
        printed.assertEqualTo(Statics.alongLine(123_000, Math.toRadians(30)) / 1000);
    }

    @Test
    @Published(work = PRACTICE, place = "the unrounded load weighs", printedValue = 123.8, unit = "kN",
            tolerance = HALF_TENTH)
    void theUnroundedLoadWeighs(PublishedValue printed) {
        printed.assertEqualTo(Statics.byLevers(95 * GRAVITY, 28.5, 35));
    }

    @Test
    @Published(work = PRACTICE, place = "the unrounded load along a line at 30 deg", printedValue = 247.5, unit = "kN",
            tolerance = HALF_TENTH)
    void theUnroundedLoadAsksAlongTheLine(PublishedValue printed) {
        double load = Statics.byLevers(95_000 * GRAVITY, 28.5, 35);
        printed.assertEqualTo(Statics.alongLine(load, Math.toRadians(30)) / 1000);
    }

    @Test
    @Published(work = PRACTICE, place = "full balance of the same body, head 9 m behind and 30 m up: all lines",
            printedValue = 202.0, unit = "kN", tolerance = HALF_TENTH)
    void theFullBalanceOfAllLines(PublishedValue printed) {
        printed.assertEqualTo(lying(30).lineTotal() / 1000);
    }

    @Test
    @Published(work = PRACTICE, place = "the same: up on the pivot", printedValue = 50.7, unit = "kN",
            tolerance = HALF_TENTH)
    void theFullBalanceUpOnThePivot(PublishedValue printed) {
        printed.assertEqualTo(lying(30).pivotUp() / 1000);
    }

    @Test
    @Published(work = PRACTICE, place = "the same: along the ground on the pivot", printedValue = 174.8, unit = "kN",
            tolerance = HALF_TENTH)
    void theFullBalanceAlongTheGround(PublishedValue printed) {
        printed.assertEqualTo(lying(30).pivotAlong() / 1000);
    }

    @Test
    @Published(work = PRACTICE, place = "a lander of 179 t needs to hover", printedValue = 286, unit = "kN",
            tolerance = HALF_UNIT)
    void hoverTakesTheWeight(PublishedValue printed) {
        printed.assertEqualTo(179 * GRAVITY);
    }

    @Test
    @Published(work = PRACTICE, place = "the same with a quarter in hand", printedValue = 358, unit = "kN",
            tolerance = HALF_UNIT)
    void aQuarterInHand(PublishedValue printed) {
        printed.assertEqualTo(1.25 * 179 * GRAVITY);
    }

    /**
     * Poles square to flat ground.
     *
     * @param height      height of the heads (m), positive
     * @param behindPivot distance of the feet behind the pivot line (m)
     * @param halfSpread  half the distance between them (m), zero or more
     * @return the poles, without tube and foot
     */
    private static Poles plain(double height, double behindPivot, double halfSpread) {
        return new Poles(new PlanePoint(-behindPivot, 0), new PlanePoint(-behindPivot, height), halfSpread,
                Optional.empty(), OptionalDouble.empty());
    }
}
