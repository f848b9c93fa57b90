// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * How a factor of safety that rests on the soil moves with the soil's strength: worked anew with friction angle and
 * cohesion one spread less and more at every depth.
 *
 * @param stated       the strength stated, with its spreads
 * @param frictionLess factor with the friction angle one spread less (1)
 * @param frictionMore factor with the friction angle one spread more (1)
 * @param cohesionLess factor with the cohesion one spread less, not below none (1)
 * @param cohesionMore factor with the cohesion one spread more (1)
 * @param bothLess     factor with both one spread less (1)
 * @param asStated     factor with the strength stated at every depth (1), where the ground's strength goes by depth
 */
public record SoilSensitivity(StatedStrength stated, double frictionLess, double frictionMore, double cohesionLess,
        double cohesionMore, double bothLess, OptionalDouble asStated) {
    /** Refuses missing parts. */
    public SoilSensitivity {
        Objects.requireNonNull(stated, "stated");
        Objects.requireNonNull(asStated, "asStated");
    }

    /**
     * Works a factor out for changed soils.
     *
     * @param ground the ground as it is taken
     * @param factor the factor for a ground (1)
     * @return how it moves
     */
    public static SoilSensitivity of(Regolith ground, ToDoubleFunction<Regolith> factor) {
        StatedStrength stated = ground.stated();
        double friction = stated.frictionSpread();
        double cohesion = stated.cohesionSpread();
        Regolith constant = ground.with(StrengthProfile.constant(stated.value()));
        return new SoilSensitivity(stated, factor.applyAsDouble(ground.changed(-friction, 0)),
                factor.applyAsDouble(ground.changed(friction, 0)), factor.applyAsDouble(ground.changed(0, -cohesion)),
                factor.applyAsDouble(ground.changed(0, cohesion)),
                factor.applyAsDouble(ground.changed(-friction, -cohesion)),
                ground.strength().isConstant() ? OptionalDouble.empty()
                        : OptionalDouble.of(factor.applyAsDouble(constant)));
    }

    /**
     * The factors in words.
     *
     * @return one line
     */
    public String words() {
        String constant = asStated.isPresent() ? text("; %.2f with %.1f deg and %.0f Pa at every depth",
                asStated.getAsDouble(), Math.toDegrees(stated.value().frictionAngle()), stated.value().cohesion()) : "";
        return text("%.2f to %.2f for friction -/+%.1f deg, %.2f to %.2f for cohesion -/+%.0f Pa, %.2f for both less%s",
                frictionLess, frictionMore, Math.toDegrees(stated.frictionSpread()), cohesionLess, cohesionMore,
                stated.cohesionSpread(), bothLess, constant);
    }

    private static String text(String words, Object... parts) {
        return String.format(Locale.ROOT, words, parts);
    }
}
