// SPDX-License-Identifier: Apache-2.0
package bermwright.foundation;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;

/** What the user wrote in a file or option cannot be used; it says where, what was found and what is accepted. */
public final class InputException extends RuntimeException {
    /** What stands for a letter that could not be read. */
    private static final char UNREADABLE_LETTER = '\uFFFD';

    private final String file;
    private final int line;
    private final String key;
    private final String value;
    private final String accepted;

    private InputException(String message, Place place, String value, String accepted, Throwable cause) {
        super(message, cause);
        this.file = place.file;
        this.line = place.line;
        this.key = place.key;
        this.value = value;
        this.accepted = accepted;
    }

    /**
     * Where the trouble stands.
     *
     * @param file the file or option, as the user named it; may be empty
     * @param line the line, from 1; 0 where there is none
     * @param key  the key or column, as a path such as {@code hulls[0].length_m}; may be empty
     */
    public record Place(String file, int line, String key) {
        /**
         * A place that is a whole file.
         *
         * @param file the file as the user named it
         * @return the place
         */
        public static Place of(String file) {
            return new Place(file, 0, "");
        }

        private String words() {
            StringBuilder words = new StringBuilder(file);
            if (line > 0) {
                words.append(words.isEmpty() ? "line " : ", line ").append(line);
            }
            if (!key.isEmpty()) {
                words.append(words.isEmpty() ? "" : ": ").append(key);
            }
            return words.toString();
        }
    }

    /**
     * A value that cannot be used: "rim.csv, line 14: depth_m is -1; accepted: greater than 0, in metres".
     *
     * @param place    where it stands
     * @param value    what was found, as written
     * @param accepted what would be accepted
     * @return the exception, to be thrown
     */
    public static InputException badValue(Place place, String value, String accepted) {
        return new InputException("%s is %s; accepted: %s".formatted(place.words(), value, accepted), place, value,
                accepted, null);
    }

    /**
     * Something that cannot be read at all.
     *
     * @param place    where it stands
     * @param trouble  what is wrong, in a clause without a full stop
     * @param accepted what would be accepted
     * @param cause    what was caught, if anything
     * @return the exception, to be thrown
     */
    public static InputException unreadable(Place place, String trouble, String accepted, Optional<Throwable> cause) {
        return new InputException("%s: %s; accepted: %s".formatted(place.words(), trouble, accepted), place, trouble,
                accepted, cause.orElse(null));
    }

    /**
     * Refuses a file that cannot be read to its end: a missing one, a folder, a pipe or a device.
     *
     * @param place    where it is named
     * @param file     the file
     * @param accepted what would be accepted
     * @throws InputException if it is no regular file that may be read, saying why
     */
    public static void checkRegular(Place place, Path file, String accepted) {
        String named = place.file().equals(file.toString()) ? "" : file + " ";
        String trouble = "";
        if (Files.isDirectory(file)) {
            trouble = named + "is a folder";
        } else if (Files.isRegularFile(file)) {
            trouble = Files.isReadable(file) ? "" : named + "may not be read: permission is missing";
        } else if (Files.exists(file)) {
            trouble = named + "is a pipe, a device or the like and no regular file";
        } else if (!Files.notExists(file)) {
            trouble = named + "cannot be looked for: permission on its folder is missing";
        } else if (file.toString().chars().anyMatch(c -> c == UNREADABLE_LETTER)) {
            trouble = named + "has letters that this system's language setting cannot read; set LC_ALL=C.UTF-8";
        } else {
            trouble = named.isEmpty() ? "there is no such file" : "there is no file " + file;
        }
        if (!trouble.isEmpty()) {
            throw unreadable(place, trouble, accepted, Optional.empty());
        }
    }

    /**
     * A file that another one names, beside that one.
     *
     * @param folder   the folder of the file that names it
     * @param name     its name
     * @param place    where it is named
     * @return the file
     * @throws InputException if no file can have that name
     */
    public static Path beside(Path folder, String name, Place place) {
        try {
            return folder.resolve(name);
        } catch (InvalidPathException e) {
            throw unreadable(place, name + " is no file name here (" + e.getReason() + ")",
                    "the name of a file; where it has letters beyond A to Z, a UTF-8 language setting", Optional.of(e));
        }
    }

    /**
     * The file or option, as the user named it.
     *
     * @return the name, empty where there is none
     */
    public String file() {
        return file;
    }

    /**
     * The line in the file.
     *
     * @return the line from 1, absent where there is none
     */
    public OptionalInt line() {
        return line > 0 ? OptionalInt.of(line) : OptionalInt.empty();
    }

    /**
     * The key or column.
     *
     * @return the key's path, empty where there is none
     */
    public String key() {
        return key;
    }

    /**
     * What was found.
     *
     * @return the value as written, or what was wrong
     */
    public String value() {
        return value;
    }

    /**
     * What is accepted in its place.
     *
     * @return the accepted values in words
     */
    public String accepted() {
        return accepted;
    }
}
