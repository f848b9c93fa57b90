// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.filestore.WholeFolder;
import bermwright.foundation.Progress;
import bermwright.site.assessment.Assessment;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What can be handed over, each into a folder of its own that is replaced as a whole: the door for command line and
 * editor.
 */
public enum HandoverPart {
    /** Reports of the readers as pages and PDFs, with drawings, tables and exchange files beside them. */
    REPORTS("reports"),
    /** Drawings to scale as PDF and SVG. */
    DRAWINGS("drawings"),
    /** Files for other programs: shapes, surfaces, lifts, and the scene for an independent dose calculation. */
    EXCHANGE("exchange files");

    private final String word;

    HandoverPart(String word) {
        this.word = word;
    }

    /**
     * What it is.
     *
     * @return in a word or two
     */
    public String word() {
        return word;
    }

    /**
     * Side files of other programs that go when a folder is written anew.
     *
     * @param directory the folder
     * @return a sentence that names them; nothing where there are none
     * @throws IOException as {@link #write}, for a folder that would be refused
     */
    public static Optional<String> goesToo(Path directory) throws IOException {
        List<String> beside = WholeFolder.check(directory);
        return beside.isEmpty() ? Optional.empty() : Optional.of(goesToo(directory, beside));
    }

    /**
     * Says which side files of other programs go when a folder is written anew.
     *
     * @param directory the folder
     * @param beside    the files, by their paths from there
     * @return the sentence
     */
    public static String goesToo(Path directory, List<String> beside) {
        return "With the earlier files in " + directory + " goes what other programs left beside them: "
                + String.join(", ", beside) + ".";
    }

    /**
     * Makes it.
     *
     * @param assessment the assessment it shows
     * @param order      whose reports, sizes of drawings, revision and date, and the review
     * @param directory  where to; made where it is not there; what an earlier run wrote there is replaced as a whole,
     *                   a folder with other files is refused
     * @param progress   told how far the work has come; may cancel it, and then the folder is as it was
     * @return what to open first: the start page, or the folder
     * @throws IOException if something cannot be written; {@code DirectoryNotEmptyException} for a folder with files
     *                     of others
     * @throws java.util.concurrent.CancellationException if the work was cancelled
     */
    public Path write(Assessment assessment, Reports.Order order, Path directory, Progress progress)
            throws IOException {
        Path first = directory.toAbsolutePath();
        switch (this) {
            case REPORTS -> first = Reports.write(assessment, order, directory, progress);
            case DRAWINGS -> Reports.drawings(assessment, order, directory, progress);
            case EXCHANGE -> Reports.exchange(assessment, directory, progress);
            default -> throw new AssertionError(this);
        }
        progress.report(1, "written");
        return first;
    }
}
