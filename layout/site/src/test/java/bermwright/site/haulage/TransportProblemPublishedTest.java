// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.published.Published;
import bermwright.published.PublishedValue;
import org.junit.jupiter.api.Test;

class TransportProblemPublishedTest {
    /** Half a unit of the last printed digit. */
    private static final double WHOLE = 0.5;
    private static final double THOUSANDTH = 0.0005;

    private static double cheapest(double[] supply, double[] demand, double[][] cost) {
        return new TransportProblem(supply, demand, cost).cheapest().cost();
    }

    @Test
    @Published(work = "Dantzig (1963), Linear Programming and Extensions, section 3-3, as solved in the example"
            + " listings of several open modelling languages", place = "cost of shipping, thousands of dollars,"
            + " 90 dollars a case and thousand miles", printedValue = 153.675, unit = "1", tolerance = THOUSANDTH)
    void twoCanneriesAndThreeMarkets(PublishedValue printed) {
        double[][] miles = {{2.5, 1.7, 1.8}, {2.5, 1.8, 1.4}};
        double[][] cost = new double[2][3];
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 3; j++) {
                cost[i][j] = 90 * miles[i][j] / 1000;
            }
        }
        printed.assertEqualTo(cheapest(new double[] {350, 600}, new double[] {325, 300, 275}, cost));
    }

    @Test
    @Published(work = "Winston, Operations Research: Applications and Algorithms, chapter on transportation",
            place = "power stations and cities, least cost", printedValue = 1020, unit = "1", tolerance = WHOLE,
            remembered = true)
    void threePowerStationsAndFourCities(PublishedValue printed) {
        printed.assertEqualTo(cheapest(new double[] {35, 50, 40}, new double[] {45, 20, 30, 30},
                new double[][] {{8, 6, 10, 9}, {9, 12, 13, 7}, {14, 9, 16, 5}}));
    }

    @Test
    @Published(work = "Hillier and Lieberman, Introduction to Operations Research, chapter on transportation",
            place = "canneries and warehouses, least cost", printedValue = 152_535, unit = "1", tolerance = WHOLE,
            remembered = true)
    void threeCanneriesAndFourWarehouses(PublishedValue printed) {
        printed.assertEqualTo(cheapest(new double[] {75, 125, 100}, new double[] {80, 65, 70, 85},
                new double[][] {{464, 513, 654, 867}, {352, 416, 690, 791}, {995, 682, 388, 685}}));
    }

    @Test
    @Published(work = "Taha, Operations Research: An Introduction, chapter on the transportation model",
            place = "silos and mills, least cost", printedValue = 435, unit = "1", tolerance = WHOLE,
            remembered = true)
    void threeSilosAndFourMills(PublishedValue printed) {
        printed.assertEqualTo(cheapest(new double[] {15, 25, 10}, new double[] {5, 15, 15, 15},
                new double[][] {{10, 2, 20, 11}, {12, 7, 9, 20}, {4, 14, 16, 18}}));
    }

    @Test
    @Published(work = "Taha, Operations Research: An Introduction, chapter on the transportation model",
            place = "plants and distribution centres, least cost", printedValue = 313_200, unit = "1",
            tolerance = WHOLE, remembered = true)
    void threePlantsAndTwoCentres(PublishedValue printed) {
        printed.assertEqualTo(cheapest(new double[] {1000, 1500, 1200}, new double[] {2300, 1400},
                new double[][] {{80, 215}, {100, 108}, {102, 68}}));
    }
}
