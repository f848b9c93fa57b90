// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Stowage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a plan's file must hold together beyond single keys: ids given once, parts that fit their hull. */
final class PlanChecks {
    private static final double FULL_TURN_DEG = 360;
    private static final double ROUNDING = 1e-6;

    private PlanChecks() {
    }

    static void check(Plan plan, Json.Fields file, At at) {
        for (Key key : PlanKeys.of(Plan.class)) {
            file.member(key.name()).ifPresent(list -> ids(list, at.key(key.name())));
        }
        file.member("ground").filter(Json.Fields.class::isInstance).flatMap(g -> ((Json.Fields) g).member("regolith"))
                .filter(Json.Fields.class::isInstance).map(Json.Fields.class::cast).ifPresent(soil -> {
                    growing(soil, "density_profile", at.key("ground").key("regolith"));
                    growing(soil, "strength_profile", at.key("ground").key("regolith"));
                });
        limits(plan, file, at);
        file.member("exposure").filter(Json.Fields.class::isInstance).flatMap(e -> ((Json.Fields) e).member("people"))
                .ifPresent(list -> ids(list, at.key("exposure").key("people")));
        List<Hull> hulls = plan.hulls();
        for (int i = 0; i < hulls.size(); i++) {
            if (file.member("hulls").orElseThrow() instanceof Json.Items items
                    && items.items().get(i) instanceof Json.Fields hull) {
                At here = at.key("hulls").item(i);
                hull.member("hatches").ifPresent(list -> ids(list, here.key("hatches")));
                hull.member("stations").ifPresent(list -> ids(list, here.key("stations")));
                hull.member("stowage").ifPresent(list -> ids(list, here.key("stowage")));
                hull.member("cover").filter(Json.Fields.class::isInstance).map(Json.Fields.class::cast)
                        .flatMap(cover -> cover.member("pass_throughs"))
                        .ifPresent(list -> ids(list, here.key("cover").key("pass_throughs")));
                hull(hulls.get(i), hull, here);
            }
        }
    }

    /** Refuses depths that do not grow down a profile. */
    private static void growing(Json.Fields soil, String profile, At at) {
        double above = -1;
        if (soil.member(profile).orElse(soil) instanceof Json.Items items) {
            for (int i = 0; i < items.items().size(); i++) {
                Json.Leaf depth = (Json.Leaf) ((Json.Fields) items.items().get(i)).member("depth_m").orElseThrow();
                double here = Double.parseDouble(depth.text());
                if (!(here > above)) {
                    throw at.key(profile).item(i).key("depth_m").refuse(depth, "more than the depth before it, "
                            + JsonText.number(above) + ", in m");
                }
                above = here;
            }
        }
    }

    /** Refuses a dose limit that has neither a value nor the name of a published limit. */
    private static void limits(Plan plan, Json.Fields file, At at) {
        Optional<Json> list = file.member("exposure").filter(Json.Fields.class::isInstance)
                .flatMap(exposure -> ((Json.Fields) exposure).member("limits"));
        List<ExposurePlan.Limit> limits = plan.exposure().limits();
        for (int i = 0; i < limits.size(); i++) {
            if (limits.get(i).limit().isEmpty() && limits.get(i).published().isEmpty()
                    && list.orElseThrow() instanceof Json.Items items) {
                throw at.key("exposure").key("limits").item(i).key("limit_mSv").refuse(items.items().get(i).line(),
                        "missing", WorkKeys.LIMIT_VALUE.accepted() + ", or published with the name of a limit: "
                                + String.join(", ", LimitInForce.names().stream().map(JsonText::quoted).toList()));
            }
        }
    }

    /** Refuses an id that stands twice in one list. */
    private static void ids(Json list, At at) {
        if (!(list instanceof Json.Items items)) {
            return;
        }
        Map<String, Integer> lines = new HashMap<>();
        for (int i = 0; i < items.items().size(); i++) {
            if (items.items().get(i) instanceof Json.Fields item
                    && item.member("id").orElse(item) instanceof Json.Leaf id) {
                Integer first = lines.putIfAbsent(id.text(), id.line());
                if (first != null) {
                    throw at.item(i).key("id").refuse(id.line(), id.found() + ", given already on line " + first,
                            "an id that stands once in the list");
                }
            }
        }
    }

    private static void hull(Hull hull, Json.Fields file, At at) {
        String length = JsonText.number(hull.length());
        if (!(hull.centreOfMassFromBase() < hull.length())) {
            throw at.key("centre_of_mass_from_base_m").refuse(file.member("centre_of_mass_from_base_m").orElseThrow(),
                    "less than the hull's length, " + length + ", in m");
        }
        double ends = hull.baseEnd().depth() + hull.farEnd().depth();
        if (!(ends <= hull.length())) {
            throw at.key("far_end").key("depth_m").refuse(file.member("far_end").orElse(file).line(),
                    "such that both ends are " + JsonText.number(ends) + " deep",
                    "both ends together at most the hull's length, " + length + ", in m");
        }
        for (int i = 0; i < hull.stowage().size(); i++) {
            stowage(hull, i, file.member("stowage").orElse(file), at.key("stowage").item(i));
        }
        hull.lowering().ifPresent(gear -> {
            Optional<String> missing = missingBlock(gear);
            if (missing.isPresent()) {
                throw at.key("lowering").key(missing.get()).refuse(file.member("lowering").orElse(file).line(),
                        "missing", "an object, because means is \"" + gear.means().word() + "\"");
            }
        });
    }

    /** Refuses a part of the wall that ends before it begins, beyond the hull, or after more than a turn. */
    private static void stowage(Hull hull, int which, Json list, At at) {
        Stowage stowage = hull.stowage().get(which);
        int line = list instanceof Json.Items items ? items.items().get(which).line() : list.line();
        if (!(stowage.toAlong() > stowage.fromAlong() && stowage.toAlong() <= hull.length())) {
            throw at.key("to_along_m").refuse(line, JsonText.number(stowage.toAlong()), "more than from_along_m, "
                    + JsonText.number(stowage.fromAlong()) + ", and at most the hull's length, "
                    + JsonText.number(hull.length()) + ", in m");
        }
        double turn = Math.toDegrees(stowage.toAround() - stowage.fromAround());
        if (!(turn > 0 && turn <= FULL_TURN_DEG + ROUNDING)) {
            throw at.key("to_around_deg").refuse(line, degrees(stowage.toAround()),
                    "more than from_around_deg, " + degrees(stowage.fromAround()) + ", by at most 360, in degrees");
        }
    }

    private static String degrees(double radians) {
        return JsonText.number(Math.rint(Math.toDegrees(radians) * 1e6) / 1e6);
    }

    private static Optional<String> missingBlock(LoweringGear gear) {
        return switch (gear.means()) {
            case LINES -> gear.lines().isPresent() ? Optional.empty() : Optional.of("lines");
            case SIDE_THRUSTERS -> gear.sideThrusters().isPresent() ? Optional.empty() : Optional.of("side_thrusters");
        };
    }
}
