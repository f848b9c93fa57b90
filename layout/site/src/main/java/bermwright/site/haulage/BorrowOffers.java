// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.finding.Finding;
import bermwright.finding.WorkRule;
import bermwright.foundation.Ring;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.PlanSoil;
import bermwright.terrain.earthworks.BorrowPit;
import bermwright.terrain.earthworks.BuiltGround;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FinerPatch;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What the borrow grounds of a plan give when nothing is undercut: hulls, anchors and the soil that holds them,
 * winches, pole feet, walls and toes of covers keep their distance; keep-outs, ways and pads are not dug.
 */
final class BorrowOffers {
    /** Depth of a strip (m); common practice, no source. */
    static final double STRIP = 0.25;
    private static final Set<ShapeKind> KEPT_AT_DISTANCE = EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING,
            ShapeKind.ANCHOR, ShapeKind.ANCHOR_SOIL, ShapeKind.WINCH, ShapeKind.POLE_FOOT, ShapeKind.WALL,
            ShapeKind.TUNNEL);
    private static final Set<ShapeKind> NOT_DUG = EnumSet.of(ShapeKind.KEEP_OUT, ShapeKind.CORRIDOR, ShapeKind.PAD);
    /** Share of a borrow ground whose loss to things kept clear is worth a note. */
    private static final double WORTH_A_NOTE = 0.01;

    private final EarthworksInput input;
    private final SiteShapes site;
    private final List<DugGround> grounds = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private BorrowOffers(EarthworksInput input, SiteShapes site) {
        this.input = input;
        this.site = site;
    }

    static BorrowOffers of(EarthworksInput input, SiteShapes site) {
        BorrowOffers offers = new BorrowOffers(input, site);
        input.plan().borrowGrounds().forEach(offers::add);
        return offers;
    }

    /** The same ground dug where its soil is another. */
    BorrowOffers with(EarthworksInput other) {
        BorrowOffers same = new BorrowOffers(other, site);
        same.grounds.addAll(grounds);
        same.findings.addAll(findings);
        return same;
    }

    List<DugGround> grounds() {
        return grounds;
    }

    List<Finding> findings() {
        return findings;
    }

    /** What the grounds offer, in their order. */
    List<SoilOffer> offers() {
        PlanSoil soil = PlanSoil.of(input.plan().ground());
        List<SoilOffer> offers = new ArrayList<>();
        for (DugGround ground : grounds) {
            BorrowGround borrow = input.plan().borrowGrounds().stream()
                    .filter(b -> b.id().equals(ground.from())).findFirst().orElseThrow();
            offers.add(new SoilOffer(ground.from(), ground.usable(),
                    soil.bankDensity(borrow.greatestDepth()), borrow.area()));
        }
        return offers;
    }

    private void add(BorrowGround borrow) {
        Optional<ElevationGrid> window = window(borrow);
        if (window.isEmpty()) {
            findings.add(Finding.of(WorkRule.BORROW_OFF_GRID, Finding.Level.REFUSE, borrow.id(), Finding.Figures.NONE,
                    "Borrow ground %s lies off the elevation file or over missing ground; nothing is counted from it."
                            .formatted(borrow.id())).at(borrow.area().centre()));
            return;
        }
        List<BorrowPit.KeptClear> clear = keptClear(borrow, window.get());
        BorrowPit pit = pit(borrow, window.get(), clear);
        grounds.add(new DugGround(borrow, pit, 0));
        if (!clear.isEmpty()) {
            double whole = pit(borrow, window.get(), List.of()).bank() * borrow.yieldShare();
            double usable = pit.bank() * borrow.yieldShare();
            if (usable < (1 - WORTH_A_NOTE) * whole) {
                findings.add(Finding.of(WorkRule.BORROW_CUT_BACK, Finding.Level.NOTE, borrow.id(),
                        Finding.Figures.of(usable, whole, "m3"), String.format(Locale.ROOT, "Borrow ground %s gives"
                        + " %.0f m3 instead of %.0f m3, since it must not undercut or block what stands near.",
                        borrow.id(), usable, whole)).at(borrow.area().centre()));
            }
        }
    }

    private static BorrowPit pit(BorrowGround borrow, ElevationGrid ground, List<BorrowPit.KeptClear> clear) {
        return BorrowPit.of(ground, new BorrowPit.Ground(borrow.area(), borrow.greatestDepth(), borrow.sideSlope(),
                STRIP, clear));
    }

    /** The ground around a borrow ground on finer nodes, so that big sites cost no more than their pits. */
    private Optional<ElevationGrid> window(BorrowGround borrow) {
        if (input.ground().isMissing(borrow.area())) {
            return Optional.empty();
        }
        Ring.Box box = borrow.area().box().wider(2 * input.ground().frame().spacing());
        return Optional.of(FinerPatch.over(input.ground(), box, BuiltGround.SPACING));
    }

    private List<BorrowPit.KeptClear> keptClear(BorrowGround borrow, ElevationGrid window) {
        double reach = input.ground().metres().onPlan(borrow.keepClear());
        List<BorrowPit.KeptClear> clear = new ArrayList<>();
        for (Shape shape : site.all()) {
            if (KEPT_AT_DISTANCE.contains(shape.kind()) && isNear(shape.outline(), window, reach)) {
                clear.add(new BorrowPit.KeptClear(shape.outline(), borrow.keepClear()));
            } else if (NOT_DUG.contains(shape.kind()) && isNear(shape.outline(), window, 0)) {
                clear.add(new BorrowPit.KeptClear(shape.outline(), 0));
            }
        }
        for (SoilNeed need : input.needs()) {
            for (Ring toe : need.kind() == SoilNeed.Kind.COVER ? need.outlines() : List.<Ring>of()) {
                if (isNear(toe, window, reach)) {
                    clear.add(new BorrowPit.KeptClear(toe, borrow.keepClear()));
                }
            }
        }
        return clear;
    }

    private static boolean isNear(Ring ring, ElevationGrid window, double reach) {
        Ring.Box box = ring.box().wider(reach);
        return box.west() <= window.frame().eastEdge() && box.east() >= window.frame().west()
                && box.south() <= window.frame().northEdge() && box.north() >= window.frame().south();
    }
}
