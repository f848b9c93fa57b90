// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.InputException;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * What went wrong, for people and for programs.
 *
 * @param file     the file as the user named it; may be empty
 * @param line     the line from 1; 0 where there is none
 * @param key      the key or option; may be empty
 * @param value    what was found; may be empty
 * @param accepted what is accepted in its place; may be empty
 * @param text     one line for people
 */
record ErrorObject(String file, int line, String key, String value, String accepted, String text) {
    static ErrorObject of(InputException bad) {
        return new ErrorObject(bad.file(), bad.line().orElse(0), bad.key(), bad.value(), bad.accepted(),
                bad.getMessage());
    }

    static ErrorObject text(String text) {
        return new ErrorObject("", 0, "", "", "", text);
    }

    ObjectNode json() {
        ObjectNode page = JsonObjects.object();
        ObjectNode error = page.putObject("error");
        error.put("file", file);
        if (line > 0) {
            error.put("line", line);
        } else {
            error.putNull("line");
        }
        error.put("key", key).put("value", value).put("accepted", accepted).put("text", text);
        return page;
    }
}
