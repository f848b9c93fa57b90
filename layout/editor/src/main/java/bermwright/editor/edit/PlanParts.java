// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.site.plan.Stockpile;
import bermwright.site.plan.Wall;
import java.util.List;

/** Copies of a plan with one of its lists changed. */
final class PlanParts {
    private PlanParts() {
    }

    static Plan withWalls(Plan p, List<Wall> list) {
        return new Plan(p.title(), p.ground(), p.hulls(), list, p.tunnels(), p.keepOuts(), p.corridors(),
                p.landingPads(), p.preparations(), p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(),
                p.rules(), p.orderOfWork(), p.arrangeWithin(), p.annotations());
    }

    static Plan withKeepOuts(Plan p, List<KeepOut> list) {
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), list, p.corridors(),
                p.landingPads(), p.preparations(), p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(),
                p.rules(), p.orderOfWork(), p.arrangeWithin(), p.annotations());
    }

    static Plan withCorridors(Plan p, List<Corridor> list) {
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), list, p.landingPads(),
                p.preparations(), p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(), p.rules(),
                p.orderOfWork(), p.arrangeWithin(), p.annotations());
    }

    static Plan withLandingPads(Plan p, List<LandingPad> list) {
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(), list,
                p.preparations(), p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(), p.rules(),
                p.orderOfWork(), p.arrangeWithin(), p.annotations());
    }

    static Plan withPreparations(Plan p, List<Preparation> list) {
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(),
                p.landingPads(), list, p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(), p.rules(),
                p.orderOfWork(), p.arrangeWithin(), p.annotations());
    }

    static Plan withBorrowGrounds(Plan p, List<BorrowGround> list) {
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(),
                p.landingPads(), p.preparations(), list, p.stockpiles(), p.machines(), p.exposure(), p.rules(),
                p.orderOfWork(), p.arrangeWithin(), p.annotations());
    }

    static Plan withStockpiles(Plan p, List<Stockpile> list) {
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(),
                p.landingPads(), p.preparations(), p.borrowGrounds(), list, p.machines(), p.exposure(), p.rules(),
                p.orderOfWork(), p.arrangeWithin(), p.annotations());
    }
}
