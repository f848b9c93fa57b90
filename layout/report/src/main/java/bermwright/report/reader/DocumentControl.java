// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.foundation.InputException;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.assessment.Assessment;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * By what a sheet of paper is known again: plan, revision, date and the checksums of what it was made from.
 *
 * @param title     title of the plan
 * @param file      name of the plan file
 * @param issue     revision and date
 * @param plan      checksum of the plan file (SHA-256, hexadecimal)
 * @param elevation checksum of the elevation file, the same
 * @param program   name and version of the program
 */
public record DocumentControl(String title, String file, Issue issue, String plan, String elevation,
        String program) {
    /** The day that files state where no date is given, so that the same input gives the same bytes. */
    public static final LocalDate NO_DATE = LocalDate.of(2000, 1, 1);
    private static final int SHORT = 12;
    private static final int LONGEST_TITLE = 60;

    /**
     * What the person who hands over states.
     *
     * @param revision letter or number of the revision; empty where none is stated
     * @param date     date of the report; empty where none is stated
     */
    public record Issue(String revision, Optional<LocalDate> date) {
        /** Nothing stated. */
        public static final Issue NOT_STATED = new Issue("", Optional.empty());
    }

    /**
     * The control of an assessment's reports.
     *
     * @param assessment the assessment
     * @param issue      what is stated
     * @return the control; the checksum is that of the plan's file where the file holds this plan, else that of
     *     {@code exchange/plan.json}
     * @throws IOException if a file cannot be read
     */
    public static DocumentControl of(Assessment assessment, Issue issue) throws IOException {
        Path plan = Path.of(assessment.planName());
        Path elevation = assessment.ground().directory().resolve(assessment.plan().ground().elevationFile());
        String title = assessment.plan().title().isBlank() ? assessment.planName() : assessment.plan().title();
        Path name = plan.getFileName();
        return new DocumentControl(title, name == null ? assessment.planName() : name.toString(), issue,
                holds(plan, assessment) ? checksum(plan) : checksum(PlanFiles.text(assessment.plan())),
                Files.isRegularFile(elevation) ? checksum(elevation) : "", "Bermwright " + assessment.version());
    }

    private static boolean holds(Path file, Assessment assessment) {
        try {
            return Files.isRegularFile(file)
                    && PlanFiles.text(PlanFiles.read(file)).equals(PlanFiles.text(assessment.plan()));
        } catch (InputException another) {
            return false;
        }
    }

    /**
     * The checksum that a sheet states of a file.
     *
     * @param file the file
     * @return SHA-256, hexadecimal
     * @throws IOException if it cannot be read
     */
    public static String checksum(Path file) throws IOException {
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest())) {
            in.transferTo(java.io.OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(((DigestInputStream) in).getMessageDigest().digest());
        }
    }

    private static String checksum(String text) {
        return HexFormat.of().formatHex(digest().digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * The date in words.
     *
     * @return the date, or that none is stated
     */
    public String date() {
        return issue.date.map(LocalDate::toString).orElse("not stated");
    }

    private String revision() {
        return issue.revision.isBlank() ? "not stated" : issue.revision;
    }

    /**
     * The running head of every sheet, in two lines.
     *
     * @param reader whose report it is
     * @return the words
     */
    String head(Reader reader) {
        String cut = title.length() > LONGEST_TITLE ? title.substring(0, LONGEST_TITLE - 1) + "…" : title;
        return cut + "  /  " + reader.title() + "  /  revision " + revision() + "  /  date " + date() + "\n"
                + "plan file " + shortened(plan) + "  /  elevation file " + shortened(elevation)
                + "  (first of SHA-256)  /  " + program;
    }

    private static String shortened(String checksum) {
        return checksum.isEmpty() ? "not there" : checksum.substring(0, SHORT);
    }

    /** The block that opens a report. */
    Table table() {
        return new Table("document-control", "This document", List.of(Column.words("what", "what"),
                Column.words("value", "value")), List.of(
                List.of("plan", title + " (" + file + ")"), List.of("revision", revision()),
                List.of("date", issue.date.map(LocalDate::toString).orElse("not stated: give it with --date, so that"
                        + " two prints can be told apart")),
                List.of("checksum of the plan file, SHA-256", plan),
                List.of("checksum of the elevation file, SHA-256", elevation.isEmpty() ? "not there" : elevation),
                List.of("made with", program)));
    }
}
