// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import java.nio.file.Path;
import java.util.Optional;

/** Words for what is wrong with one elevation file; each names the tag, keyword or part of the file it is about. */
record FileTrouble(Path file) {
    InputException unreadable(String key, String trouble, String accepted) {
        return InputException.unreadable(new InputException.Place(file.toString(), 0, key), trouble, accepted,
                Optional.empty());
    }

    InputException unreadable(String key, String trouble, String accepted, Throwable cause) {
        return InputException.unreadable(new InputException.Place(file.toString(), 0, key), trouble, accepted,
                Optional.of(cause));
    }

    InputException badValue(String key, Object value, String accepted) {
        return badValue(0, key, value, accepted);
    }

    InputException badValue(int line, String key, Object value, String accepted) {
        return InputException.badValue(new InputException.Place(file.toString(), line, key), String.valueOf(value),
                accepted);
    }
}
