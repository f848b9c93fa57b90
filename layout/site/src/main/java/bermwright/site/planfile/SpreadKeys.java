// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.site.plan.Anchor;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.PassThrough;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Seat;
import bermwright.site.plan.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Keys that give a number of hull, soil or gear a spread: the number's own key with {@code _spread} before its unit,
 * such as {@code mass_spread_t} beside {@code mass_t}; one standard deviation, in the unit of the number.
 *
 * <p>Densities of soil have {@code density_spread_share}, the centre of mass its own key, where a hull lands its
 * dispersion: they take no second one. Spreads are kept with the object as they stand, as keys that begin with
 * {@code x_} are.
 */
final class SpreadKeys {
    private static final String SPREAD = "_spread";
    /** Of ground alone some numbers do: its gravity is known, its heights have keys of their own. */
    private static final Set<String> GROUND = Set.of("pivot_friction");
    private static final Set<Class<? extends Record>> PARTS = Set.of(Hull.class, Hull.End.class, Hull.SkinLayer.class,
            Hull.Shell.class, Pivot.class, Seat.class, Hatch.class, Station.class, CoverPlan.class, PassThrough.class,
            Anchor.class, GroundPlan.Regolith.class, GroundPlan.StrengthAtDepth.class);
    /** What is a spread, has a key of its own for it, or says how finely the work is cut up. */
    private static final Set<String> OWN = Set.of("centre_of_mass_from_base_m", "centre_of_mass_spread_m",
            "landing_dispersion_m", "density_spread_share", "placed_density_kg_m3", "bank_density_kg_m3",
            "loose_density_kg_m3", "density_kg_m3", "friction_angle_spread_deg", "cohesion_spread_Pa", "lift_m");

    private SpreadKeys() {
    }

    /** The key of an object that a spread belongs to. */
    static Optional<Key> base(Class<? extends Record> type, String name) {
        return name.contains(SPREAD) ? PlanKeys.of(type).stream().filter(k -> takes(type, k) && name(k).equals(name))
                .findFirst() : Optional.empty();
    }

    /** Whether a number takes a spread of its own. */
    static boolean takes(Class<? extends Record> type, Key key) {
        if (!(key.type() instanceof ValueType.Quantity) || OWN.contains(key.name())) {
            return false;
        }
        boolean isGear = type == LoweringGear.class
                || type.getEnclosingClass() == LoweringGear.class && type != LoweringGear.Light.class;
        boolean isPlaceInProfile = type == GroundPlan.StrengthAtDepth.class && key.name().equals("depth_m");
        return isGear || PARTS.contains(type) && !isPlaceInProfile
                || type == GroundPlan.class && GROUND.contains(key.name());
    }

    static String name(Key key) {
        Unit unit = ((ValueType.Quantity) key.type()).unit();
        String ending = unit == Unit.ONE ? "share" : unit.word().replaceAll("[ /]", "_");
        String tail = "_" + ending;
        return key.name().endsWith(tail) ? key.name().substring(0, key.name().length() - tail.length()) + SPREAD + tail
                : key.name() + SPREAD;
    }

    /** The spread that stands in the file, checked. */
    static String read(Json value, At at) {
        if (value instanceof Json.Leaf leaf && leaf.kind() == Json.Kind.NUMBER && Double.parseDouble(leaf.text()) >= 0
                && Double.isFinite(Double.parseDouble(leaf.text()))) {
            return JsonText.compact(value);
        }
        throw at.refuse(value, "a number of 0 or more, one standard deviation");
    }

    /** Every spread that a plan states beside a number, in the order of the file. */
    static List<StatedSpread> stated(Json.Fields plan) {
        List<StatedSpread> found = new ArrayList<>();
        walk(plan, bermwright.site.plan.Plan.class, "", found);
        return found;
    }

    private static void walk(Json.Fields object, Class<? extends Record> type, String path, List<StatedSpread> found) {
        for (Map.Entry<String, Json> member : object.members().entrySet()) {
            Optional<Key> base = PlanKeys.key(type, member.getKey()).isPresent() ? Optional.empty()
                    : base(type, member.getKey());
            base.flatMap(k -> object.member(k.name()).or(() -> k.standard().map(s -> JsonReading.read(s, ""))).map(v ->
                    new StatedSpread(path + k.name(), k, number(v), number(member.getValue())))).ifPresent(found::add);
        }
        for (Key key : PlanKeys.of(type)) {
            Optional<Json> value = object.member(key.name());
            if (value.isPresent() && key.type() instanceof ValueType.Part part
                    && value.get() instanceof Json.Fields inner) {
                walk(inner, part.type(), path + key.name() + ".", found);
            } else if (value.isPresent() && key.type() instanceof ValueType.Many many
                    && many.of() instanceof ValueType.Part part && value.get() instanceof Json.Items items) {
                for (int i = 0; i < items.items().size(); i++) {
                    walk((Json.Fields) items.items().get(i), part.type(), path + key.name() + "[" + i + "].", found);
                }
            }
        }
    }

    private static double number(Json json) {
        return Double.parseDouble(((Json.Leaf) json).text());
    }
}
