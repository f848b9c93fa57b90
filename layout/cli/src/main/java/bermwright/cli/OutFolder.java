// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.filestore.WholeFolder;
import bermwright.foundation.Progress;
import bermwright.report.HandoverPart;
import bermwright.report.Reports;
import bermwright.site.assessment.Assessment;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The folder that an option {@code --out} names, refused before the long work begins where it cannot be replaced. */
final class OutFolder {
    private static final String OPTION = "--out";

    private OutFolder() {
    }

    /** What writes a folder. */
    interface Writing {
        void run() throws IOException;
    }

    /** Refuses a file where a folder is asked for. */
    static void refuseFile(Path directory) {
        if (Files.exists(directory) && !Files.isDirectory(directory)) {
            throw Options.bad(OPTION, directory.toString(), "a folder, or the name of one to be made");
        }
    }

    /**
     * Refuses a folder that can't be replaced as a whole, and says which side files of other programs will go.
     *
     * @param directory the folder
     * @param earlier   what of an earlier run it may hold, in words
     * @param err       where to say it
     */
    static void check(Path directory, String earlier, PrintStream err) {
        refuseFile(directory);
        try {
            List<String> beside = WholeFolder.check(directory);
            if (!beside.isEmpty()) {
                err.println(PlainStream.plain(HandoverPart.goesToo(directory, beside)));
            }
        } catch (DirectoryNotEmptyException others) {
            throw Options.unusable(OPTION, others.getMessage(),
                    "an empty or new folder, or one that holds " + earlier + " and nothing else", others);
        } catch (IOException e) {
            throw notWritten(directory, e);
        }
    }

    /** Writes the folder; where the disk does not take it, that is said. */
    static void write(Path directory, Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw notWritten(directory, e);
        }
    }

    /** Makes what is handed over in the folder; what to open first. */
    static Path write(HandoverPart part, Assessment assessment, Reports.Order order, Path directory,
            Progress progress) {
        try {
            return part.write(assessment, order, directory, progress);
        } catch (IOException e) {
            throw notWritten(directory, e);
        }
    }

    /** Answers where something was handed over, in the program's form or in people's. */
    static void answer(Assessment assessment, Path directory, boolean json, Console console) {
        if (json) {
            ObjectNode answer = CommonJson.of(assessment);
            answer.put("directory", directory.toString());
            console.out().println(JsonObjects.text(answer));
        } else {
            CommonText.head(assessment, console.out());
            console.out().printf("Written: %s%n", directory);
        }
    }

    /** The refusal of a folder that the disk does not take. */
    private static RuntimeException notWritten(Path directory, IOException e) {
        return Options.unusable(OPTION, directory + " cannot be written to (" + e + ")",
                "a folder that can be written to", e);
    }
}
