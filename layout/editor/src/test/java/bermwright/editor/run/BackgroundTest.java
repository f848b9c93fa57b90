// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class BackgroundTest {
    private static final long PATIENCE_SECONDS = 60;

    /** Stands in for the screen thread: messages wait here until the test takes them. */
    private final LinkedBlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private final Background background = new Background(screen::add, 2);

    @AfterEach
    void close() {
        background.close();
    }

    private void deliverOne() throws InterruptedException {
        Runnable message = screen.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
        assertTrue(message != null, "a message comes");
        message.run();
    }

    @Test
    void deliversAnAnswerOnTheScreenThreadOnly() throws InterruptedException {
        List<String> answers = new ArrayList<>();
        background.start("lane", progress -> "answer", Background.Listener.of(answers::add, f -> { }));
        assertTrue(background.isBusy("lane"));
        deliverOne();
        assertEquals(List.of("answer"), answers);
        assertFalse(background.isBusy("lane"));
    }

    @Test
    void theNewestTaskOfALaneWinsAndTheOlderIsCancelled() throws InterruptedException {
        List<String> answers = new ArrayList<>();
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch stopped = new CountDownLatch(1);
        background.start("lane", progress -> {
            begun.countDown();
            while (!progress.isCancelled()) {
                Thread.onSpinWait();
            }
            stopped.countDown();
            return "old";
        }, Background.Listener.of(answers::add, f -> { }));
        assertTrue(begun.await(PATIENCE_SECONDS, TimeUnit.SECONDS));
        background.start("lane", progress -> "new", Background.Listener.of(answers::add, f -> { }));
        assertTrue(stopped.await(PATIENCE_SECONDS, TimeUnit.SECONDS), "the older task is told to stop");
        deliverOne();
        Runnable late = screen.poll(200, TimeUnit.MILLISECONDS);
        if (late != null) {
            late.run();
        }
        assertEquals(List.of("new"), answers);
    }

    @Test
    void workThatDoesNotNoticeItIsStoppedHoldsUpItsOwnLaneOnly() throws InterruptedException {
        List<String> answers = new ArrayList<>();
        CountDownLatch release = new CountDownLatch(1);
        CountDownLatch begun = new CountDownLatch(1);
        background.start("slow", progress -> {
            begun.countDown();
            await(release);
            return "first";
        }, Background.Listener.of(answers::add, f -> { }));
        assertTrue(begun.await(PATIENCE_SECONDS, TimeUnit.SECONDS));
        for (int i = 0; i < 5; i++) {
            String name = "later " + i;
            background.start("slow", progress -> {
                await(release);
                return name;
            }, Background.Listener.of(answers::add, f -> { }));
        }
        background.start("quick", progress -> "quick", Background.Listener.of(answers::add, f -> { }));
        deliverOne();
        assertEquals(List.of("quick"), answers, "a free worker is left for the other lane");
        release.countDown();
        while (background.isBusy("slow")) {
            deliverOne();
        }
        assertEquals(List.of("quick", "later 4"), answers, "only the newest of those waiting is done");
    }

    private static void await(CountDownLatch release) {
        try {
            release.await();
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void anAnswerThatWaitsForTheScreenIsDroppedWhenANewerTaskStarts() throws InterruptedException {
        List<String> answers = new ArrayList<>();
        background.start("lane", progress -> "old", Background.Listener.of(answers::add, f -> { }));
        Runnable waiting = screen.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
        background.start("lane", progress -> "new", Background.Listener.of(answers::add, f -> { }));
        waiting.run();
        deliverOne();
        assertEquals(List.of("new"), answers);
    }

    @Test
    void tellsFailuresAndProgress() throws InterruptedException {
        List<String> heard = new ArrayList<>();
        background.start("lane", progress -> {
            progress.report(1, "half way");
            throw new IllegalStateException("broken");
        }, new Background.Listener<Object>(a -> heard.add("answer"), f -> heard.add(f.getMessage()),
                step -> heard.add(step.words()), () -> heard.add("cancelled")));
        deliverOne();
        deliverOne();
        assertEquals(List.of("half way", "broken"), heard);
    }

    @Test
    void ofManyStepsTheLastIsAlwaysHeard() throws InterruptedException {
        List<String> heard = new ArrayList<>();
        background.start("lane", progress -> {
            for (int i = 1; i <= 1000; i++) {
                progress.report(i / 1000.0, "dose " + i);
            }
            progress.report(0.5, "hauls");
            return "answer";
        }, new Background.Listener<>(a -> heard.add("answer"), f -> { }, step -> heard.add(step.words()), () -> { }));
        while (!heard.contains("answer")) {
            deliverOne();
        }
        assertEquals(List.of("hauls", "answer"), heard.subList(heard.size() - 2, heard.size()),
                "what runs is named, however soon it came after the step before");
        assertTrue(heard.size() < 1000, "and the screen is not told each");
    }

    @Test
    void cancellingTellsTheListenerAndNothingComesAfter() {
        List<String> heard = new ArrayList<>();
        background.start("lane", progress -> {
            while (true) {
                progress.check();
            }
        }, new Background.Listener<Object>(a -> heard.add("answer"), f -> heard.add("failure"), step -> { },
                () -> heard.add("cancelled")));
        background.cancel("lane");
        assertFalse(background.isBusy());
        screen.forEach(Runnable::run);
        assertEquals(List.of("cancelled"), heard);
    }
}
