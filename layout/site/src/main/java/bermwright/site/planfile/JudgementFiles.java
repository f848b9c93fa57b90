// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.filestore.WholeFile;
import bermwright.foundation.InputException;
import bermwright.site.judgement.Judgements;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads and writes the file of judgements beside a plan. */
public final class JudgementFiles {
    private static final String KEY = "bermwright_judgements";
    private static final String ENDING = ".json";

    private JudgementFiles() {
    }

    /**
     * The file of judgements of a plan.
     *
     * @param plan the plan file, such as {@code site.json}
     * @return the file beside it, such as {@code site.judgements.json}
     */
    public static Path beside(Path plan) {
        Path name = plan.getFileName();
        String whole = name == null ? "plan" : name.toString();
        return plan.resolveSibling((whole.endsWith(ENDING) ? whole.substring(0, whole.length() - ENDING.length())
                : whole) + ".judgements.json");
    }

    /**
     * The judgements on a plan.
     *
     * @param plan the plan file
     * @return the judgements; none where no file of judgements stands beside the plan
     * @throws InputException if the file cannot be read or says something that is not accepted
     */
    public static Judgements of(Path plan) {
        Path file = beside(plan);
        if (!Files.exists(file)) {
            return Judgements.NONE;
        }
        At at = new At(file.toString(), "");
        Json read = JsonReading.read(PlanFiles.text(file), file.toString());
        if (!(read instanceof Json.Fields fields)) {
            throw at.refuse(read, "an object with the keys " + KEY + " and judgements");
        }
        Json version = fields.member(KEY).orElseThrow(() -> at.key(KEY).refuse(fields.line(), "missing", "1"));
        if (!(version instanceof Json.Leaf leaf && leaf.text().equals("1"))) {
            throw at.key(KEY).refuse(version, "1");
        }
        return RecordReading.read(Judgements.class, fields.without(KEY), at);
    }

    /**
     * Writes the judgements on a plan whole.
     *
     * @param judgements the judgements
     * @param plan       the plan file
     * @throws InputException if the file cannot be written; what stood there before is then untouched
     */
    public static void write(Judgements judgements, Path plan) {
        Map<String, Json> members = new LinkedHashMap<>();
        members.put(KEY, Json.Leaf.number(1));
        members.putAll(RecordWriting.write(judgements).members());
        Path file = beside(plan);
        try {
            WholeFile.write(file, JsonText.pretty(new Json.Fields(0, members)));
        } catch (IOException e) {
            throw InputException.unreadable(InputException.Place.of(file.toString()), "cannot be written (" + e + ")",
                    "a file in a folder that can be written to", Optional.of(e));
        }
    }
}
