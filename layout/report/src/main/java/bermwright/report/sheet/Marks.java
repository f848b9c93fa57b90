// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.ModelNote;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The marks that stand at every figure whose model is provisional or used outside its range. */
public final class Marks {
    private Marks() {
    }

    /** Words for a title, such as " — PROVISIONAL"; nothing where all models are computed inside their range. */
    public static String of(List<ModelNote> notes) {
        String words = Stream.of(ModelNote.Status.PROVISIONAL, ModelNote.Status.EXTRAPOLATED)
                .filter(status -> notes.stream().anyMatch(note -> note.status() == status))
                .map(status -> status.word().toUpperCase(Locale.ROOT)).collect(Collectors.joining(", "));
        return words.isEmpty() ? "" : " — " + words;
    }

    /** What is marked and why, a sentence for each model. */
    public static List<String> reasons(List<ModelNote> notes) {
        return notes.stream().filter(note -> note.status() != ModelNote.Status.COMPUTED)
                .map(note -> note.status().word().toUpperCase(Locale.ROOT) + ": " + note.model()
                        + (note.model().endsWith(".") ? "" : ".") + " Valid for " + note.validFor() + ". Spread: "
                        + note.spread() + ".").toList();
    }
}
