// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.arrangement;

import bermwright.editor.model.Plainly;
import bermwright.editor.run.Background;
import bermwright.foundation.Progress;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** A long search about a plan: what it found so far, how far it has come, and how it ended. */
public abstract class SearchModel {
    private final String lane;
    private final Background background;
    private final Executor screen;
    private final Runnable changed;
    private double share;
    private String words = "";
    private int run;

    SearchModel(String lane, Background background, Executor screen, Runnable changed) {
        this.lane = lane;
        this.background = background;
        this.screen = screen;
        this.changed = changed;
    }

    /**
     * Begins a run; one that goes on is given up.
     *
     * @param <T>     kind of answer
     * @param work    the work; what it hands to its executor on the way is heard on the screen while the run goes on
     * @param ended   takes the answer and says how it ended
     * @param failure what is said before the reason where it fails
     * @param stopped what is said where it was stopped
     */
    final <T> void start(BiFunction<Executor, Progress, T> work, Consumer<T> ended, String failure,
            Supplier<String> stopped) {
        int mine = ++run;
        share = 0;
        Executor heard = found -> screen.execute(() -> {
            if (mine == run && isBusy()) {
                found.run();
                changed.run();
            }
        });
        background.start(lane, progress -> work.apply(heard, progress), new Background.Listener<>(ended,
                reason -> tell(failure + Plainly.words(reason)), step -> {
                    share = step.share();
                    tell(step.words());
                }, () -> tell(stopped.get())));
    }

    /** Stops; what was found is kept. */
    public void stop() {
        background.cancel(lane);
    }

    /**
     * Whether it runs.
     *
     * @return true until it ended or was stopped
     */
    public boolean isBusy() {
        return background.isBusy(lane);
    }

    /**
     * How far it has come.
     *
     * @return share done (1), 0 to 1
     */
    public double share() {
        return share;
    }

    /**
     * What it does, or how it ended.
     *
     * @return in words; nothing before it began
     */
    public String words() {
        return words;
    }

    /**
     * What was found.
     *
     * @return a line each; none before there is something
     */
    public abstract List<String> lines();

    final void tell(String text) {
        words = text;
        changed.run();
    }
}
