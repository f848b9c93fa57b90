// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.choice;

import bermwright.lowering.rig.Rig;

/**
 * Poles that would do.
 *
 * @param goal            what they are best at
 * @param height          height of the pole heads over their feet (m)
 * @param behindPivot     distance of the poles behind the pivot line (m)
 * @param greatestTension greatest tension of one lowering line (N)
 * @param greatestThrust  greatest thrust of one pole (N)
 * @param wall            wall of the tube that bears that thrust with its factor (m)
 * @param poleMass        mass of all poles (kg)
 * @param governs         what governs the whole rig with these poles, and whether it is refused, in words
 * @param rig             the rig with these poles, winches and stays moved along with them
 */
public record Suggestion(Goal goal, double height, double behindPivot, double greatestTension,
        double greatestThrust, double wall, double poleMass, String governs, Rig rig) {
    /** What a suggestion is best at. */
    public enum Goal {
        /** The lowest poles with which the winch rating is kept. */
        LOWEST_POLES("lowest poles that keep the winch rating"),
        /** The least tension within the limits. */
        LEAST_TENSION("least line tension within the limits"),
        /** The lightest poles with which the winch rating is kept. */
        LIGHTEST_POLES("lightest poles that keep the winch rating");

        private final String words;

        Goal(String words) {
            this.words = words;
        }

        /**
         * The goal in words.
         *
         * @return the words
         */
        public String words() {
            return words;
        }
    }
}
