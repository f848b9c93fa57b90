// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.SiteRule;
import bermwright.foundation.Point;
import bermwright.site.footprint.HatchPlace;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What landings inside their dispersion leave of tunnels between hulls. */
final class LandingReach {
    private LandingReach() {
    }

    /** Tunnels whose ends may come nearer or farther apart than the plan says. */
    static List<Finding> tunnels(Plan plan, TrueMetres metres) {
        List<Finding> findings = new ArrayList<>();
        for (Tunnel tunnel : plan.tunnels()) {
            Optional<Point> from = HatchPlace.of(plan, tunnel.from(), metres);
            Optional<Point> to = HatchPlace.of(plan, tunnel.to(), metres);
            double spread = spread(plan, tunnel.from()) + spread(plan, tunnel.to());
            if (from.isEmpty() || to.isEmpty() || !(spread > 0) || isOneHull(tunnel)) {
                continue;
            }
            double length = metres.distance(from.get(), to.get());
            boolean gone = spread >= length;
            Finding.Level level = gone ? Finding.Level.WARN : Finding.Level.NOTE;
            findings.add(Finding.of(SiteRule.TUNNEL_REACH, level, tunnel.id(),
                    gone ? Finding.Figures.of(spread, length, "m") : Finding.Figures.measured(spread, "m"),
                    ("Tunnel %s is %s m long between its hatches, and anything from %s m to %s m for landings inside"
                    + " the dispersion%s.")
                    .formatted(tunnel.id(), SitePairs.number(length),
                            SitePairs.number(Math.max(0, length - spread)), SitePairs.number(length + spread),
                            gone ? ": the hatches may meet or pass each other" : ""))
                    .at(new Point((from.get().east() + to.get().east()) / 2,
                            (from.get().north() + to.get().north()) / 2)));
        }
        return findings;
    }

    private static boolean isOneHull(Tunnel tunnel) {
        return HatchName.of(tunnel.from()).hull().equals(HatchName.of(tunnel.to()).hull());
    }

    private static double spread(Plan plan, String end) {
        return HatchName.of(end).hullIn(plan).map(Hull::landingDispersion).orElse(0.0);
    }
}
