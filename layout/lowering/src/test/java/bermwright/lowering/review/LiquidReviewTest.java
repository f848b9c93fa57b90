// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.lowering.ReferenceBody;
import bermwright.lowering.body.Body;
import bermwright.lowering.body.FreeSurface;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.Pivot;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import bermwright.regolith.LunarProfile;
import bermwright.regolith.Soils;
import org.junit.jupiter.api.Test;

class LiquidReviewTest {
    private static LoweringCase with(double liquid, double slope) {
        Body dry = ReferenceBody.body(20, 0);
        Body wet = new Body(dry.outline(), dry.mass(), dry.centre(), dry.inertiaAboutCentre(), liquid);
        return new LoweringCase(new TippingBody(wet, new Pivot.Rim(), new Ground(ReferenceBody.GRAVITY, slope, 0, 0.5)),
                ReferenceBody.fullRig(-14), LunarProfile.with(Soils.strength(42, 500)),
                Math.toRadians(0.5));
    }

    private static LiquidReview review(LoweringCase setup) {
        LoweringResult result = Lowering.of(setup).result().orElseThrow();
        return LiquidReview.of(setup, result).orElseThrow();
    }

    /** Lying level the liquid's centre is at half the hull: hand statics by the share of mass moved. */
    @Test
    void lyingLevelTheLiquidHasRunToTheMiddleOfTheHull() {
        LiquidReview liquid = review(with(6_000, 0));
        LiquidReview.State rest = liquid.states().get(liquid.states().size() - 1);
        double least = Double.POSITIVE_INFINITY;
        for (double density : LiquidReview.DENSITIES) {
            FreeSurface tank = new FreeSurface(4.5, 50, 6_000 / density);
            double along = 0.05 * (25 - tank.depthStanding() / 2);
            least = Math.min(least, Math.abs(rest.along() - along));
            if (Math.abs(rest.along() - along) < 1e-9) {
                assertEquals(0.05 * tank.centre(Math.PI / 2).off(), rest.off(), 1e-9);
                assertEquals(rest.held() * (20 + along) / 20, rest.free(), 1e-6 * rest.held());
            }
        }
        assertEquals(0, least, 1e-9);
        assertTrue(liquid.balance() < Math.atan(4.5 / 20), "running to the low side it brings balance sooner");
        assertEquals(rest, liquid.worst().orElseThrow());
    }

    @Test
    void onFallingGroundItRunsToTheFarEndAndWithoutLiquidThereIsNoReview() {
        LiquidReview.State level = review(with(6_000, 0)).worst().orElseThrow();
        LiquidReview.State falling = review(with(6_000, Math.toRadians(4))).worst().orElseThrow();
        assertTrue(falling.along() > level.along() + 0.2, falling + " " + level);
        LoweringCase dry = with(0, 0);
        assertTrue(LiquidReview.of(dry, Lowering.of(dry).result().orElseThrow()).isEmpty());
    }

    @Test
    void moreLiquidAsksMoreOfTheLines() {
        double before = 0;
        for (double mass : new double[] {500, 2_000, 8_000}) {
            LiquidReview.State worst = review(with(mass, 0)).worst().orElseThrow();
            assertTrue(worst.free() > worst.held() + before);
            before = worst.free() - worst.held();
        }
    }
}
