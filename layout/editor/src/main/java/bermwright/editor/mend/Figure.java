// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import bermwright.editor.edit.SetValue;
import bermwright.editor.model.UnitWords;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.Key;
import bermwright.site.planfile.PlanValues;
import bermwright.site.planfile.Unit;
import bermwright.site.planfile.ValueType;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/** A figure of a plan at the end of a lever: read, rounded to what one can buy or build, and written. */
final class Figure {
    private static final int DIGITS = 2;

    private final Plan plan;
    private final Lever lever;
    private final Optional<Key> key;

    Figure(Plan plan, Lever lever) {
        this.plan = plan;
        this.lever = lever;
        this.key = PlanValues.key(lever.path());
    }

    boolean isUp() {
        return lever.isUp();
    }

    /** The figure as it is, in the unit of the file; empty where there is none above zero. */
    Optional<Double> value() {
        return PlanValues.json(plan, lever.path()).filter(text -> text.matches("[-+0-9.eE]+"))
                .map(Double::parseDouble).filter(v -> v > 0);
    }

    /** A value to two digits, on the side that mends; a whole number where things are counted. */
    double round(double value) {
        RoundingMode side = lever.isUp() ? RoundingMode.CEILING : RoundingMode.FLOOR;
        boolean isCount = key.filter(k -> k.type() instanceof ValueType.Count).isPresent();
        BigDecimal exact = BigDecimal.valueOf(value).round(new MathContext(12));
        return isCount ? exact.setScale(0, side).doubleValue() : exact.round(new MathContext(DIGITS, side))
                .doubleValue();
    }

    SetValue edit(double value) {
        return new SetValue(lever.path(), number(value), words(value));
    }

    Offer offer(double value, boolean isTried) {
        return new Offer(words(value), edit(value), isTried);
    }

    private String words(double value) {
        String unit = key.map(Key::type).filter(ValueType.Quantity.class::isInstance)
                .map(t -> ((ValueType.Quantity) t).unit()).filter(u -> u != Unit.ONE).map(Unit::word).orElse("");
        return lever.words() + " " + number(value) + (unit.isEmpty() ? "" : " " + UnitWords.shown(unit));
    }

    static String number(double value) {
        return BigDecimal.valueOf(value).round(new MathContext(12)).stripTrailingZeros().toPlainString();
    }
}
