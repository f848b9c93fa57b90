// SPDX-License-Identifier: Apache-2.0
package bermwright.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BracketLawTest {
    /** Sixty halvings of a range of 2 leave nothing that a double could tell. */
    private static final double NOTHING = 1e-15;

    @Test
    void findsWhereTheAnswerTurns() {
        assertEquals(Math.sqrt(2), Bracket.halved(0, 2, 60, x -> x * x < 2).middle(), NOTHING);
    }

    @Test
    void theEndsMayBeGivenTheOtherWayRound() {
        assertEquals(Math.sqrt(2), Bracket.halved(2, 0, 60, x -> x * x > 2).low(), NOTHING);
    }

    @Test
    void endsNearEnoughStayOnTheirOwnSides() {
        Bracket ends = Bracket.narrowed(0, 2, 0.01, x -> x * x < 2);
        assertTrue(ends.low() * ends.low() < 2 && ends.high() * ends.high() >= 2, ends.toString());
        assertTrue(ends.high() - ends.low() <= 0.01, ends.toString());
    }

    @Test
    void anAnswerThatNeverTurnsKeepsItsEnd() {
        assertEquals(2, Bracket.halved(0, 2, 60, x -> true).high());
        assertEquals(0, Bracket.halved(0, 2, 60, x -> false).low());
    }

    @Test
    void endsThatAreOneAreNotAskedAbout() {
        assertEquals(new Bracket(1, 1), Bracket.halved(1, 1, 5, x -> {
            throw new AssertionError("asked");
        }));
    }
}
