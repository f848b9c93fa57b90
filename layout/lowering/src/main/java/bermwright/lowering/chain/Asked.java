// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import bermwright.regolith.Regolith;
import bermwright.regolith.SoilSensitivity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Keeps, for each part and load case, the row that asks most. */
final class Asked {
    private final Map<Part, Map<LoadCase, ChainRow>> rows = new EnumMap<>(Part.class);
    private final Map<Part, ChainRow> hardest = new EnumMap<>(Part.class);
    private final Map<Part, ToDoubleFunction<Regolith>> bears = new EnumMap<>(Part.class);

    /** Adds a row whose capacity the soil gives: what it bears on other ground, in the row's unit. */
    void add(ChainRow row, ToDoubleFunction<Regolith> onGround) {
        add(row);
        if (hardest.get(row.part()) == row) {
            bears.put(row.part(), onGround);
        }
    }

    /** How the factor of the governing row of each part that the soil bears moves with its strength. */
    Map<Part, SoilSensitivity> bySoil(Regolith soil) {
        Map<Part, SoilSensitivity> found = new EnumMap<>(Part.class);
        bears.forEach((part, onGround) -> {
            double demand = hardest.get(part).demand().orElse(0);
            if (demand > 0) {
                found.put(part, SoilSensitivity.of(soil, ground -> onGround.applyAsDouble(ground) / demand));
            }
        });
        return found;
    }

    void add(ChainRow row) {
        hardest.merge(row.part(), row, (a, b) -> b.isHarderThan(a) ? b : a);
        rows.computeIfAbsent(row.part(), p -> new EnumMap<>(LoadCase.class)).merge(row.load(), row,
                (a, b) -> b.isHarderThan(a) ? b : a);
    }

    List<ChainRow> rows() {
        List<ChainRow> all = new ArrayList<>();
        rows.values().forEach(byCase -> all.addAll(byCase.values()));
        return all;
    }
}
