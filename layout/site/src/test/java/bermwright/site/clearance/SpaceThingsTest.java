// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.example.SiteExample;
import bermwright.site.example.SiteExample.Change;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Stockpile;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Keep-outs, stockpiles, tunnels and two sweeps: of each a case that a comparison from above refuses wrongly and one
 * that it misses. Hull A is that of {@link SpaceTest}: its winch lines fall from 28 m at north 294 to the ground at
 * 259.
 */
class SpaceThingsTest {
    private static final Hull A = SiteExample.hull("A", 300, 300, 0);
    /** Under a winch line of A where it hangs some 13 m up. */
    private static final Ring UNDER_WINCH_LINE = SiteExample.square(305.5, 275, 3);
    /** Under it where it comes down to the winch. */
    private static final Ring BESIDE_WINCH = SiteExample.square(306, 260.4, 1);

    private static List<Finding> check(Plan plan, DoubleBinaryOperator height) {
        Optional<ElevationGrid> ground = Optional.of(SiteExample.ground(height));
        return Clearance.of(SiteShapes.of(plan, ground, Map.of()), ground).findings();
    }

    private static Optional<Finding> first(List<Finding> findings, PairingRule rule) {
        return findings.stream().filter(f -> f.rule() == rule).findFirst();
    }

    private static Plan keepOut(Ring area, OptionalDouble height) {
        Change change = new Change();
        change.keepOuts = List.of(new KeepOut("K", "boulders", area, height, Annotations.NOTHING));
        return SiteExample.with(SiteExample.plan(A), change);
    }

    @Test
    void aLineHighOverALowKeepOutIsClearAndOverOneWithoutAHeightIsNot() {
        assertTrue(first(check(keepOut(UNDER_WINCH_LINE, OptionalDouble.of(3)), (e, n) -> 0), PairingRule.KEEP_OUT)
                .isEmpty());
        Finding endless = first(check(keepOut(UNDER_WINCH_LINE, OptionalDouble.empty()), (e, n) -> 0),
                PairingRule.KEEP_OUT).orElseThrow();
        assertTrue(endless.text().contains("does not state") && endless.text().contains("over the ground there"),
                endless.text());
        Finding high = first(check(keepOut(UNDER_WINCH_LINE, OptionalDouble.of(20)), (e, n) -> 0),
                PairingRule.KEEP_OUT).orElseThrow();
        assertEquals(Finding.Level.REFUSE, high.level());
        assertEquals("m", high.unit());
    }

    /** The ground falls to the east by 5 deg and the hull leans with its bed: its top stands 3.6 m to the east. */
    @Test
    void aHullThatLeansOverAKeepOutIsRefused() {
        Plan plan = keepOut(new Ring(List.of(new Point(307, 290), new Point(311, 290), new Point(311, 300),
                new Point(307, 300))), OptionalDouble.empty());
        assertTrue(first(check(plan, (e, n) -> 0), PairingRule.KEEP_OUT).isEmpty());
        Finding leaning = first(check(plan, (e, n) -> -0.09 * e), PairingRule.KEEP_OUT).orElseThrow();
        assertTrue(leaning.text().startsWith("Sweep of A"), leaning.text());
        assertEquals(0, leaning.measured().orElseThrow());
    }

    private static Plan stockpile(Ring area) {
        Change change = new Change();
        change.stockpiles = List.of(new Stockpile("S", area, Annotations.NOTHING));
        return SiteExample.with(SiteExample.plan(A), change);
    }

    @Test
    void aLineHighOverAStockpileIsClearAndALowOneIsNot() {
        assertTrue(first(check(stockpile(UNDER_WINCH_LINE), (e, n) -> 0), PairingRule.LINE_NEAR_STOCKPILE).isEmpty());
        Finding low = first(check(stockpile(BESIDE_WINCH), (e, n) -> 0), PairingRule.LINE_NEAR_STOCKPILE)
                .orElseThrow();
        assertTrue(low.measured().orElseThrow() < 1 && low.text().contains("over the ground there"), low.text());
    }

    /** The far end passes 5 m over a pile that lies in a hollow before it comes down beyond. */
    @Test
    void aFallingHullOverAPileInAHollowIsClear() {
        Ring area = SiteExample.square(300, 344.5, 3);
        assertTrue(first(check(stockpile(area), (e, n) -> 0), PairingRule.SWEEP_OVER_COVER).isPresent());
        DoubleBinaryOperator hollow = (e, n) -> n > 342 ? Math.max(-12, -6 * (n - 342)) : 0;
        assertTrue(first(check(stockpile(area), hollow), PairingRule.SWEEP_OVER_COVER).isEmpty());
    }

    /** The hull with a hatch in its crown, 20 m along it. */
    private static Hull withHatch(Hull h) {
        Hatch top = new Hatch("top", Hatch.End.SIDE, 20, 0, 1, 1, 0, Annotations.NOTHING);
        return new Hull(h.id(), h.body(), h.massProperties(),
                h.placement(), h.lowering(), h.seat(), List.of(top), h.stations(), h.cover(), h.held(),
                h.annotations());
    }

    private static Plan tunnel(Hull third, double east) {
        Hull left = withHatch(SiteExample.with(SiteExample.hull("L", east - 25, 300, 0), Hull.Arrival.LANDS_LYING, 0,
                List.of()));
        Hull right = withHatch(SiteExample.with(SiteExample.hull("R", east + 25, 300, 0), Hull.Arrival.LANDS_LYING, 0,
                List.of()));
        Change change = new Change();
        change.tunnels = List.of(new Tunnel("T", "L/top", "R/top", 2, List.of(), Annotations.NOTHING));
        return SiteExample.with(SiteExample.plan(left, right, third), change);
    }

    @Test
    void aTunnelHighOverAHullIsClearAndOneThroughItIsRefused() {
        Hull between = SiteExample.with(SiteExample.hull("C", 400, 300, 0), Hull.Arrival.LANDS_LYING, 0, List.of());
        Finding through = first(check(tunnel(between, 400), (e, n) -> 0), PairingRule.TUNNEL_THROUGH_HULL)
                .orElseThrow();
        assertEquals("T", through.subject());
        DoubleBinaryOperator valley = (e, n) -> -10 * Math.max(0, Math.min(1, (18 - Math.abs(e - 400)) / 10));
        assertTrue(first(check(tunnel(between, 400), valley), PairingRule.TUNNEL_THROUGH_HULL).isEmpty());
    }

    /** The tunnel lies over the crowns, 8 m up at north 320; the winch lines of B pass it low on their way down. */
    @Test
    void aLineNearATunnelIsSaidAndAHighOneIsNot() {
        Finding near = first(check(tunnel(SiteExample.hull("B", 300, 350, 0), 300), (e, n) -> 0),
                PairingRule.LINE_NEAR_TUNNEL).orElseThrow();
        assertTrue(near.text().contains("tunnel T"), near.text());
        assertTrue(first(check(tunnel(SiteExample.hull("B", 300, 342, 0), 300), (e, n) -> 0),
                PairingRule.LINE_NEAR_TUNNEL).isEmpty());
    }

    private static Plan two(double apart) {
        return SiteExample.plan(A, SiteExample.hull("B", 300 + apart, 300, 0));
    }

    @Test
    void sweepsFarApartInHeightDoNotCrossAndThoseThatLeanTogetherDo() {
        assertTrue(first(check(two(11), (e, n) -> 0), PairingRule.SWEEPS_CROSS).isPresent());
        assertTrue(first(check(two(11), (e, n) -> e < 305.5 ? 0 : -60), PairingRule.SWEEPS_CROSS).isEmpty());
        assertFalse(first(check(two(19), (e, n) -> 0), PairingRule.SWEEPS_CROSS).isPresent());
        Finding lean = first(check(two(19), (e, n) -> 0.12 * Math.abs(e - 309.5)), PairingRule.SWEEPS_CROSS)
                .orElseThrow();
        assertTrue(lean.text().contains("at tilt") && lean.measured().orElseThrow() < 2, lean.text());
    }

    @Test
    void theHeightOfALineOverACorridorIsSaid() {
        Change change = new Change();
        change.corridors = List.of(new Corridor("way", 4, Math.toRadians(10), List.of(new Point(250, 275),
                new Point(350, 275)), Annotations.NOTHING));
        Finding closed = first(check(SiteExample.with(SiteExample.plan(A), change), (e, n) -> 0),
                PairingRule.CORRIDOR_CLOSED).orElseThrow();
        double height = Double.parseDouble(closed.text().replaceAll("(?s).*hangs ([0-9.]+) m over.*", "$1"));
        // The stays come down straight from 28 m at 294 to 266, 7 m up at 273; their sag is at most a fiftieth.
        assertEquals(7, height, 0.9);
        assertTrue(closed.text().contains("stay"), closed.text());
    }
}
