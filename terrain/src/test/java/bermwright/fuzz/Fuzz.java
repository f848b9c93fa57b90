// SPDX-License-Identifier: Apache-2.0
package bermwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Gives a reader inputs made by chance from good ones. Each is either read, or refused with what is accepted and where
 * it stands; anything else is a fault. An input whose outcome was not seen before is kept to be changed further.
 *
 * <p>{@code -Dbermwright.fuzz.inputs} (20,000 without it) is shared by all readers; {@code -Dbermwright.fuzz.seed}
 * gives other inputs. What goes wrong is left in {@code target/reported}; put into {@code reported} beside the test's
 * other files it is tried in each build from then on.
 */
public final class Fuzz {
    /** How many inputs all readers together are given. */
    private static final long INPUTS = Long.getLong("bermwright.fuzz.inputs", 20_000);
    private static final long SEED = Long.getLong("bermwright.fuzz.seed", 20261201);
    private static final long THOUSANDTHS = 1000;
    private static final int MOST_KEPT = 2000;
    private static final int MOST_SHOWN = 20;
    private static final long SLOWEST_NANOS = 10_000_000_000L;

    private final String room;
    private final long inputs;
    private final List<byte[]> pool;
    private final Map<String, Integer> outcomes = new HashMap<>();
    private final List<String> faults = new ArrayList<>();
    private long read;

    /** Reads an input; throws what the reader throws. */
    @FunctionalInterface
    public interface Reader {
        /**
         * Reads it.
         *
         * @param input the input
         * @return what is wrong with what was read; empty where nothing is
         * @throws Exception what the reader throws
         */
        String read(byte[] input) throws Exception;
    }

    /** Changes an input. */
    @FunctionalInterface
    public interface Change {
        /**
         * Changes it.
         *
         * @param input  an input
         * @param other  another one
         * @param random the chance
         * @return a new input
         */
        byte[] of(byte[] input, byte[] other, Random random);
    }

    /**
     * A run.
     *
     * @param room        the reader's name, for what is left behind
     * @param thousandths this reader's share of all inputs
     * @param good        inputs to begin with
     */
    public Fuzz(String room, int thousandths, List<byte[]> good) {
        this.room = room;
        this.inputs = INPUTS * thousandths / THOUSANDTHS;
        this.pool = new ArrayList<>(good);
    }

    /**
     * Tries the cases that were reported, then all inputs.
     *
     * @param reported the test class beside which the folder {@code reported} stands
     * @param change   makes a new input from two
     * @param reader   the reader
     * @throws IOException if a case cannot be read or kept
     */
    public void run(Class<?> reported, Change change, Reader reader) throws IOException {
        for (byte[] input : reported(reported)) {
            attempt("a reported case", input, reader);
        }
        int good = pool.size();
        long begun = System.nanoTime();
        for (long i = 0; i < inputs; i++) {
            Random random = new Random(SEED * 1_000_003 + i);
            byte[] input = pool.get(random.nextInt(random.nextBoolean() ? good : pool.size()));
            for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
                input = change.of(input, pool.get(random.nextInt(pool.size())), random);
            }
            attempt("seed " + SEED + ", input " + i, input, reader);
        }
        long refused = outcomes.values().stream().mapToLong(n -> n).sum() - read;
        System.out.printf("%s: %d inputs, seed %d: %d read, %d refused, %d different refusals, %d faults, %.0f inputs"
                + " a second%n", room, inputs, SEED, read, refused, outcomes.size(), faults.size(),
                inputs * 1e9 / (System.nanoTime() - begun));
        assertTrue(faults.isEmpty(), faults.size() + " of " + inputs + ":\n"
                + String.join("\n", faults.subList(0, Math.min(MOST_SHOWN, faults.size()))));
        assertTrue(inputs < MOST_KEPT || read > inputs / 200 && refused > inputs / 200,
                "inputs are neither all refused nor all read: " + read + " of " + inputs);
        assertTrue(pool.size() >= good);
    }

    private List<byte[]> reported(Class<?> beside) throws IOException {
        Path folder = Path.of("src/test/resources", beside.getPackageName().replace('.', '/'), "reported");
        List<byte[]> cases = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.filter(f -> f.getFileName().toString().startsWith(room)).sorted().toList()) {
                    cases.add(Files.readAllBytes(file));
                }
            }
        }
        return cases;
    }

    private void attempt(String name, byte[] input, Reader reader) throws IOException {
        long begun = System.nanoTime();
        String fault;
        String outcome = "read";
        try {
            fault = reader.read(input);
            read++;
        } catch (InputException refusal) {
            boolean saysAll = !refusal.accepted().isBlank() && !(refusal.file() + refusal.key()).isBlank();
            fault = saysAll ? "" : "a refusal without place or what is accepted: " + refusal.getMessage();
            outcome = refusal.accepted() + "\n" + refusal.key().replaceAll("[0-9]+", "0");
        } catch (Exception | Error wrong) {
            fault = wrong + " at " + Stream.of(wrong.getStackTrace()).limit(4).toList();
            outcome = String.valueOf(wrong.getClass());
        }
        long nanos = System.nanoTime() - begun;
        if (nanos > SLOWEST_NANOS) {
            fault = "took " + nanos / 1_000_000_000 + " s";
        }
        if (outcomes.merge(outcome, 1, Integer::sum) == 1 && pool.size() < MOST_KEPT) {
            pool.add(input);
        }
        if (!fault.isEmpty()) {
            faults.add(name + ": " + fault);
            Path kept = Files.createDirectories(Path.of("target", "reported"))
                    .resolve(room + "-" + name.replaceAll("[^0-9]+", "-").replaceAll("^-", "") + ".case");
            if (faults.size() <= MOST_SHOWN) {
                Files.write(kept, input);
            }
        }
    }

    /**
     * The bytes of a text.
     *
     * @param text the text
     * @return it in UTF-8
     */
    public static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The text of bytes.
     *
     * @param bytes bytes in UTF-8
     * @return the text
     */
    public static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
