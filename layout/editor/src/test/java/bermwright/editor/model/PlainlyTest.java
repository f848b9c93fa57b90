// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import bermwright.foundation.InputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlainlyTest {
    @Test
    void saysWhatStandsInTheWayWithoutNamesOfTheProgram() {
        assertEquals("/a/b holds files of others; choose another folder.", Plainly.words(new UncheckedIOException(
                new DirectoryNotEmptyException("/a/b"))));
        assertEquals("/a/b is not there.", Plainly.words(new RuntimeException(new NoSuchFileException("/a/b"))));
        assertEquals("the disk is full", Plainly.words(new UncheckedIOException(new IOException("the disk is full"))));
        assertEquals("There is not enough memory for it. Close other plans, or start the editor with more memory.",
                Plainly.words(new OutOfMemoryError("Java heap space")));
        InputException refused = InputException.badValue(new InputException.Place("plan.json", 3, "mass_t"), "-1",
                "more than 0");
        assertEquals(refused.getMessage(), Plainly.words(refused));
        for (Throwable bare : List.of(new NullPointerException(), new IllegalStateException(), new Error(
                "java.lang.Error: bermwright.site.plan.Plan: lost"))) {
            assertFalse(Plainly.words(bare).contains("java") || Plainly.words(bare).contains("bermwright."),
                    Plainly.words(bare));
            assertFalse(Plainly.words(bare).isBlank());
        }
    }
}
