// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.Progress;
import java.io.PrintStream;
import java.util.Locale;

/** Writes progress to standard error: one line that is written over on a screen, one line a step elsewhere. */
final class ConsoleProgress implements Progress {
    /** How long the end of the program waits for work that was asked to stop. */
    static final long PATIENCE_MILLIS = 5000;
    private static final long PAUSE_NANOS = 100_000_000;

    private final PrintStream err;
    private final boolean onScreen;
    private volatile boolean cancelled;
    private String step = "";
    private long lastWritten;
    private boolean lineOpen;

    ConsoleProgress(PrintStream err, boolean onScreen) {
        this.err = err;
        this.onScreen = onScreen;
    }

    void cancel() {
        cancelled = true;
    }

    @Override
    public synchronized void report(double share, String stage) {
        boolean isNew = !stage.equals(step);
        long now = System.nanoTime();
        if (!isNew && (!onScreen || now - lastWritten < PAUSE_NANOS)) {
            return;
        }
        step = stage;
        lastWritten = now;
        long percent = Math.round(100 * Math.max(0, Math.min(1, share)));
        if (onScreen) {
            err.printf(Locale.ROOT, "\r\033[K%3d %%  %s", percent, PlainStream.plain(stage));
            lineOpen = true;
        } else {
            err.printf(Locale.ROOT, "%3d %%  %s%n", percent, PlainStream.plain(stage));
        }
        err.flush();
    }

    /** Clears the line on a screen, so that what comes next starts on a clean one. */
    synchronized void end() {
        if (lineOpen) {
            err.print("\r\033[K");
            err.flush();
            lineOpen = false;
        }
    }

    /** What was being done when it was last told. */
    synchronized String step() {
        return step;
    }

    @Override
    public boolean isCancelled() {
        return cancelled;
    }
}
