// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.filestore.Storage;
import bermwright.filestore.WholeFile;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The archive of loaded classes that makes the next start fast (class data sharing).
 *
 * <p>It fits one Java and one place of the jars, so it is not shipped: the first run makes it where the start script
 * asks for it, and goes without it where that cannot be done.
 */
final class StartArchive {
    /** The system property that names the file. */
    static final String ASKED = "bermwright.archive";
    private static final long PATIENCE_SECONDS = 60;

    private StartArchive() {
    }

    /** Makes the archive that the start script asked for, where it is not there and its folder may be written. */
    static void makeWhereAsked() {
        String asked = System.getProperty(ASKED, "");
        if (!asked.isEmpty()) {
            Path archive = Path.of(asked).toAbsolutePath();
            if (!Files.exists(archive) && Files.isWritable(archive.getParent())) {
                make(archive, System.getProperty("java.class.path"));
            }
        }
    }

    /**
     * Makes the archive.
     *
     * @return whether it is there now
     */
    static boolean make(Path archive, String classPath) {
        Optional<Path> java = java();
        if (java.isEmpty()) {
            return false;
        }
        try {
            Path work = Files.createTempDirectory("bermwright-start");
            Path list = work.resolve("classes.txt");
            Path draft = work.resolve("start.jsa");
            try {
                boolean isMade = run(java.get(), "-Xshare:auto", "-XX:DumpLoadedClassList=" + list, "-cp", classPath,
                        Main.class.getName(), "--help")
                        && run(java.get(), "-Xshare:dump", "-XX:SharedClassListFile=" + list,
                        "-XX:SharedArchiveFile=" + draft, "-cp", classPath);
                if (isMade) {
                    put(draft, archive);
                }
                return isMade;
            } finally {
                for (Path left : List.of(list, draft, work)) {
                    Files.deleteIfExists(left);
                }
            }
        } catch (IOException withoutIt) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static void put(Path draft, Path archive) throws IOException {
        try (FileChannel from = FileChannel.open(draft, StandardOpenOption.READ)) {
            WholeFile.write(Storage.DISK, archive, to -> {
                long done = 0;
                while (done < from.size()) {
                    done += from.transferTo(done, from.size() - done, to);
                }
            });
        }
    }

    private static Optional<Path> java() {
        Path bin = Path.of(System.getProperty("java.home"), "bin");
        return List.of("java", "java.exe").stream().map(bin::resolve).filter(Files::isExecutable).findFirst();
    }

    private static boolean run(Path java, String... options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java.toString(), "-XX:TieredStopAtLevel=1"));
        Collections.addAll(command, options);
        Process process = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        try {
            return process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
        } finally {
            process.destroyForcibly();
        }
    }
}
