// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import java.util.OptionalDouble;

/**
 * The full moment balance and the balance people do by hand, side by side, with the hull lying.
 *
 * @param full full moment balance: pull of all lines together (N)
 * @param hand hand balance W s_cg / (s_lug sin phi) (N); absent where the line does not rise from the lug
 */
public record Balances(double full, OptionalDouble hand) {
    /**
     * Which is higher and what each is safe for.
     *
     * @return plain words
     */
    public String words() {
        String safe = " The full balance holds for lines, poles, anchors and the pivot; the hand balance leaves out the"
                + " lug's height over the pivot";
        if (hand.isEmpty()) {
            return "The hand balance has no answer, for the line does not rise from the lug." + safe + ".";
        }
        return hand.getAsDouble() >= full
                ? "The hand balance is higher: it is on the safe side for line and winch." + safe
                + " and its pull must not be used for the pivot, where more pull lifts the base."
                : "The full balance is higher: the hand balance is unsafe here and must not be used for any part."
                + safe + ".";
    }
}
