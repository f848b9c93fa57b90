// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.choice;

import java.util.List;

/**
 * One means of bringing a hull to lie, beside the others.
 *
 * @param means        the means, in words
 * @param possible     whether it can be done as given
 * @param greatestLoad greatest load on one part (N)
 * @param loadOn       the part it is on, in words
 * @param gearMass     mass that must be carried there for it (kg)
 * @param gear         how that mass comes about, in words
 * @param preparation  what the ground needs, in words
 * @param holdPoints   how many times people stop and check (1)
 * @param duration     time of the move itself (s)
 * @param governs      what governs, in words
 * @param against      what speaks against it, in words; empty where nothing does
 */
public record MeansRow(String means, boolean possible, double greatestLoad, String loadOn, double gearMass,
        List<String> gear, String preparation, int holdPoints, double duration, String governs,
        List<String> against) {
    /** Copies the lists. */
    public MeansRow {
        gear = List.copyOf(gear);
        against = List.copyOf(against);
    }
}
