// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The shipped table is what its generator makes, so that a change of the cascade does not leave it behind. */
class CascadeYieldsPinnedTest {
    private static final int EVENTS = 4000;
    /** Four standard deviations of a yield near one, and of a rare one. */
    private static final double SHARE = 0.08;
    private static final double RARE = 0.03;
    /** Projectile, target and energy by their places in the generator's lists. */
    private static final int[][] CASES = {{0, 2, 3}, {1, 5, 7}, {1, 1, 14}, {2, 4, 9}};

    @Test
    void theTableIsThatOfTodaysCascade() throws IOException {
        Map<String, Double> shipped = sums(text());
        for (int[] which : CASES) {
            Map<String, Double> made = sums(CascadeYieldTable.block(which, EVENTS));
            assertEquals(10, made.size());
            made.forEach((name, sum) -> {
                assertTrue(shipped.containsKey(name), name);
                double unit = name.endsWith("energy") || name.endsWith("mb") ? 50 : 1;
                assertEquals(sum, shipped.get(name), SHARE * sum + RARE * unit,
                        name + "; make the table again: see the generator");
            });
        }
    }

    private static String text() throws IOException {
        try (InputStream stream = CascadeYields.class.getResourceAsStream("cascade-yields.csv")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Sums of the values of each row but for mean cosines. */
    private static Map<String, Double> sums(String rows) {
        Map<String, Double> sums = new HashMap<>();
        for (String row : rows.split("\n")) {
            int values = row.lastIndexOf(',');
            if (!row.startsWith("#") && !row.startsWith("projectile") && !row.contains("cosine")) {
                sums.put(row.substring(0, values), Arrays.stream(row.substring(values + 1).split(" "))
                        .mapToDouble(Double::parseDouble).sum());
            }
        }
        return sums;
    }
}
