// SPDX-License-Identifier: Apache-2.0
package bermwright.foundation;

import java.util.concurrent.CancellationException;

/** How long work says how far it has come and asks whether to go on; safe to call from any thread. */
public interface Progress {
    /** Reports to nobody and is never cancelled. */
    Progress NONE = new Progress() {
        @Override
        public void report(double share, String step) {
        }

        @Override
        public boolean isCancelled() {
            return false;
        }
    };

    /**
     * Says how far the work has come.
     *
     * @param share share done (1), 0 to 1
     * @param step  what is being done, in a few words
     */
    void report(double share, String step);

    /**
     * Whether somebody asked to stop.
     *
     * @return true once the work should stop
     */
    boolean isCancelled();

    /**
     * Stops the work where somebody asked for it.
     *
     * @throws CancellationException if the work was cancelled
     */
    default void check() {
        if (isCancelled()) {
            throw new CancellationException("cancelled");
        }
    }

    /**
     * A part of this work that reports into a range of the whole.
     *
     * @param from share of the whole at which the part begins (1), 0 to 1
     * @param to   share of the whole at which the part ends (1), {@code from} to 1
     * @return the part
     */
    default Progress part(double from, double to) {
        Progress whole = this;
        return new Progress() {
            @Override
            public void report(double share, String step) {
                whole.report(from + (to - from) * share, step);
            }

            @Override
            public boolean isCancelled() {
                return whole.isCancelled();
            }
        };
    }
}
