// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.SampleSite;
import bermwright.fuzz.Changes;
import bermwright.fuzz.Fuzz;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A journal changed by chance offers whole steps or none; what it offers can be asked for without a crash. */
class JournalFuzzTest {
    @TempDir
    Path folder;

    @Test
    void journalsGiveWholeStepsOrNone() throws IOException {
        Path plan = SampleSite.write(folder);
        String text = Files.readString(plan);
        String mark = EditJournal.mark(text);
        try (EditJournal journal = new EditJournal(plan, mark)) {
            journal.write(new EditJournal.Step("moved A", text.replace("\"A\"", "\"B\"")));
            journal.write(new EditJournal.Step("named it", text.replace("title", "note")));
            journal.saving(EditJournal.mark("another"));
            journal.flush();
        }
        Path file = EditJournal.beside(plan);
        byte[] good = Files.readAllBytes(file);
        new Fuzz("journal", 70, List.of(good)).run(JournalFuzzTest.class, Changes::ofText, input -> {
            Files.write(file, input);
            Optional<EditJournal.Content> left = EditJournal.leftBehind(plan, mark);
            if (left.isEmpty()) {
                throw bermwright.foundation.InputException.badValue(
                        bermwright.foundation.InputException.Place.of(file.toString()), "no step", "whole steps");
            }
            return left.get().steps().isEmpty() ? "an offer of nothing" : "";
        });
    }
}
