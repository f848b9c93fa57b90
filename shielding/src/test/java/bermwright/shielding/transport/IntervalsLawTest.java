// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class IntervalsLawTest {
    private static final long SEED = 20261125;

    @Test
    void everyValueLiesInItsIntervalHoweverUnevenTheNumbersAre() {
        Random random = new Random(SEED);
        for (int trial = 0; trial < 300; trial++) {
            double[] numbers = random.doubles(2 + random.nextInt(60), -3, 12).map(Math::exp).distinct().sorted()
                    .toArray();
            Intervals intervals = new Intervals(numbers);
            int last = numbers.length - 1;
            for (int i = 0; i < 200; i++) {
                double value = numbers[0] + (numbers[last] - numbers[0]) * Math.pow(random.nextDouble(), 6);
                if (value < numbers[last]) {
                    int k = intervals.at(value);
                    assertTrue(numbers[k] <= value && value < numbers[k + 1], Arrays.toString(numbers) + " " + value);
                }
            }
            for (int k = 0; k < last; k++) {
                assertEquals(k, intervals.at(numbers[k]), "a number begins its own interval");
                assertEquals(k, intervals.at(Math.nextDown(numbers[k + 1])));
            }
        }
    }

    @Test
    void oneNumberMakesNoInterval() {
        assertThrows(IllegalArgumentException.class, () -> new Intervals(new double[] {1}));
    }
}
