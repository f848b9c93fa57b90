// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.filestore.WholeFile;
import bermwright.foundation.InputException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.Supplier;

/** What options say, and how one that says what cannot be is refused: by its name, its value and what is accepted. */
final class Options {
    static final String DATE = "a date such as 2031-02-14";

    private Options() {
    }

    /** The refusal of a value. */
    static InputException bad(String option, String value, String accepted) {
        return InputException.badValue(place(option), value, accepted);
    }

    /** The refusal of what an option led to. */
    static InputException unusable(String option, String trouble, String accepted, Exception cause) {
        return InputException.unreadable(place(option), trouble, accepted, Optional.of(cause));
    }

    private static InputException.Place place(String option) {
        return new InputException.Place("", 0, option);
    }

    static LocalDate day(String option, String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException e) {
            throw bad(option, text, DATE);
        }
    }

    /** What is made of an option; a value it cannot have is the user's, not ours. */
    static <T> T checked(String option, Supplier<T> made) {
        try {
            return made.get();
        } catch (IllegalArgumentException e) {
            throw unusable(option, e.getMessage(), "see bermwright ground --help", e);
        }
    }

    /** Writes the file that an option names. */
    static void write(String option, Path file, String text) {
        try {
            WholeFile.write(file, text);
        } catch (IOException e) {
            throw unusable(option, file + " cannot be written (" + e + ")", "a file in a folder that can be written to",
                    e);
        }
    }
}
