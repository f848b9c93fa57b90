// SPDX-License-Identifier: Apache-2.0
package bermwright.site.gear;

import bermwright.lowering.rig.Reeving;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The places of a hull's lowering gear, read from the plan once.
 *
 * @param reeving  which line runs over which pole; absent where no lines are given
 * @param lines    the lowering lines, from right to left
 * @param poles    the poles, from right to left; empty where the lines run straight to the winches
 * @param stays    the stays, set by set, each from right to left; empty without poles
 * @param pullOver the pull-over line; absent where none is given
 */
public record GearPlaces(Optional<Reeving> reeving, List<LinePlace> lines, List<PolePlace> poles,
        List<StayPlace> stays, Optional<PullOverPlace> pullOver) {
    /** Copies the lists. */
    public GearPlaces {
        Objects.requireNonNull(reeving, "reeving");
        lines = List.copyOf(lines);
        poles = List.copyOf(poles);
        stays = List.copyOf(stays);
        Objects.requireNonNull(pullOver, "pullOver");
    }

    /**
     * A lowering line.
     *
     * @param name    its name, such as {@code lowering line 2}
     * @param lugLeft how far its lug stands to the left of the hull's axis (m)
     * @param lead    where it leads from the lug: the foot of its pole, under the head; its winch without poles
     * @param winch   its winch
     */
    public record LinePlace(String name, double lugLeft, Spot lead, Spot winch) {
    }

    /**
     * A pole.
     *
     * @param name   its name, such as {@code left pole}
     * @param foot   its foot; the head stands plumb over it
     * @param height its height (m)
     */
    public record PolePlace(String name, Spot foot, double height) {
    }

    /**
     * A stay.
     *
     * @param name   its name, such as {@code left stay}
     * @param set    number of its set in the plan, from 0
     * @param pole   number of the pole that it holds, from 0 on the right
     * @param anchor where it reaches the ground
     */
    public record StayPlace(String name, int set, int pole, Spot anchor) {
    }

    /**
     * The pull-over line.
     *
     * @param name        its name
     * @param lugFromBase its lug along the axis from the base plane (m)
     * @param winch       its winch and anchor
     */
    public record PullOverPlace(String name, double lugFromBase, Spot winch) {
    }

    /**
     * The places of a hull's gear, whatever lays the hull down.
     *
     * @param hull the hull
     * @return the places; empty lists where the plan gives no such gear
     */
    public static GearPlaces of(Hull hull) {
        return hull.lowering().map(GearPlaces::of)
                .orElse(new GearPlaces(Optional.empty(), List.of(), List.of(), List.of(), Optional.empty()));
    }

    /**
     * The places of a gear.
     *
     * @param gear the gear
     * @return the places; empty lists where the plan gives no such gear
     */
    public static GearPlaces of(LoweringGear gear) {
        Optional<LoweringGear.Poles> given = gear.poles();
        int count = given.map(LoweringGear.Poles::poleCount).orElse(0);
        double poleHalf = given.map(LoweringGear.Poles::halfSpread).orElse(0.0);
        double lugHalf = gear.lines().map(l -> l.count() == 1 ? 0 : l.lugHalfSpread()).orElse(0.0);
        Reeving reeving = new Reeving(gear.lines().map(LoweringGear.Lines::count).orElse(1), count, lugHalf, poleHalf,
                gear.lines().map(l -> l.winch().spacing()).orElse(0.0));
        List<PolePlace> poles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            poles.add(new PolePlace(side(i, count, "pole"), new Spot(-given.get().behindPivot(), reeving.poleLeft(i)),
                    given.get().height()));
        }
        return new GearPlaces(gear.lines().map(l -> reeving), gear.lines().map(l -> lines(l, reeving, poles))
                .orElse(List.of()), poles, stays(gear, reeving), gear.pullOver().map(p -> new PullOverPlace(
                        "pull-over line", p.lugFromBase(), new Spot(p.anchorAhead(), 0))));
    }

    private static List<LinePlace> lines(LoweringGear.Lines lines, Reeving reeving, List<PolePlace> poles) {
        List<LinePlace> places = new ArrayList<>();
        for (int i = 0; i < lines.count(); i++) {
            Spot winch = new Spot(-lines.winch().behindPivot(), reeving.winchLeft(i));
            places.add(new LinePlace(lines.count() == 1 ? "lowering line" : "lowering line " + (i + 1),
                    reeving.lugLeft(i), poles.isEmpty() ? winch : poles.get(reeving.poleOf(i)).foot(), winch));
        }
        return places;
    }

    private static List<StayPlace> stays(LoweringGear gear, Reeving reeving) {
        List<StayPlace> places = new ArrayList<>();
        for (int set = 0; set < gear.stays().size() && gear.poles().isPresent(); set++) {
            LoweringGear.Stay stay = gear.stays().get(set);
            int count = reeving.stays(stay.halfSpread());
            for (int i = 0; i < count; i++) {
                String name = side(i, count, "stay") + (gear.stays().size() > 1 ? " of set " + (set + 1) : "");
                places.add(new StayPlace(name, set, reeving.poleOfStay(i),
                        new Spot(-gear.poles().get().behindPivot() - stay.behindPole(),
                                reeving.stayLeft(i, stay.halfSpread()))));
            }
        }
        return places;
    }

    private static String side(int number, int count, String part) {
        if (count == 1) {
            return part;
        }
        if (number == 0 || number == count - 1) {
            return (number == 0 ? "right " : "left ") + part;
        }
        return (count == 3 ? "middle " + part : "inner " + part + " " + number);
    }
}
