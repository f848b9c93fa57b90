// SPDX-License-Identifier: Apache-2.0
package bermwright.release;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/** Writes {@code SHA256SUMS} for all files of a folder, as {@code sha256sum -c} reads it. */
public final class Checksums {
    private static final String NAME = "SHA256SUMS";

    private Checksums() {
    }

    /**
     * Writes it.
     *
     * @param arguments the folder
     * @throws IOException              if a file cannot be read or the list not be written
     * @throws NoSuchAlgorithmException never: every Java has SHA-256
     */
    public static void main(String[] arguments) throws IOException, NoSuchAlgorithmException {
        Path folder = Path.of(arguments[0]);
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(Files::isRegularFile).filter(f -> !f.endsWith(NAME)).sorted().toList();
        }
        StringBuilder list = new StringBuilder();
        for (Path file : files) {
            list.append(sum(file)).append("  ").append(file.getFileName()).append('\n');
        }
        Files.writeString(folder.resolve(NAME), list);
        System.out.print("Handed out in " + folder + ":\n" + list);
    }

    private static String sum(Path file) throws IOException, NoSuchAlgorithmException {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
