// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.run;

import bermwright.foundation.Progress;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Runs long work off the screen thread, one task a lane: a newer task of a lane cancels the older one, and only the
 * newest task's answer is ever delivered.
 *
 * <p>Answers, failures and reports of progress arrive through the executor given at the start, which for a window is
 * the screen thread. Safe to call from that thread only.
 */
public final class Background implements AutoCloseable {
    private final Executor screen;
    private final ExecutorService workers;
    private final Map<String, Task<?>> newest = new HashMap<>();
    private final Map<String, Lane> lanes = new HashMap<>();

    /**
     * A runner.
     *
     * @param screen  where answers are delivered
     * @param threads how many tasks run at once (1), 1 or more
     */
    public Background(Executor screen, int threads) {
        this.screen = Objects.requireNonNull(screen, "screen");
        AtomicInteger number = new AtomicInteger();
        this.workers = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "background-" + number.incrementAndGet());
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
        });
    }

    /**
     * What is to be told about a task, on the screen thread.
     *
     * @param <T>       kind of answer
     * @param answer    takes the answer
     * @param failure   takes what went wrong; never called for a cancelled task
     * @param progress  takes the share done and the step
     * @param cancelled called when the person stopped the task; not when a newer task took its place
     */
    public record Listener<T>(Consumer<T> answer, Consumer<Throwable> failure, Consumer<Step> progress,
            Runnable cancelled) {
        /**
         * A listener that does not follow progress.
         *
         * @param <T>     kind of answer
         * @param answer  takes the answer
         * @param failure takes what went wrong
         * @return the listener
         */
        public static <T> Listener<T> of(Consumer<T> answer, Consumer<Throwable> failure) {
            return new Listener<>(answer, failure, step -> { }, () -> { });
        }
    }

    /**
     * How far a task has come.
     *
     * @param share share done (1), 0 to 1
     * @param words what is being done
     */
    public record Step(double share, String words) {
    }

    /**
     * Starts a task; an older task of the same lane is cancelled and its answer dropped.
     *
     * @param <T>      kind of answer
     * @param lane     the lane's name
     * @param work     the work; it should ask its progress whether to go on
     * @param listener who is told
     */
    public <T> void start(String lane, Function<Progress, T> work, Listener<T> listener) {
        Task<T> task = new Task<>(lane, work, listener);
        Task<?> older = newest.put(lane, task);
        if (older != null) {
            older.stopped = true;
        }
        lanes.computeIfAbsent(lane, name -> new Lane()).enter(task);
    }

    /**
     * Stops the task of a lane, if one runs; its listener is told that it was cancelled.
     *
     * @param lane the lane's name
     */
    public void cancel(String lane) {
        Task<?> task = newest.remove(lane);
        if (task != null) {
            task.stopped = true;
            task.listener.cancelled().run();
        }
    }

    /**
     * Whether a task of a lane is waiting or running.
     *
     * @param lane the lane's name
     * @return true until its answer or failure was delivered or it was cancelled
     */
    public boolean isBusy(String lane) {
        return newest.containsKey(lane);
    }

    /**
     * Whether any task is waiting or running.
     *
     * @return true while one is
     */
    public boolean isBusy() {
        return !newest.isEmpty();
    }

    /** Stops everything; nothing is delivered afterwards. */
    /**
     * Tells the screen something before a task has its answer.
     *
     * @param word what is to be done on the screen thread
     */
    public void tell(Runnable word) {
        screen.execute(word);
    }

    @Override
    public void close() {
        newest.values().forEach(task -> task.stopped = true);
        newest.clear();
        workers.shutdownNow();
    }

    /**
     * One lane: a task waits for the one before to end, and only the newest waits. Work that does not notice at once
     * that it is stopped would else pile up until no worker is left for anything.
     */
    private final class Lane {
        private boolean isTaken;
        private Optional<Task<?>> next = Optional.empty();

        private synchronized void enter(Task<?> task) {
            if (isTaken) {
                next = Optional.of(task);
            } else {
                run(task);
            }
        }

        private synchronized void leave() {
            isTaken = false;
            Optional<Task<?>> waiting = next;
            next = Optional.empty();
            waiting.ifPresent(this::run);
        }

        private void run(Task<?> task) {
            isTaken = true;
            try {
                workers.execute(() -> {
                    try {
                        task.run();
                    } finally {
                        leave();
                    }
                });
            } catch (RejectedExecutionException closed) {
                // Closed in the meantime: nothing is delivered any more.
                isTaken = false;
            }
        }
    }

    private final class Task<T> implements Runnable, Progress {
        private final String lane;
        private final Function<Progress, T> work;
        private final Listener<T> listener;
        private final AtomicReference<Step> unread = new AtomicReference<>();
        private volatile boolean stopped;

        private Task(String lane, Function<Progress, T> work, Listener<T> listener) {
            this.lane = lane;
            this.work = work;
            this.listener = listener;
        }

        @Override
        public void run() {
            if (stopped) {
                return;
            }
            try {
                T answer = work.apply(this);
                deliver(() -> listener.answer().accept(answer));
            } catch (CancellationException cancelled) {
                // Whoever cancelled has said so already, and a task that stops by itself without being asked to
                // must not leave its lane looking busy.
                deliver(listener.cancelled());
            } catch (Throwable failure) {
                deliver(() -> listener.failure().accept(failure));
            }
        }

        private void deliver(Runnable message) {
            screen.execute(() -> {
                if (!stopped && newest.get(lane) == this) {
                    newest.remove(lane);
                    message.run();
                }
            });
        }

        /** Only the newest step waits for the screen: many reports do not crowd it, and the last is never lost. */
        @Override
        public void report(double share, String step) {
            if (unread.getAndSet(new Step(share, step)) == null) {
                screen.execute(() -> {
                    Step now = unread.getAndSet(null);
                    if (!stopped && newest.get(lane) == this) {
                        listener.progress().accept(now);
                    }
                });
            }
        }

        @Override
        public boolean isCancelled() {
            return stopped;
        }
    }
}
