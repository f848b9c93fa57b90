// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class TimeLeftTest {
    private static final long SECOND = 1_000_000_000;
    private static final double EXACT = 1e-6;

    private final AtomicLong clock = new AtomicLong();
    private final TimeLeft left = new TimeLeft(clock::get);

    private void at(double seconds, double share) {
        clock.set((long) (seconds * SECOND));
        left.at(share);
    }

    @Test
    void saysNothingBeforeAnythingIsKnown() {
        at(0.5, 0.3);
        assertTrue(left.seconds().isEmpty());
    }

    @Test
    void theFirstTimeItGoesByTheShareDone() {
        at(10, 0.25);
        assertEquals(30, left.seconds().orElseThrow(), EXACT);
        assertEquals("about 30 s left", left.words().orElseThrow());
    }

    @Test
    void laterItGoesByTheTimeBeforeThoughSharesAreUneven() {
        at(1, 0.1);
        at(2, 0.6);
        clock.set(42 * SECOND);
        left.ended();
        left.begins();
        clock.set(42 * SECOND + SECOND);
        left.at(0.1);
        assertEquals(41, left.seconds().orElseThrow(), EXACT);
        clock.set(42 * SECOND + 4 * SECOND);
        left.at(0.6);
        assertEquals(80, left.seconds().orElseThrow(), EXACT, "half as quick as before");
        clock.set(42 * SECOND + 14 * SECOND);
        assertEquals(70, left.seconds().orElseThrow(), EXACT, "and it counts down between two steps");
    }
}
