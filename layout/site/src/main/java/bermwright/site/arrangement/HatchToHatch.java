// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.footprint.HatchPlace;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.TrueMetres;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sets hulls that a tunnel joins, but the plan has far apart, hatch against hatch with a short straight tunnel. */
final class HatchToHatch {
    /** What the tunnel is longer than the spacing of hulls (m): room for landings to miss. */
    private static final double ROOM = 4;

    private HatchToHatch() {
    }

    /** A hatch from its hull's base centre, and the way out of it as an angle to the left of ahead. */
    private record Way(Point place, double out) {
        static Optional<Way> of(Plan plan, String name, TrueMetres metres) {
            HatchName named = HatchName.of(name);
            return named.hullIn(plan).flatMap(h -> named.hatchOf(h).map(hatch -> of(h, hatch, metres)));
        }

        private static Way of(Hull hull, Hatch hatch, TrueMetres metres) {
            Point seen = Groups.seen(Pose.of(hull), HatchPlace.place(hull, hatch, metres));
            double out = hatch.end() == Hatch.End.FAR ? 0 : hatch.end() == Hatch.End.BASE ? Math.PI
                    : Math.sin(hatch.around()) >= 0 ? Math.PI / 2 : -Math.PI / 2;
            return new Way(seen, out);
        }
    }

    /** Poses from the lead, tunnel by tunnel; a hull that no tunnel leads to keeps what is given. */
    static Map<Integer, Pose> relative(QuickSite site, Groups groups, Map<Integer, Pose> given) {
        Plan plan = site.plan();
        Map<Integer, Pose> found = new HashMap<>(given);
        Map<Integer, Pose> known = new HashMap<>();
        groups.movable().forEach(h -> known.put(groups.lead(h), Pose.of(new Point(0, 0), new Azimuth(0))));
        List<String> ids = plan.hulls().stream().map(Hull::id).toList();
        for (int pass = 0; pass < plan.tunnels().size(); pass++) {
            for (Tunnel tunnel : plan.tunnels()) {
                int from = ids.indexOf(HatchName.of(tunnel.from()).hull());
                int to = ids.indexOf(HatchName.of(tunnel.to()).hull());
                Optional<Way> one = Way.of(plan, tunnel.from(), site.metres());
                Optional<Way> other = Way.of(plan, tunnel.to(), site.metres());
                if (from < 0 || to < 0 || one.isEmpty() || other.isEmpty()) {
                    continue;
                }
                double room = (plan.rules().hullSpacing() + ROOM + plan.hulls().get(from).landingDispersion()
                        + plan.hulls().get(to).landingDispersion()) / site.scale();
                if (known.containsKey(from) && given.containsKey(to) && !known.containsKey(to)) {
                    known.put(to, set(known.get(from), one.get(), other.get(), room));
                } else if (known.containsKey(to) && given.containsKey(from) && !known.containsKey(from)) {
                    known.put(from, set(known.get(to), other.get(), one.get(), room));
                }
            }
        }
        Pose zero = Pose.of(new Point(0, 0), new Azimuth(0));
        known.forEach((hull, pose) -> {
            if (given.containsKey(hull)) {
                Point seen = Groups.seen(zero, new Point(pose.east(), pose.north()));
                found.put(hull, Pose.of(seen, new Azimuth(pose.azimuth())));
            }
        });
        return found;
    }

    /** A hull whose hatch looks straight at that of another. */
    private static Pose set(Pose lead, Way from, Way to, double room) {
        // To the left is against the clock, azimuths run with it.
        Azimuth out = new Azimuth(lead.azimuth() - from.out);
        Point hatch = lead.place(from.place.east(), from.place.north()).moved(out, room, 0);
        Azimuth heading = new Azimuth(out.radians() + Math.PI + to.out);
        Point base = hatch.moved(heading, -to.place.east(), -to.place.north());
        return Pose.of(base, heading);
    }
}
