// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.regolith.BulkDensity;
import bermwright.regolith.LunarRegolith;
import bermwright.regolith.Regolith;
import bermwright.regolith.SoilStates;
import bermwright.regolith.StatedStrength;
import bermwright.regolith.Strength;
import bermwright.regolith.StrengthProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What the soil keys of a plan mean. Every room (lowering, cover, dose, earthworks, stages) reads the plan's soil here.
 *
 * <ul>
 * <li>Density in place is {@code density_profile} by depth below the natural ground; where the plan has none it is
 * {@code bank_density_kg_m3} at every depth. Beside a profile {@code bank_density_kg_m3} counts nowhere. Soil dug to a
 * depth has the mean density from the surface to there; where no depth is known, over the upper metre.</li>
 * <li>Strength in place is {@code strength_profile} by depth; where the plan has none it is
 * {@code friction_angle_deg} and {@code cohesion_Pa} at every depth. Neither is raised, capped or guessed. Their
 * spreads hold at every depth.</li>
 * <li>Placed soil has {@code placed_density_kg_m3}, {@code friction_angle_deg} and {@code cohesion_Pa}; soil in a
 * hauler {@code loose_density_kg_m3}.</li>
 * </ul>
 *
 * @param inPlace the natural ground
 * @param keys    the keys it was made from
 */
public record PlanSoil(Regolith inPlace, GroundPlan.Regolith keys) {
    /** Depth over which soil in place is averaged where nobody knows how deep it is dug (m). */
    public static final double USUAL_DEPTH = 1;
    private static final String IN_PLACE = "in place";
    private static final String DENSITY = "bulk density";
    private static final String FRICTION = "friction angle";
    private static final String COHESION = "cohesion";
    private static final String DENSE = "kg/m3";

    /** Refuses missing parts. */
    public PlanSoil {
        Objects.requireNonNull(inPlace, "inPlace");
        Objects.requireNonNull(keys, "keys");
    }

    /**
     * What one answer about the soil rests on.
     *
     * @param about what it is about, in words
     * @param taken what was taken, in words, with units
     * @param from  the keys it was taken from, and whether they are defaults
     */
    public record Statement(String about, String taken, String from) {
    }

    /**
     * The soil of a plan.
     *
     * @param ground the plan's ground
     * @return its soil
     */
    public static PlanSoil of(GroundPlan ground) {
        GroundPlan.Regolith keys = ground.regolith();
        Strength stated = new Strength(keys.frictionAngle(), keys.cohesion());
        BulkDensity density = keys.densityProfile().isEmpty() ? BulkDensity.uniform(keys.bankDensity())
                : BulkDensity.of(keys.densityProfile().stream()
                        .map(d -> new BulkDensity.At(d.depth(), d.density())).toList());
        StrengthProfile strength = keys.strengthProfile().isEmpty() ? StrengthProfile.constant(stated)
                : StrengthProfile.of(keys.strengthProfile().stream().map(s -> new StrengthProfile.At(s.depth(),
                        new Strength(s.frictionAngle(), s.cohesion()))).toList());
        return new PlanSoil(new Regolith(density, strength, new StatedStrength(stated, keys.frictionSpread(),
                keys.cohesionSpread())), keys);
    }

    /**
     * Friction angle and cohesion as the plan states them, which placed soil has.
     *
     * @return the strength
     */
    public Strength stated() {
        return inPlace.stated().value();
    }

    /**
     * Density of soil dug from the surface to a depth.
     *
     * @param depth depth (m), zero or more
     * @return mean density in place (kg/m3)
     */
    public double bankDensity(double depth) {
        return inPlace.meanDensity(depth);
    }

    /**
     * The states of soil that is dug from the surface to a depth.
     *
     * @param depth depth (m), zero or more
     * @return bank, loose and placed density
     */
    public SoilStates states(double depth) {
        return new SoilStates(bankDensity(depth), keys.looseDensity(), keys.placedDensity(),
                keys.densitySpreadShare());
    }

    /**
     * The states of soil of which nobody knows how deep it is dug.
     *
     * @return bank density over the upper metre, loose and placed density
     */
    public SoilStates states() {
        return states(USUAL_DEPTH);
    }

    /**
     * The states of soil that a plan's borrow grounds give, dug to the deepest of them; without any, of the upper
     * metre.
     *
     * @param plan the plan
     * @return bank, loose and placed density
     */
    public static SoilStates borrowed(Plan plan) {
        return of(plan.ground()).states(plan.borrowGrounds().stream().mapToDouble(BorrowGround::greatestDepth).max()
                .orElse(USUAL_DEPTH));
    }

    /**
     * What every answer about this soil rests on, defaults named.
     *
     * @return the statements: density in place, strength in place, soil once placed, soil in a hauler
     */
    public List<Statement> statements() {
        List<Statement> said = new ArrayList<>();
        said.add(density());
        said.add(strength());
        said.add(new Statement("spread of the strength", text("friction angle -/+%.1f deg, cohesion -/+%.0f Pa",
                Math.toDegrees(keys.frictionSpread()), keys.cohesionSpread()),
                from("friction_angle_spread_deg") + "; " + from("cohesion_spread_Pa")));
        said.add(new Statement("soil once placed", text("%.0f kg/m3, friction angle %.1f deg, cohesion %.0f Pa; stands"
                + " at %.1f deg; one m3 takes %.3f m3 in place%s", keys.placedDensity(),
                Math.toDegrees(keys.frictionAngle()), keys.cohesion(), Math.toDegrees(keys.stableSlope()),
                states().shrink(), overTheMetre()),
                from("placed_density_kg_m3") + "; " + from("stable_slope_deg")));
        said.add(new Statement("soil in a hauler", text("%.0f kg/m3; one m3 in place becomes %.3f m3%s",
                keys.looseDensity(), states().swell(), overTheMetre()),
                from("loose_density_kg_m3")));
        return said;
    }

    /**
     * One figure of the soil, for those who reckon with it.
     *
     * @param state    which soil: in place, placed, in a hauler
     * @param quantity what is meant
     * @param depth    depth below the ground's surface (m); absent where it holds at every depth
     * @param value    the value, in the unit
     * @param spread   one standard deviation (in the unit); absent where none is stated
     * @param unit     its unit
     * @param key      the key of the plan it is from, and whether it is a default
     */
    public record Figure(String state, String quantity, OptionalDouble depth, double value, OptionalDouble spread,
            String unit, String key) {
    }

    /**
     * The figures behind the statements, one number each.
     *
     * @return the figures
     */
    public List<Figure> figures() {
        List<Figure> all = new ArrayList<>();
        double share = keys.densitySpreadShare();
        if (keys.densityProfile().isEmpty()) {
            all.add(density(IN_PLACE, keys.bankDensity(), "bank_density_kg_m3"));
        }
        keys.densityProfile().forEach(d -> all.add(new Figure(IN_PLACE, DENSITY, OptionalDouble.of(d.depth()),
                d.density(), OptionalDouble.of(share * d.density()), DENSE, "density_profile of the plan")));
        if (keys.strengthProfile().isEmpty()) {
            strength(all, IN_PLACE);
        }
        keys.strengthProfile().forEach(s -> {
            all.add(new Figure(IN_PLACE, FRICTION, OptionalDouble.of(s.depth()), Math.toDegrees(s.frictionAngle()),
                    OptionalDouble.of(Math.toDegrees(keys.frictionSpread())), "deg", "strength_profile of the plan"));
            all.add(new Figure(IN_PLACE, COHESION, OptionalDouble.of(s.depth()), s.cohesion(),
                    OptionalDouble.of(keys.cohesionSpread()), "Pa", "strength_profile of the plan"));
        });
        all.add(density("placed", keys.placedDensity(), "placed_density_kg_m3"));
        strength(all, "placed");
        all.add(new Figure("placed", "slope at which it stands", OptionalDouble.empty(),
                Math.toDegrees(keys.stableSlope()), OptionalDouble.empty(), "deg", from("stable_slope_deg")));
        all.add(new Figure("placed", "volume in place for one placed" + overTheMetre(), OptionalDouble.empty(),
                states().shrink(), OptionalDouble.empty(), "m3/m3", "densities in place and placed"));
        all.add(density("in a hauler", keys.looseDensity(), "loose_density_kg_m3"));
        all.add(new Figure("in a hauler", "volume loose for one in place" + overTheMetre(), OptionalDouble.empty(),
                states().swell(), OptionalDouble.empty(), "m3/m3", "densities in place and loose"));
        return all;
    }

    private Figure density(String state, double value, String key) {
        return new Figure(state, DENSITY, OptionalDouble.empty(), value, OptionalDouble.of(keys.densitySpreadShare()
                * value), DENSE, from(key));
    }

    /** The strength that holds at every depth, with its spread. */
    private void strength(List<Figure> all, String state) {
        all.add(new Figure(state, FRICTION, OptionalDouble.empty(), Math.toDegrees(keys.frictionAngle()),
                OptionalDouble.of(Math.toDegrees(keys.frictionSpread())), "deg", from("friction_angle_deg")));
        all.add(new Figure(state, COHESION, OptionalDouble.empty(), keys.cohesion(),
                OptionalDouble.of(keys.cohesionSpread()), "Pa", from("cohesion_Pa")));
    }

    private Statement density() {
        String mean = text("mean lunar regolith has %.0f kg/m3 there",
                LunarRegolith.meanDensity(0, USUAL_DEPTH));
        if (keys.densityProfile().isEmpty()) {
            return new Statement("density in place", text("%.0f kg/m3 at every depth, over the upper metre too; %s",
                    keys.bankDensity(), mean), from("bank_density_kg_m3") + "; no density_profile");
        }
        boolean idle = keys.annotations().given().contains("bank_density_kg_m3");
        return new Statement("density in place", text("by depth, mean %.0f kg/m3 over the upper metre; %s%s",
                bankDensity(USUAL_DEPTH), mean, idle ? "; bank_density_kg_m3 is not used" : ""),
                "density_profile of the plan");
    }

    private String overTheMetre() {
        return keys.densityProfile().isEmpty() ? "" : " of the upper metre";
    }

    private Statement strength() {
        String beyond = inPlace.strength().greatest().isBeyondDesign()
                ? "; above 45 deg factors of anchors and footings are extrapolated" : "";
        if (keys.strengthProfile().isEmpty()) {
            return new Statement("strength in place", text("friction angle %.1f deg and cohesion %.0f Pa at every depth"
                    + "%s", Math.toDegrees(keys.frictionAngle()), keys.cohesion(), beyond), from("friction_angle_deg")
                    + "; " + from("cohesion_Pa") + "; no strength_profile");
        }
        String steps = keys.strengthProfile().stream().map(s -> text("%.2f m: %.1f deg, %.0f Pa", s.depth(),
                Math.toDegrees(s.frictionAngle()), s.cohesion())).collect(Collectors.joining("; "));
        String sources = keys.strengthProfile().stream().map(s -> s.source().orElse("source not stated")).distinct()
                .collect(Collectors.joining("; "));
        return new Statement("strength in place", "by depth, " + steps + beyond, "strength_profile of the plan: "
                + sources);
    }

    private String from(String key) {
        return key + (keys.annotations().given().contains(key) ? " of the plan" : ", default");
    }

    private static String text(String words, Object... parts) {
        return String.format(Locale.ROOT, words, parts);
    }
}
