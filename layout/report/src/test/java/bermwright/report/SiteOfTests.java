// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.foundation.Progress;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** A small site with hostile names, its ground written as a file and read back. */
final class SiteOfTests {
    /** A hull's id that breaks pages, tables, file names and queries where it is not escaped. */
    static final String HOSTILE = "a<script>alert(1)<script>&\"'\\..";
    /** A name that leaves the directory where it is not kept out of file names; ids of steps may hold slashes. */
    static final String CLIMBING = "../../up";
    private static Assessment made;

    private SiteOfTests() {
    }

    /** The assessment, made once for all tests. */
    static synchronized Assessment assessment(Path directory) throws IOException {
        if (made == null) {
            Path plan = directory.resolve("site plan.json");
            try (InputStream in = SiteOfTests.class.getResourceAsStream("site.json")) {
                String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                Files.writeString(plan, text.replace("HOSTILE", HOSTILE.replace("\\", "\\\\")
                        .replace("\"", "\\\"")).replace("CLIMBING", CLIMBING));
            }
            Files.writeString(directory.resolve("ground.asc"), ground());
            Plan read = PlanFiles.read(plan);
            made = Assessments.standard().run(read, "site plan.json", SiteGround.read(read, plan, Progress.NONE),
                    Progress.NONE);
        }
        return made;
    }

    private static String ground() {
        int size = 151;
        StringBuilder text = new StringBuilder("ncols 151\nnrows 151\nxllcenter 0\nyllcenter 0\ncellsize 2\n"
                + "NODATA_value -9999\n");
        for (int row = size - 1; row >= 0; row--) {
            for (int column = 0; column < size; column++) {
                double east = 2.0 * column;
                double north = 2.0 * row;
                boolean hole = east > 280 && north > 280;
                text.append(hole ? "-9999" : String.format(Locale.ROOT, "%.3f", 100 + 0.01 * east
                        + 0.4 * Math.sin(north / 31) + 0.3 * Math.cos(east / 23))).append(column
                        + 1 < size ? " " : "\n");
            }
        }
        return text.toString();
    }
}
