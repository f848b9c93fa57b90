// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.InputException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** Dates in options. */
final class Days {
    private Days() {
    }

    static LocalDate day(String option, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw InputException.badValue(new InputException.Place("", 0, option), text,
                    "a date such as 2031-02-14");
        }
    }
}
