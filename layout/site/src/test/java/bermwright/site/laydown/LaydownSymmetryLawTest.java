// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.Point;
import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.site.SamplePlans;
import bermwright.site.gear.GearPlaces;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which way north is, and which side is left, changes nothing; what is reckoned is what is drawn. */
class LaydownSymmetryLawTest {
    /** Heights are interpolated between the nodes in another order. */
    private static final double SAME = 1e-7;

    private static LoweringResult lowered(double azimuthDeg, DoubleBinaryOperator height) {
        Hull hull = SamplePlans.hull("A", new Point(150, 150), azimuthDeg);
        ElevationGrid ground = SamplePlans.ground(height);
        return LaydownOfHull.of(SamplePlans.plan(List.of(hull)), hull, ground).lowering().orElseThrow();
    }

    private static void same(LoweringResult a, LoweringResult b) {
        assertEquals(a.greatestLineTension(), b.greatestLineTension(), SAME * a.greatestLineTension());
        assertEquals(a.balanceTilt(), b.balanceTilt(), SAME);
        assertEquals(a.handOverTilt(), b.handOverTilt(), SAME);
        assertEquals(a.chain().rows().size(), b.chain().rows().size());
        for (int i = 0; i < a.chain().rows().size(); i++) {
            ChainRow x = a.chain().rows().get(i);
            ChainRow y = b.chain().rows().get(i);
            assertEquals(x.part(), y.part());
            assertEquals(x.load(), y.load());
            assertEquals(x.demand().orElse(0), y.demand().orElse(0), SAME * x.demand().orElse(0) + 1e-3,
                    x.part().words() + ", " + x.loadWords());
            assertEquals(x.capacity().orElse(0), y.capacity().orElse(0), SAME * x.capacity().orElse(0) + 1e-3,
                    x.part().words() + ", " + x.loadWords());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void turningOrMirroringTheSiteChangesNothing(long seed) {
        Random random = new Random(seed);
        double along = 0.02 * random.nextGaussian();
        double across = 0.01 * random.nextGaussian();
        double wave = 0.2 * random.nextDouble();
        DoubleBinaryOperator height = (e, n) -> along * (n - 150) + across * (e - 150) + wave * Math.sin((n - 150) / 17)
                * Math.cos((e - 150) / 23);
        LoweringResult north = lowered(0, height);
        same(north, lowered(90, (e, n) -> height.applyAsDouble(150 - (n - 150), 150 + (e - 150))));
        same(north, lowered(180, (e, n) -> height.applyAsDouble(300 - e, 300 - n)));
        same(north, lowered(0, (e, n) -> height.applyAsDouble(300 - e, n)));
    }

    /** Three lines over three poles: as many poles, stays and winches stand on the map as statics reckons with. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void whatIsReckonedIsWhatIsDrawn(int poles) {
        LoweringGear gear = SamplePlans.gear();
        LoweringGear.Lines l = gear.lines().orElseThrow();
        LoweringGear.Poles p = gear.poles().orElseThrow();
        LoweringGear.Poles more = new LoweringGear.Poles(p.height(), p.behindPivot(), p.halfSpread(), p.diameter(),
                p.wall(), p.yield(), p.modulus(), p.footArea(), OptionalInt.of(poles), p.head(), p.annotations());
        LoweringGear.Lines each = new LoweringGear.Lines(2 * poles, l.lugFromBase(), l.lugOffAxis(), l.lugHalfSpread(),
                l.line(), l.winch(), l.payOutMismatch(), l.sheaveEfficiency(), l.ends(), l.slack(), l.annotations());
        LoweringGear changed = new LoweringGear(gear.means(), gear.rate(), gear.wander(), gear.margin(),
                Optional.of(each), Optional.of(more), gear.stays(), gear.pullOver(), gear.pivotHold(),
                gear.sideThrusters(), gear.landing(), gear.temperature(), gear.annotations());
        Hull hull = SamplePlans.hull("A", new Point(150, 150), 0).withLowering(Optional.of(changed));
        GearPlaces places = GearPlaces.of(hull);
        assertEquals(poles, places.poles().size());
        assertEquals(2 * poles, places.lines().size());
        assertEquals(2 * poles, places.lines().stream().map(GearPlaces.LinePlace::winch).distinct().count());
        ElevationGrid ground = SamplePlans.ground((e, n) -> 0);
        Laydown laydown = LaydownOfHull.of(SamplePlans.plan(List.of(hull)), hull, ground);
        bermwright.lowering.statics.TiltState rest = laydown.lowering().orElseThrow().tilts()
                .get(laydown.lowering().orElseThrow().tilts().size() - 1);
        assertEquals(rest.lineTotal() / (2 * poles), rest.lineEach(), 0.03 * rest.lineEach());
    }
}
