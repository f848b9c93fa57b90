// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.finding.Finding.Figures;
import bermwright.site.assessment.Assessment;
import bermwright.site.doubt.UncertainInput.FindingOut;
import bermwright.site.doubt.UncertainInput.Kind;
import bermwright.site.doubt.UncertainInput.Target;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.Key;
import bermwright.site.planfile.PlanValues;
import bermwright.site.planfile.Range;
import bermwright.site.planfile.StatedSpread;
import bermwright.site.planfile.ValueType;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gathers what a plan does not know exactly: its spreads and their defaults, those stated beside numbers, models. */
final class InputsOfPlan {
    /** Share of a line's stiffness that is one standard deviation where none is stated. */
    static final double STRETCH_SHARE = 0.1;
    /** Numbers of a hull that samples work with as they are; what is in gear and shell is such too. */
    private static final Set<String> AS_IT_IS = Set.of("mass_t", "centre_of_mass_off_axis_m",
            "inertia_about_centre_t_m2", "inner_pressure_kPa", "residual_propellant_t");
    private static final String SOIL = "ground.regolith.";
    private static final String PROFILE = SOIL + "strength_profile[";
    private static final FindingOut TEN_SAMPLES = new FindingOut("ten density samples", true);

    private final Plan plan;
    private final List<UncertainInput> inputs = new ArrayList<>();
    private final Map<String, Double> stated = new HashMap<>();

    private InputsOfPlan(Plan plan) {
        this.plan = plan;
    }

    static List<UncertainInput> of(Assessment assessment) {
        InputsOfPlan all = new InputsOfPlan(assessment.plan());
        all.stated();
        all.soil();
        all.hulls();
        if (assessment.cover().filter(c -> c.hulls().stream().anyMatch(h -> h.uncertainty().depth() > 0)).isPresent()) {
            all.ground(assessment);
        }
        if (assessment.dose().filter(d -> !d.stations().isEmpty()).isPresent()) {
            all.models(assessment);
        }
        return all.inputs;
    }

    private void stated() {
        for (StatedSpread spread : PlanValues.spreads(plan)) {
            stated.put(spread.path(), spread.spread());
            if (spread.spread() > 0 && !spread.path().startsWith(PROFILE)) {
                ValueType.Quantity quantity = (ValueType.Quantity) spread.key().type();
                inputs.add(new UncertainInput(spread.path(), kind(spread.path()), spread.value(), spread.spread(),
                        quantity.unit().word(), "plan", new FindingOut("measuring " + spread.path(), false),
                        List.of(new Target(spread.path(), spread.value(), spread.spread(), quantity.range()))));
            }
        }
    }

    private static Kind kind(String path) {
        return path.contains(".lowering.") || path.contains(".shell.") || !path.contains("[") && !path.startsWith(SOIL)
                || AS_IT_IS.contains(path.substring(path.indexOf('.') + 1)) ? Kind.PLAN : Kind.SHAPE;
    }

    private void soil() {
        GroundPlan.Regolith soil = plan.ground().regolith();
        double share = soil.densitySpreadShare();
        String from = source("density_spread_share", SOIL);
        List<Target> placed = new ArrayList<>(List.of(density("placed_density_kg_m3", soil.placedDensity(), share)));
        for (int i = 0; i < plan.hulls().size(); i++) {
            int at = i;
            plan.hulls().get(i).cover().ifPresent(c -> c.density().ifPresent(d -> placed.add(new Target(
                    "hulls[" + at + "].cover.density_kg_m3", d, share * d, range(SOIL + "placed_density_kg_m3")))));
        }
        add(new UncertainInput("density of placed soil", Kind.PLACED_DENSITY, soil.placedDensity(),
                share * soil.placedDensity(), "kg/m3", from, TEN_SAMPLES, placed));
        List<Target> bank = new ArrayList<>();
        if (soil.densityProfile().isEmpty()) {
            bank.add(density("bank_density_kg_m3", soil.bankDensity(), share));
        }
        for (int i = 0; i < soil.densityProfile().size(); i++) {
            double value = soil.densityProfile().get(i).density();
            bank.add(new Target(SOIL + "density_profile[" + i + "].density_kg_m3", value, share * value,
                    range(SOIL + "bank_density_kg_m3")));
        }
        add(new UncertainInput("density in place", Kind.PLAN, bank.get(0).value(), bank.get(0).spread(), "kg/m3",
                from, TEN_SAMPLES, bank));
        add(new UncertainInput("density in the haulers", Kind.PLAN, soil.looseDensity(),
                share * soil.looseDensity(), "kg/m3", from, TEN_SAMPLES,
                List.of(density("loose_density_kg_m3", soil.looseDensity(), share))));
        strength("friction_angle_deg", "friction angle", Math.toDegrees(soil.frictionAngle()),
                Math.toDegrees(soil.frictionSpread()), "deg");
        strength("cohesion_Pa", "cohesion", soil.cohesion(), soil.cohesionSpread(), "Pa");
    }

    private Target density(String key, double value, double share) {
        return new Target(SOIL + key, value, share * value, range(SOIL + key));
    }

    private void strength(String key, String name, double value, double spread, String unit) {
        List<Target> targets = new ArrayList<>(List.of(new Target(SOIL + key, value, spread, range(SOIL + key))));
        List<GroundPlan.StrengthAtDepth> profile = plan.ground().regolith().strengthProfile();
        for (int i = 0; i < profile.size(); i++) {
            String path = PROFILE + i + "]." + key;
            targets.add(new Target(path, key.endsWith("deg") ? Math.toDegrees(profile.get(i).frictionAngle())
                    : profile.get(i).cohesion(), stated.getOrDefault(path, spread), range(SOIL + key)));
        }
        add(new UncertainInput(name, Kind.PLAN, value, spread, unit, source(key.replaceFirst(
                "_([A-Za-z]+)$", "_spread_$1"), SOIL), new FindingOut("ten strength tests", true), targets));
    }

    private void hulls() {
        for (int i = 0; i < plan.hulls().size(); i++) {
            Hull hull = plan.hulls().get(i);
            String path = "hulls[" + i + "].";
            String mass = path + "centre_of_mass_from_base_m";
            if (hull.arrival() != Hull.Arrival.STAYS_UPRIGHT) {
                add(new UncertainInput("centre of mass of " + hull.id(), Kind.PLAN, hull.centreOfMassFromBase(),
                        hull.centreOfMassSpread(), "m", source("centre_of_mass_spread_m", path),
                        new FindingOut("weighing " + hull.id(), false), List.of(new Target(mass,
                                hull.centreOfMassFromBase(), hull.centreOfMassSpread(), range(mass)))));
                String stretch = path + "lowering.lines.line.stiffness_EA_MN";
                hull.lowering().flatMap(g -> g.lines()).flatMap(l -> l.line().stiffness().isPresent()
                        && !stated.containsKey(stretch) ? Optional.of(l.line().stiffness().getAsDouble() / 1e6)
                        : Optional.empty()).ifPresent(value -> add(new UncertainInput("line stretch of "
                        + hull.id(), Kind.PLAN, value, STRETCH_SHARE * value, "MN",
                        "chosen here: a tenth of the stiffness",
                        new FindingOut("a pull test of the lines of " + hull.id(), false), List.of(new Target(stretch,
                                value, STRETCH_SHARE * value, range(stretch))))));
            }
        }
    }

    private void ground(Assessment assessment) {
        String from = source("elevation_spread_m", "ground.") + ", and what a cell hides; errors go together over "
                + Figures.number(plan.ground().elevationCorrelation()) + " m, "
                + source("elevation_correlation_m", "ground.");
        FindingOut better = new FindingOut("a better elevation file", false);
        assessment.cover().orElseThrow().hulls().forEach(h -> inputs.add(new UncertainInput("heights of the ground",
                Kind.GROUND_UNDER_HULL, 0, h.uncertainty().depth(), "m", from, better, List.of(new Target(h.id(), 0,
                        0, Range.between(0, 0))))));
    }

    private void models(Assessment assessment) {
        FindingOut better = new FindingOut("a reviewer's calculation", false);
        inputs.add(new UncertainInput("dose model, cosmic rays", Kind.COSMIC_MODEL, 1, 0, "1",
                "distance of the response from published figures, by depth", better, List.of()));
        if (assessment.dose().orElseThrow().hasEvent()) {
            inputs.add(new UncertainInput("dose model and event", Kind.EVENT_MODEL, 1, 0, "1",
                    "distance of the response from published figures, and of the event's spectrum", better,
                    List.of()));
        }
        inputs.add(new UncertainInput("solar activity", Kind.SUN, 1, 0, "1", "one standard deviation of the modulation"
                + " either side of the one planned with", new FindingOut("a sure forecast of the sun", false),
                List.of()));
    }

    private void add(UncertainInput input) {
        if (input.spread() > 0 || input.targets().stream().anyMatch(t -> t.spread() > 0)) {
            inputs.add(input);
        }
    }

    private static Range range(String path) {
        return ((ValueType.Quantity) PlanValues.key(path).orElseThrow().type()).range();
    }

    private String source(String key, String object) {
        String path = object + key;
        Key known = PlanValues.key(path).orElseThrow();
        boolean given = object.startsWith(SOIL) ? plan.ground().regolith().annotations().given().contains(key)
                : object.startsWith("ground.") ? plan.ground().annotations().given().contains(key)
                : plan.hulls().get(Integer.parseInt(object.replaceAll("\\D", ""))).annotations().given().contains(key);
        return given ? key + " of the plan" : key + ", default: " + known.source();
    }
}
