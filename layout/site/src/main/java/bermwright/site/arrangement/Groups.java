// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Hulls that tunnels join move as one: the first of a group by a pose of its own, the others by poses from it.
 *
 * <p>A pose is three numbers of like size: metres ahead and to the left in a frame that turns and moves with the plan,
 * and the heading as metres on an arc. So a plan turned or moved with its ground is searched by the same numbers.
 */
final class Groups {
    /** Radius of the arc that a heading is measured on (m). */
    static final double ARC = 20;
    static final int NUMBERS = 3;

    private final List<Integer> movable;
    private final List<Integer> leads = new ArrayList<>();
    private final Pose origin;
    private final List<Pose> planned;

    private Groups(Plan plan, Set<Integer> free, List<Pose> planned) {
        this.movable = List.copyOf(new TreeSet<>(free));
        this.planned = planned;
        this.origin = planned.get(movable.get(0));
        int[] group = new int[planned.size()];
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
        }
        plan.tunnels().forEach(t -> {
            int from = place(plan, t.from());
            int to = place(plan, t.to());
            if (from >= 0 && to >= 0) {
                int keep = group[from];
                int gone = group[to];
                for (int i = 0; i < group.length; i++) {
                    group[i] = group[i] == gone ? keep : group[i];
                }
            }
        });
        for (int hull : movable) {
            int lead = hull;
            for (int i = 0; i < group.length; i++) {
                // A held hull leads its group; else the first.
                boolean better = !free.contains(i) && free.contains(lead) || free.contains(i) == free.contains(lead)
                        && i < lead;
                lead = group[i] == group[hull] && better ? i : lead;
            }
            leads.add(lead);
        }
    }

    static Groups of(Plan plan, Set<Integer> free, List<Pose> planned) {
        return new Groups(plan, free, planned);
    }

    private static int place(Plan plan, String hatch) {
        String id = HatchName.of(hatch).hull();
        for (int i = 0; i < plan.hulls().size(); i++) {
            if (plan.hulls().get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    int numbers() {
        return NUMBERS * movable.size();
    }

    List<Integer> movable() {
        return movable;
    }

    /** The hull that leads a hull that moves; itself where it leads. */
    int lead(int hull) {
        return leads.get(movable.indexOf(hull));
    }

    boolean isLead(int hull) {
        return lead(hull) == hull;
    }

    Pose origin() {
        return origin;
    }

    /** Poses of all hulls. */
    List<Pose> poses(double[] numbers) {
        List<Pose> poses = new ArrayList<>(planned);
        for (int pass = 0; pass < 2; pass++) {
            for (int k = 0; k < movable.size(); k++) {
                int hull = movable.get(k);
                if (isLead(hull) == (pass == 0)) {
                    poses.set(hull, pose(pass == 0 ? origin : poses.get(leads.get(k)), numbers, NUMBERS * k));
                }
            }
        }
        return poses;
    }

    private static Pose pose(Pose from, double[] numbers, int at) {
        return Pose.of(from.place(numbers[at], numbers[at + 1]),
                new Azimuth(from.azimuth() + numbers[at + 2] / ARC));
    }

    /** The numbers of poses. */
    double[] numbers(List<Pose> poses) {
        double[] numbers = new double[numbers()];
        for (int k = 0; k < movable.size(); k++) {
            int hull = movable.get(k);
            Pose from = isLead(hull) ? origin : poses.get(leads.get(k));
            Pose pose = poses.get(hull);
            Point seen = seen(from, new Point(pose.east(), pose.north()));
            numbers[NUMBERS * k] = seen.east();
            numbers[NUMBERS * k + 1] = seen.north();
            numbers[NUMBERS * k + 2] = turn(pose.azimuth() - from.azimuth()) * ARC;
        }
        return numbers;
    }

    /** A place from a pose: ahead as east, to the left as north. */
    static Point seen(Pose from, Point place) {
        double dx = place.east() - from.east();
        double dy = place.north() - from.north();
        return new Point(dx * from.sine() + dy * from.cosine(), -dx * from.cosine() + dy * from.sine());
    }

    /** An angle between half a turn to either side. */
    static double turn(double angle) {
        return Math.IEEEremainder(angle, 2 * Math.PI);
    }
}
