// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts the entries of a form together as a person thinks of the thing: shape, mass, gear, cover, people. */
final class FormLayout {
    private static final String REST = "More";
    private static final Map<Part.Kind, Map<String, List<String>>> GROUPS = Map.of(
            Part.Kind.HULL, groups("Place", "id base_centre lay_down_azimuth_deg arrival landing_dispersion_m"
                    + " clocking_deg held",
                    "Shape", "length_m diameter_m base_end far_end hatches",
                    "Mass", "mass_t centre_of_mass_from_base_m centre_of_mass_off_axis_m centre_of_mass_spread_m"
                    + " inertia_about_centre_t_m2 residual_propellant_t",
                    "Wall", "skin stowage shell inner_pressure_kPa",
                    "Laying down", "pivot lowering seat", "Cover", "cover",
                    "People", "stations"),
            Part.Kind.EXPOSURE, groups("Stay", "stay_days hours_outside_a_day to_shelter_min",
                    "Sun and events", "solar_activity solar_date modulation_W event event_spectrum_file event_fit",
                    "Limits and people", "limits people", "Response tables", "response more_responses",
                    "Besides radiation", "hazards"),
            Part.Kind.GROUND, groups("Elevation file", "elevation_file reference_system elevation_spread_m"
                    + " elevation_correlation_m",
                    "At the surface", "gravity_m_s2 pivot_friction", "Soil", "regolith"),
            Part.Kind.RULES, groups("Clearance", "greatest_slope_under_hull_deg hull_spacing_m",
                    "Design factors", "line_design_factor anchor_design_factor pole_design_factor pivot_hold_factor"
                    + " shock_design_factor after_loss_design_factor", "Work", "work_start night_work_share"),
            Part.Kind.MACHINE, groups("Machines", "id kind count load_t",
                    "Time", "speed_m_s fill_s dump_s hours_a_day availability_share",
                    "On the ground", "greatest_grade_deg width_m mass_t contact_area_m2"));

    private FormLayout() {
    }

    private static Map<String, List<String>> groups(String... words) {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        for (int i = 0; i < words.length; i += 2) {
            groups.put(words[i], List.of(words[i + 1].split(" ")));
        }
        return groups;
    }

    /** The form with its entries in groups; one that the tables do not know of stays at the end. */
    static FormEntry.Block grouped(FormEntry.Block form, Part.Kind kind) {
        Map<String, List<String>> groups = GROUPS.getOrDefault(kind, Map.of());
        if (groups.isEmpty()) {
            return form;
        }
        List<FormEntry> rest = new ArrayList<>(form.entries());
        List<FormEntry> all = new ArrayList<>();
        groups.forEach((heading, keys) -> {
            List<FormEntry> inner = new ArrayList<>();
            for (String key : keys) {
                String path = form.path() + "." + key;
                rest.stream().filter(e -> e.path().equals(path) || e.path().startsWith(path + ".")).forEach(inner::add);
            }
            rest.removeAll(inner);
            if (!inner.isEmpty()) {
                all.add(new FormEntry.Group(form.path() + "#" + heading, heading, inner));
            }
        });
        if (!rest.isEmpty()) {
            all.add(new FormEntry.Group(form.path() + "#" + REST, REST, rest));
        }
        return new FormEntry.Block(form.path(), form.label(), form.isThere(), form.canGo(), form.rule(),
                form.addition(), all);
    }
}
