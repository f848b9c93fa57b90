// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.fail;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GroundFilesLawTest {
    /** Junk is refused at once; the limit leaves room for a busy machine. */
    private static final Duration AT_ONCE = Duration.ofSeconds(20);

    @TempDir
    private Path folder;

    private void readsOrRefuses(byte[] bytes, String what) throws IOException {
        Path file = Files.write(folder.resolve("spoiled.tif"), bytes);
        try {
            GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE);
        } catch (InputException e) {
            // refused in plain words, as it should be
        } catch (RuntimeException | Error e) {
            fail(what + " gave " + e, e);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aSpoiledTiffIsReadOrRefusedInWords(long seed) throws IOException {
        Random random = new Random(seed);
        for (Map.Entry<String, byte[]> entry : MatrixFiles.all().entrySet()) {
            if (entry.getKey().endsWith(".tif") && random.nextInt(4) == 0) {
                byte[] spoiled = entry.getValue().clone();
                int changes = 1 + random.nextInt(4);
                for (int i = 0; i < changes; i++) {
                    int within = random.nextBoolean() ? 600 : spoiled.length;
                    spoiled[random.nextInt(Math.min(within, spoiled.length))] = (byte) random.nextInt(256);
                }
                readsOrRefuses(spoiled, "seed " + seed + ", " + entry.getKey());
                byte[] cut = Arrays.copyOf(entry.getValue(), random.nextInt(entry.getValue().length));
                readsOrRefuses(cut, "seed " + seed + ", cut " + entry.getKey());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"II*\0", "MM\0*", "II+\0", "MM\0+", "ncols ", "junk"})
    void aHundredMegabytesOfJunkAreRefusedAtOnce(String start) throws IOException {
        Path file = folder.resolve("junk.tif");
        try (RandomAccessFile out = new RandomAccessFile(file.toFile(), "rw")) {
            byte[] noise = new byte[1 << 20];
            new Random(7).nextBytes(noise);
            for (int i = 0; i < 100; i++) {
                out.write(noise);
            }
            out.seek(0);
            out.write(start.getBytes(StandardCharsets.ISO_8859_1));
        }
        assertTimeoutPreemptively(AT_ONCE, () -> assertThrows(InputException.class,
                () -> GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE)));
    }

    @Test
    void aHundredMegabytesOfOneWordAreRefusedAtOnce() throws IOException {
        Path file = Files.writeString(folder.resolve("long.asc"), "ncols 5\nnrows 5\nxllcorner 0\nyllcorner 0\n"
                + "cellsize 1\n" + "1".repeat(1000));
        assertThrows(InputException.class, () -> GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE));
    }
}
