// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import java.util.List;

/**
 * What a step of the search lessens: shares of the reference's figures added up.
 *
 * @param name     what it is for
 * @param hours    weight of machine hours (1)
 * @param soil     weight of soil placed (1)
 * @param tunnels  weight of the length of tunnels (1)
 * @param cut      weight of soil cut (1)
 * @param warnings what one warning more weighs (1)
 */
record Weights(String name, double hours, double soil, double tunnels, double cut, double warnings) {
    /** In turn, so that the answers differ in what they give up. */
    static final List<Weights> IN_TURN = List.of(
            new Weights("machine hours", 1, 0.02, 0.005, 0.02, 0.001),
            new Weights("hours and tunnels", 0.7, 0.1, 0.4, 0.05, 0.005),
            new Weights("soil", 0.03, 1, 0.005, 0.02, 0.001),
            new Weights("tunnels", 0.1, 0.05, 1, 0.02, 0.002),
            new Weights("warnings", 0.15, 0.05, 0.01, 0.02, 0.3));
}
