// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.shielding.dose.DoseLimit;
import bermwright.site.assessment.KnownNames;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** What a field that names something can name: things of the plan, and materials, events and limits known here. */
final class NamesInPlan {
    private static final Map<String, Function<Plan, Map<String, String>>> BY_PATH = Map.ofEntries(
            Map.entry("hulls.skin.material", plan -> KnownNames.materials()),
            Map.entry("hulls.stowage.material", plan -> KnownNames.materials()),
            Map.entry("tunnels.skin.material", plan -> KnownNames.materials()),
            Map.entry("hulls.cover.base_end_wall", NamesInPlan::walls),
            Map.entry("hulls.cover.far_end_wall", NamesInPlan::walls),
            Map.entry("hulls.lowering.landing.pad", plan -> all(plan, Part.Kind.LANDING_PAD, "a landing pad of"
                    + " the plan")),
            Map.entry("tunnels.from", NamesInPlan::hatches),
            Map.entry("tunnels.to", NamesInPlan::hatches),
            Map.entry("exposure.event", plan -> KnownNames.events()),
            Map.entry("exposure.limits.published", plan -> limits()),
            Map.entry("exposure.people.shelter", NamesInPlan::stations),
            Map.entry("exposure.people.hours.at", NamesInPlan::stations),
            Map.entry("order_of_work.of", NamesInPlan::workedOn),
            Map.entry("order_of_work.machine", plan -> all(plan, Part.Kind.MACHINE, "machines of the plan")),
            Map.entry("order_of_work.after", plan -> {
                Map<String, String> steps = new LinkedHashMap<>();
                plan.orderOfWork().forEach(s -> steps.put(s.id(), words(s)));
                return steps;
            }));
    private static final Set<String> FILES = Set.of("ground.elevation_file", "exposure.event_spectrum_file",
            "order_of_work.as_built.elevation_file");

    private NamesInPlan() {
    }

    /** The names with where each is from, in order; none where the field takes any text. */
    static Map<String, String> of(Plan plan, String path) {
        Function<Plan, Map<String, String>> names = BY_PATH.get(plain(path));
        return names == null ? Map.of() : names.apply(plan);
    }

    /** Whether a field names a file beside the plan. */
    static boolean isFile(String path) {
        return FILES.contains(plain(path));
    }

    /** A path without the numbers of list items. */
    static String plain(String path) {
        return path.replaceAll("\\[\\d+]", "");
    }

    private static String words(WorkStep step) {
        return step.step().word() + " " + step.of();
    }

    private static Map<String, String> all(Plan plan, Part.Kind kind, String source) {
        Map<String, String> all = new LinkedHashMap<>();
        Part.ids(plan, kind).forEach(name -> all.put(name, source));
        return all;
    }

    private static Map<String, String> limits() {
        Map<String, String> all = new LinkedHashMap<>();
        KnownNames.limits().forEach(limit -> all.put(limit.name(), Figures.words(limit) + "; " + limit.source()));
        return all;
    }

    /** Figures of a published limit. */
    private static final class Figures {
        private static final double MILLI = 1000;

        private static String words(DoseLimit limit) {
            return UnitWords.number(limit.limit() * MILLI) + " m" + limit.unit() + ", " + limit.quantity() + ", over "
                    + limit.over();
        }
    }

    private static Map<String, String> walls(Plan plan) {
        return all(plan, Part.Kind.WALL, "a wall of the plan");
    }

    private static Map<String, String> hatches(Plan plan) {
        Map<String, String> all = new LinkedHashMap<>();
        for (Hull hull : plan.hulls()) {
            hull.hatches().forEach(h -> all.put(HatchName.of(hull, h).toString(), "hatch " + h.id() + " of hull "
                    + hull.id()));
        }
        return all;
    }

    private static Map<String, String> stations(Plan plan) {
        Map<String, String> all = new LinkedHashMap<>();
        for (Hull hull : plan.hulls()) {
            hull.stations().forEach(s -> all.put(hull.named(s.id()), s.stormShelter() ? "storm shelter"
                    : "station of hull " + hull.id()));
        }
        return all;
    }

    private static Map<String, String> workedOn(Plan plan) {
        Map<String, String> all = new LinkedHashMap<>(all(plan, Part.Kind.HULL, "a hull of the plan"));
        all.putAll(all(plan, Part.Kind.PREPARATION, "a preparation of the plan"));
        all.putAll(walls(plan));
        return all;
    }
}
