// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.filestore.Storage;
import bermwright.filestore.WholeFile;
import bermwright.foundation.InputException;
import bermwright.site.plan.Plan;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads and writes plan files. */
public final class PlanFiles {
    /** The greatest size of a plan file in bytes; a plan is text written by people. */
    static final long LARGEST = 20L * 1024 * 1024;

    private PlanFiles() {
    }

    /**
     * Reads a plan file.
     *
     * @param file the file
     * @return the plan, every key left out at its printed default
     * @throws InputException if the file cannot be read or says something that is not accepted
     */
    public static Plan read(Path file) {
        return read(text(file), file.toString());
    }

    /**
     * Reads a plan from text.
     *
     * @param text the text of a plan file
     * @param file name of the file for error messages
     * @return the plan
     * @throws InputException if the text says something that is not accepted
     */
    public static Plan read(String text, String file) {
        return plan(JsonReading.read(text, file), new At(file, ""));
    }

    static Plan plan(Json value, At at) {
        Json.Fields fields = ValueReading.fields(value, at, new ValueType.Part(Plan.class));
        Json.Fields carried = Versions.RELEASED.migrated(fields, at);
        Plan plan = RecordReading.read(Plan.class, carried, at);
        PlanChecks.check(plan, carried, at);
        return plan;
    }

    /**
     * A plan as the text of a plan file: stable key order, two-space indent, keys at their default left out unless
     * they were given.
     *
     * @param plan the plan
     * @return the text, ending in a line end
     */
    public static String text(Plan plan) {
        return JsonText.pretty(tree(plan));
    }

    static Json.Fields tree(Plan plan) {
        Map<String, Json> members = new LinkedHashMap<>();
        members.put(Versions.KEY, Json.Leaf.number(Versions.RELEASED.newest()));
        members.putAll(RecordWriting.write(plan).members());
        return new Json.Fields(0, members);
    }

    /**
     * Writes a plan file whole, as {@link WholeFile} does.
     *
     * @param plan the plan
     * @param file the file
     * @throws InputException if the file cannot be written; what stood there before is then untouched
     */
    public static void write(Plan plan, Path file) {
        write(Storage.DISK, plan, file);
    }

    /**
     * Writes a plan file whole to a given disk.
     *
     * @param storage the disk
     * @param plan    the plan
     * @param file    the file
     * @throws InputException if the file cannot be written; what stood there before is then untouched
     */
    public static void write(Storage storage, Plan plan, Path file) {
        try {
            WholeFile.write(storage, file, text(plan));
        } catch (IOException e) {
            throw InputException.unreadable(InputException.Place.of(file.toString()), "cannot be written (" + e + ")",
                    "a file in a folder that can be written to", Optional.of(e));
        }
    }

    /**
     * The JSON Schema of the plan file, draft 2020-12.
     *
     * @return the schema as JSON text, ending in a line end
     */
    public static String schema() {
        return PlanSchema.text();
    }

    /**
     * The text of a plan file, as it stands.
     *
     * @param file the file
     * @return its text, without a byte order mark
     * @throws InputException if it is no regular file, is larger than a plan can be, or is not UTF-8
     */
    public static String text(Path file) {
        InputException.Place place = InputException.Place.of(file.toString());
        InputException.checkRegular(place, file, "a plan file");
        try (InputStream in = Files.newInputStream(file)) {
            checkSize(place, Files.size(file));
            // Bounded whatever the size says: a file may grow while it is read, and some say 0.
            byte[] bytes = in.readNBytes((int) LARGEST + 1);
            checkSize(place, bytes.length);
            return decoded(bytes, file.toString());
        } catch (IOException e) {
            throw InputException.unreadable(place, "cannot be read (" + e + ")", "a plan file", Optional.of(e));
        }
    }

    private static void checkSize(InputException.Place place, long size) {
        if (size > LARGEST) {
            throw InputException.unreadable(place, "is " + size + " bytes long",
                    "a plan file of at most " + LARGEST + " bytes", Optional.empty());
        }
    }

    private static String decoded(byte[] bytes, String file) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CharBuffer text = CharBuffer.allocate(bytes.length + 1);
        ByteBuffer input = ByteBuffer.wrap(bytes);
        CoderResult result = decoder.decode(input, text, true);
        if (result.isError()) {
            int line = 1 + (int) text.flip().chars().filter(c -> c == '\n').count();
            throw InputException.unreadable(new InputException.Place(file, line, ""), "not UTF-8 text",
                    "JSON in UTF-8", Optional.empty());
        }
        String whole = text.flip().toString();
        return whole.startsWith("\uFEFF") ? whole.substring(1) : whole;
    }
}
