// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.filestore.WholeFile;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/**
 * What the editor remembers from one day to the next: window, view and files opened lately; a file of plain keys.
 *
 * <p>Memory is a comfort: a file that cannot be read or written costs the comfort and nothing else.
 */
public final class Settings {
    private static final int FILES_KEPT = 10;

    private final Optional<Path> file;
    private final Properties values = new Properties();

    private Settings(Optional<Path> file) {
        this.file = file;
        file.filter(Files::isReadable).ifPresent(path -> {
            try (Reader reader = Files.newBufferedReader(path)) {
                values.load(reader);
            } catch (IOException | IllegalArgumentException unreadable) {
                values.clear();
            }
        });
    }

    /**
     * Settings kept in a file.
     *
     * @param file the file, which need not be there yet
     * @return the settings
     */
    public static Settings in(Path file) {
        return new Settings(Optional.of(file));
    }

    /**
     * Settings that last as long as the program.
     *
     * @return the settings
     */
    public static Settings forgotten() {
        return new Settings(Optional.empty());
    }

    /**
     * Settings where this machine's people keep theirs.
     *
     * @param environment the environment variables
     * @param properties  the system's properties; {@code bermwright.settings} names another file
     * @return the settings
     */
    public static Settings ofPerson(Map<String, String> environment, Properties properties) {
        String named = properties.getProperty("bermwright.settings");
        if (named != null) {
            return in(Path.of(named));
        }
        String home = properties.getProperty("user.home", ".");
        String system = properties.getProperty("os.name", "");
        Path folder = system.startsWith("Windows") && environment.containsKey("APPDATA")
                ? Path.of(environment.get("APPDATA"))
                : system.startsWith("Mac") ? Path.of(home, "Library", "Application Support")
                : Path.of(environment.getOrDefault("XDG_CONFIG_HOME", home + "/.config"));
        return in(folder.resolve("bermwright").resolve("editor.properties"));
    }

    /**
     * A remembered word.
     *
     * @param key its key
     * @return the word, empty where none is remembered
     */
    public Optional<String> text(String key) {
        return Optional.ofNullable(values.getProperty(key));
    }

    /**
     * A remembered number.
     *
     * @param key       its key
     * @param otherwise what stands in for a number that is not there, not finite or not a number at all
     * @return the number
     */
    public double number(String key, double otherwise) {
        try {
            double value = Double.parseDouble(values.getProperty(key, ""));
            return Double.isFinite(value) ? value : otherwise;
        } catch (NumberFormatException notANumber) {
            return otherwise;
        }
    }

    /**
     * A remembered yes or no.
     *
     * @param key       its key
     * @param otherwise what stands in where nothing is remembered
     * @return yes or no
     */
    public boolean flag(String key, boolean otherwise) {
        return text(key).map("true"::equals).orElse(otherwise);
    }

    /**
     * Remembers a value.
     *
     * @param key   its key
     * @param value the value, written as text
     */
    public void put(String key, Object value) {
        values.setProperty(key, String.valueOf(value));
    }

    /**
     * Files opened lately, the latest first.
     *
     * @return the files, whether or not they still exist
     */
    public List<Path> recentFiles() {
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < FILES_KEPT; i++) {
            text("recent." + i).filter(name -> !name.isEmpty()).ifPresent(name -> files.add(Path.of(name)));
        }
        return files;
    }

    /**
     * Puts a file at the head of those opened lately.
     *
     * @param opened the file
     */
    public void opened(Path opened) {
        List<Path> files = new ArrayList<>(recentFiles());
        Path whole = opened.toAbsolutePath().normalize();
        files.remove(whole);
        files.add(0, whole);
        for (int i = 0; i < FILES_KEPT; i++) {
            put("recent." + i, i < files.size() ? files.get(i) : "");
        }
    }

    /**
     * Writes a mistake of the program's own to a log beside the settings.
     *
     * @param mistake what was thrown
     * @return the log
     */
    public Path logMistake(Throwable mistake) {
        Path log = file.map(f -> f.toAbsolutePath().resolveSibling("mistakes.log"))
                .orElseGet(() -> Path.of(System.getProperty("java.io.tmpdir", "."), "bermwright-mistakes.log"));
        StringWriter trace = new StringWriter();
        mistake.printStackTrace(new java.io.PrintWriter(trace));
        try {
            Files.createDirectories(log.toAbsolutePath().getParent());
            Files.writeString(log, java.time.Instant.now() + "\n" + trace + "\n",
                    java.nio.file.StandardOpenOption.CREATE, java.nio.file.StandardOpenOption.APPEND);
        } catch (IOException notWritten) {
            // The trace is on the standard error stream as well.
            return log;
        }
        return log;
    }

    /** Writes the settings to their file; a file that cannot be written is left as it is. */
    public void keep() {
        if (file.isEmpty()) {
            return;
        }
        Path target = file.get().toAbsolutePath();
        try {
            Files.createDirectories(target.getParent());
            StringWriter text = new StringWriter();
            values.store(text, null);
            WholeFile.write(target, text.toString());
        } catch (IOException notWritten) {
            // Said in the class's own words: the comfort is lost, nothing else.
            return;
        }
    }
}
