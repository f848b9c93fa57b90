// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.foundation.InputException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Optional;

/** What went wrong, in words without the names that the program has for it. */
public final class Plainly {
    private Plainly() {
    }

    /**
     * The words: what stands in the way, and of what file where that is known.
     *
     * @param failure what was thrown
     * @return a sentence; never a name of the program's own
     */
    public static String words(Throwable failure) {
        if (failure instanceof InputException) {
            return String.valueOf(failure.getMessage());
        } else if (failure instanceof OutOfMemoryError) {
            return "There is not enough memory for it. Close other plans, or start the editor with more memory.";
        } else if (failure instanceof FileSystemException file) {
            String reason = failure instanceof AccessDeniedException ? "may not be read or written"
                    : failure instanceof NoSuchFileException ? "is not there"
                    : failure instanceof DirectoryNotEmptyException ? "holds files of others; choose another folder"
                    : failure instanceof FileAlreadyExistsException ? "is in the way"
                    : Optional.ofNullable(file.getReason()).orElse("cannot be used");
            return file.getFile() + " " + reason + ".";
        }
        String text = Optional.ofNullable(failure.getMessage()).orElse("");
        Throwable cause = failure.getCause();
        // A wrapped failure repeats the name of its cause; the cause's own words say more.
        boolean isWrapped = cause != null && (text.isEmpty() || text.startsWith(cause.getClass().getName()));
        String plain = isWrapped ? words(cause) : text.replaceAll("\\b(?:[a-z]\\w*\\.)+[A-Z]\\w*(?:: )?", "");
        return plain.isBlank() ? "The editor made a mistake; what it knows of it is in its log." : plain;
    }
}
