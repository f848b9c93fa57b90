// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import bermwright.lowering.rig.Anchor;
import bermwright.lowering.rig.GearPoints;
import bermwright.lowering.rig.HeadGear;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Stay;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.strength.Column;
import bermwright.lowering.strength.LineRules;
import bermwright.lowering.strength.ThinTube;
import bermwright.regolith.Bearing;
import bermwright.regolith.Regolith;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What each part bears (N), absent where the plan leaves a rating out; worked out once for a rig and its soil. */
final class PartCapacities {
    /** Density of a steel pole (kg/m3). */
    private static final double STEEL = 7850;
    private static final String EARTH_PRESSURE = "earth pressure at lunar gravity; " + ChainLoads.RULES;

    private final LoweringCase setup;
    private final double gravity;
    /** By anchor and elevation of its line (rad). */
    private final Map<Anchor, Map<Double, Double>> anchors = new IdentityHashMap<>();

    private final Map<Anchor, String> sources = new IdentityHashMap<>();

    /** The whole gear, nothing lost. */
    final GearPoints points;
    final OptionalDouble line;
    final OptionalDouble termination;
    final OptionalDouble overSheave;
    final OptionalDouble pole;
    final OptionalDouble poleFoot;
    final double poleWeight;

    PartCapacities(LoweringCase setup) {
        this.setup = setup;
        this.gravity = setup.tipping().ground().gravity();
        this.points = GearPoints.of(setup.rig());
        LoweringLines lines = setup.rig().lines();
        this.line = lines.line().breakingLoad();
        this.termination = times(line, lines.ends().termination());
        Optional<Poles> poles = setup.rig().poles();
        OptionalDouble sheave = poles.map(Poles::headGear).orElse(HeadGear.NOT_GIVEN).sheaveDiameter();
        OptionalDouble rope = lines.line().diameter();
        this.overSheave = sheave.isPresent() && rope.isPresent()
                ? times(line, LineRules.bendShare(Math.max(1, sheave.getAsDouble() / rope.getAsDouble())))
                : OptionalDouble.empty();
        this.pole = poles.flatMap(p -> p.tube().map(t -> OptionalDouble.of(Math.min(
                Column.of(t, p.length()).capacity(), ThinTube.capacity(t))))).orElse(OptionalDouble.empty());
        this.poleFoot = poles.map(this::poleFoot).orElse(OptionalDouble.empty());
        this.poleWeight = poles.flatMap(p -> p.tube().map(t -> t.area() * STEEL * p.length() * gravity)).orElse(0.0);
    }

    private OptionalDouble poleFoot(Poles poles) {
        return poles.footArea().isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(poleFootOn(setup.soil(), poles));
    }

    /** What the ground under a pole foot bears on other ground (N). */
    double poleFootOn(Regolith ground, Poles poles) {
        double area = poles.footArea().orElseThrow();
        double lean = Math.abs(Math.atan2(poles.head().x() - poles.foot().x(), poles.head().z() - poles.foot().z()));
        return area * Bearing.ultimate(Bearing.Footing.square(area), ground, gravity, lean).sum();
    }

    /** What an anchor bears on other ground (N). */
    double anchorOn(Regolith ground, Anchor anchor, double elevation) {
        return anchor.capacity(ground, gravity, elevation);
    }

    OptionalDouble stay(Stay stay) {
        return stay.breakingLoad();
    }

    OptionalDouble anchor(Optional<Anchor> anchor, double elevation) {
        return anchor.map(a -> OptionalDouble.of(anchors.computeIfAbsent(a, k -> new HashMap<>())
                .computeIfAbsent(elevation, e -> a.capacity(setup.soil(), gravity, e))))
                .orElse(OptionalDouble.empty());
    }

    /** What an anchor bears, in words: how it is reckoned. */
    String anchorSource(Optional<Anchor> anchor) {
        return anchor.map(a -> sources.computeIfAbsent(a, k -> k.kind() + ", " + EARTH_PRESSURE))
                .orElse(EARTH_PRESSURE);
    }

    static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }
}
