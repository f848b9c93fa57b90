// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TransportProblemLawTest {
    /** The solver's own tolerance, as a share. */
    private static final double SOLVER = 1e-6;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noSourceGivesMoreThanItHasAndEachWantIsMet(long seed) {
        Random random = new Random(seed);
        int sources = 1 + random.nextInt(8);
        int sinks = 1 + random.nextInt(8);
        double[] demand = random.doubles(sinks, 1, 100).toArray();
        double want = Arrays.stream(demand).sum();
        double[] supply = random.doubles(sources, 0.2, 1).map(s -> 2 * s * want / sources).toArray();
        double[][] cost = new double[sources][];
        Arrays.setAll(cost, i -> random.doubles(sinks, 0, 10).toArray());
        TransportProblem.Allocation best = new TransportProblem(supply, demand, cost).cheapest();
        for (int i = 0; i < sources; i++) {
            assertTrue(Arrays.stream(best.amount()[i]).sum() <= supply[i] + SOLVER * want);
        }
        for (int j = 0; j < sinks; j++) {
            double got = best.shortage()[j];
            for (int i = 0; i < sources; i++) {
                got += best.amount()[i][j];
            }
            assertEquals(demand[j], got, SOLVER * want);
        }
        double have = Arrays.stream(supply).sum();
        assertEquals(Math.max(0, want - have), Arrays.stream(best.shortage()).sum(), SOLVER * want);
    }

    /** Every exchange of four amounts around a loop costs no less: the mark of an optimum. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void noExchangeAmongTwoSourcesAndTwoSinksIsCheaper(long seed) {
        Random random = new Random(seed);
        double[] demand = random.doubles(5, 1, 100).toArray();
        double[] supply = random.doubles(4, 100, 200).toArray();
        double[][] cost = new double[4][];
        Arrays.setAll(cost, i -> random.doubles(5, 1, 10).toArray());
        double[][] x = new TransportProblem(supply, demand, cost).cheapest().amount();
        for (int i = 0; i < 4; i++) {
            for (int k = 0; k < 4; k++) {
                for (int j = 0; j < 5; j++) {
                    for (int l = 0; l < 5; l++) {
                        if (i != k && j != l && x[i][j] > SOLVER && x[k][l] > SOLVER) {
                            assertTrue(cost[i][l] + cost[k][j] >= cost[i][j] + cost[k][l] - SOLVER);
                        }
                    }
                }
            }
        }
    }

    @Test
    void nothingIsCarriedWhereThereIsNoWay() {
        double no = Double.POSITIVE_INFINITY;
        TransportProblem.Allocation best = new TransportProblem(new double[] {10, 10}, new double[] {8, 8},
                new double[][] {{1, no}, {1, no}}).cheapest();
        assertEquals(0, best.amount()[0][1]);
        assertEquals(8, best.shortage()[1], SOLVER);
        assertEquals(0, best.shortage()[0], SOLVER);
    }

    @Test
    void theNearestSourceFirstIsNotAlwaysCheapest() {
        // Greedy gives sink one to source one (1) and pays 100 for sink two; the optimum is 2 + 3.
        TransportProblem.Allocation best = new TransportProblem(new double[] {1, 1}, new double[] {1, 1},
                new double[][] {{1, 3}, {2, 100}}).cheapest();
        assertEquals(5, best.cost(), SOLVER);
    }

    @Test
    void refusesCostsThatAreNotNumbers() {
        assertEquals("a cost is NaN; accepted: 0 or more.", assertThrows(IllegalArgumentException.class,
                () -> new TransportProblem(new double[] {1}, new double[] {1}, new double[][] {{Double.NaN}}))
                .getMessage());
    }
}
