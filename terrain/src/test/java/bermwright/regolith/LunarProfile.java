// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import java.util.stream.IntStream;

/** Mean lunar regolith as a profile for tests. */
public final class LunarProfile {
    private LunarProfile() {
    }

    /** {@link LunarRegolith#density} in steps of 1 cm to 4 m. */
    public static BulkDensity bulkDensity() {
        return BulkDensity.of(IntStream.rangeClosed(0, 400)
                .mapToObj(i -> new BulkDensity.At(i * 0.01, HandbookSoil.density(i * 0.01))).toList());
    }

    /** The ground with one strength. */
    public static Regolith with(Strength strength) {
        return new Regolith(bulkDensity(), StrengthProfile.constant(strength),
                new StatedStrength(strength, 0, 0));
    }
}
