// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.filestore.WholeFile;
import bermwright.shielding.transport.BeamTransport;
import bermwright.shielding.transport.NeutronEnclosure;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Keeps computed response tables on disk, named by the hash of everything that went into them; a file that is damaged
 * or cannot be written is no trouble, the table is computed again.
 */
final class ResponseCache {
    /** Raised by hand whenever a formula of the transport or of the doses changes. */
    private static final String MODEL = "9";
    private static final String[] DATA = {"cascade-yields.csv", "nonelastic-neutrons.csv", "nonelastic-protons.csv",
        "nonelastic-light-targets.csv", "light-fragments.csv", "slow-neutrons.csv", "andersen-ziegler-1977.csv"};
    private static final String DATA_HASH = dataHash();

    private final Path directory;

    ResponseCache(Path directory) {
        this.directory = directory;
    }

    /** The table of a content, from disk where it is kept, else computed and kept. */
    TransportResponse.Table table(String content, Supplier<TransportResponse.Table> compute) {
        String hash = HexFormat.of().formatHex(digest().digest(
                (MODEL + DATA_HASH + content).getBytes(StandardCharsets.UTF_8)));
        Path file = directory.resolve("response-" + hash + ".txt");
        Optional<TransportResponse.Table> kept = read(file, hash);
        if (kept.isPresent()) {
            return kept.get();
        }
        TransportResponse.Table table = compute.get();
        write(file, hash, table);
        return table;
    }

    private static Optional<TransportResponse.Table> read(Path file, String hash) {
        try {
            if (!Files.isRegularFile(file)) {
                return Optional.empty();
            }
            List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
            int rows = TransportResponse.DEPTHS_GCM2.length;
            if (lines.size() != 2 * rows + 3 || !lines.get(0).equals(hash) || !lines.get(2 * rows + 2).equals("end")) {
                return Optional.empty();
            }
            List<Particles> doses = new ArrayList<>();
            double[][] directions = new double[rows][];
            for (int i = 0; i < rows; i++) {
                double[] v = numbers(lines.get(i + 1));
                doses.add(new Particles(v[0], v[1], v[2], v[3], v[4], v[5], v[6]));
                directions[i] = numbers(lines.get(rows + 1 + i));
            }
            return Optional.of(new TransportResponse.Table(doses, directions,
                    NeutronEnclosure.of(numbers(lines.get(2 * rows + 1)))));
        } catch (IOException | IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    private static double[] numbers(String line) {
        return java.util.Arrays.stream(line.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private void write(Path file, String hash, TransportResponse.Table table) {
        StringBuilder text = new StringBuilder(hash).append('\n');
        for (Particles p : table.doses()) {
            text.append(p.fastNeutrons()).append(' ').append(p.slowNeutrons()).append(' ').append(p.protons())
                    .append(' ').append(p.helium()).append(' ').append(p.heavy()).append(' ').append(p.pions())
                    .append(' ').append(p.gammas()).append('\n');
        }
        for (double[] depth : table.directions()) {
            line(text, depth);
        }
        line(text, table.room().numbers());
        text.append("end\n");
        try {
            Files.createDirectories(directory);
            WholeFile.write(file, text.toString());
        } catch (IOException | SecurityException notKept) {
            // It is computed again next time.
            return;
        }
    }

    private static void line(StringBuilder text, double[] numbers) {
        for (double number : numbers) {
            text.append(number).append(' ');
        }
        text.append('\n');
    }

    private static String dataHash() {
        MessageDigest digest = digest();
        for (String name : DATA) {
            try (InputStream stream = BeamTransport.class.getResourceAsStream(name)) {
                digest.update(stream.readAllBytes());
            } catch (IOException e) {
                throw new UncheckedIOException("cannot read the table " + name, e);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("no SHA-256 in this Java", e);
        }
    }
}
