// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import bermwright.lowering.chain.Part;
import bermwright.site.plan.Anchor;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which figure of a hull's gear strengthens which part of the load path. */
final class GearLevers {
    private static final String GEAR = ".lowering.";
    private static final Map<Part, Lever> OF_PART = new EnumMap<>(Map.ofEntries(
            Map.entry(Part.LOWERING_LINE, of("lines.line.breaking_load_kN", "Take lowering lines that break at")),
            Map.entry(Part.TERMINATION, of("lines.line.breaking_load_kN", "Take lowering lines that break at")),
            Map.entry(Part.LINE_OVER_SHEAVE, of("poles.head.sheave_diameter_mm", "Take head sheaves of")),
            Map.entry(Part.HEAD_SHEAVE, of("poles.head.sheave_capacity_kN", "Take head sheaves that bear")),
            Map.entry(Part.LUG, of("lines.ends.lug_capacity_kN", "Take lugs that bear")),
            Map.entry(Part.POLE, of("poles.wall_mm", "Thicken the wall of the poles to")),
            Map.entry(Part.POLE_FOOT, of("poles.foot_area_m2", "Widen the pole feet to")),
            Map.entry(Part.HEAD_TIE, of("poles.head.tie_capacity_kN", "Take a tie between the heads that bears")),
            Map.entry(Part.WINCH, of("lines.winch.rating_each_kN", "Take winches rated for")),
            Map.entry(Part.WINCH_BRAKE, of("lines.winch.brake_holding_kN", "Take winch brakes that hold")),
            Map.entry(Part.BRAKE_HEAT, of("lines.winch.brake_heat_MJ", "Take winch brakes that store")),
            Map.entry(Part.PULL_OVER_LINE, of("pull_over.line.breaking_load_kN",
                    "Take a pull-over line that breaks at")),
            Map.entry(Part.PULL_OVER_TERMINATION, of("pull_over.line.breaking_load_kN",
                    "Take a pull-over line that breaks at")),
            Map.entry(Part.PULL_OVER_LUG, of("pull_over.ends.lug_capacity_kN", "Take a pull-over lug that bears")),
            Map.entry(Part.PULL_OVER_WINCH, of("pull_over.winch_rating_kN", "Take a pull-over winch rated for"))));

    private GearLevers() {
    }

    private static Lever of(String path, String words) {
        return new Lever(path, true, words);
    }

    /**
     * What strengthens a part.
     *
     * @param hull the hull
     * @param path its path, such as {@code hulls[0]}
     * @param part the part
     * @return the levers, the likeliest first; none where no one figure does
     */
    static List<Lever> of(Hull hull, String path, Part part) {
        Optional<LoweringGear> gear = hull.lowering();
        if (gear.isEmpty()) {
            return List.of();
        }
        Lever plain = OF_PART.get(part);
        if (plain != null) {
            return List.of(plain.from(path + ".lowering"));
        }
        return switch (part) {
            case STAY -> stays(gear.get(), path);
            case STAY_ANCHOR -> gear.get().stays().stream().findFirst().flatMap(LoweringGear.Stay::anchor)
                    .map(a -> anchor(a, path + GEAR + "stays[0].anchor", "stay")).orElse(List.of());
            case WINCH_ANCHOR -> gear.get().lines().flatMap(l -> l.winch().anchor())
                    .map(a -> anchor(a, path + GEAR + "lines.winch.anchor", "winch")).orElse(List.of());
            case PULL_OVER_ANCHOR -> gear.get().pullOver().flatMap(LoweringGear.PullOver::anchor)
                    .map(a -> anchor(a, path + GEAR + "pull_over.anchor", "pull-over")).orElse(List.of());
            case PIVOT_HOLD -> gear.get().pivotHold().map(h -> anchor(h.anchor(), path + GEAR + "pivot_hold.anchor",
                    "pivot")).orElse(List.of());
            case PIVOT_GROUND -> List.of(new Lever(path + ".pivot.foot_area_m2", true, "Widen each pivot foot to"));
            case HULL -> List.of(new Lever(path + ".shell.thickness_mm", true, "Thicken the shell to"));
            default -> List.of();
        };
    }

    private static List<Lever> stays(LoweringGear gear, String path) {
        List<Lever> levers = new ArrayList<>();
        for (int i = 0; i < gear.stays().size(); i++) {
            levers.add(new Lever(path + GEAR + "stays[" + i + "].breaking_load_kN", true, "Take stays that break at"));
        }
        return levers;
    }

    /** What makes an anchor hold more, by its kind. */
    private static List<Lever> anchor(Anchor anchor, String path, String whose) {
        String of = " the " + whose + " anchor ";
        return anchor.kind().holdsMoreBy().stream().map(size -> new Lever(path + "." + size.key(), true,
                switch (size) {
                    case WIDTH -> "Widen" + of + "to";
                    case HEIGHT -> "Make" + of + "as high as";
                    case LENGTH -> "Lengthen" + of + "to";
                    case DEPTH -> "Set" + of + "at a depth of";
                    case MASS -> "Load" + of + "with";
                    case COUNT -> "Make the number of members of" + of + "be";
                    case DIAMETER -> "Make" + of + "of a diameter of";
                })).toList();
    }
}
