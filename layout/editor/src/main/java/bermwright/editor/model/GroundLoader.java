// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.foundation.Progress;
import bermwright.site.assessment.GroundSheet;
import bermwright.site.plan.Plan;
import bermwright.terrain.gridfile.GroundFile;
import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalDouble;

/** Reads the ground a plan names. */
public final class GroundLoader {
    private GroundLoader() {
    }

    /**
     * Reads the elevation file of a plan.
     *
     * @param plan     the plan
     * @param planFile its file, beside which the elevation file is looked for
     * @param progress told how far reading has come
     * @return the ground
     * @throws bermwright.foundation.InputException if the elevation file cannot be used
     */
    public static SiteGround read(Plan plan, Path planFile, Progress progress) {
        Path file = planFile.toAbsolutePath().resolveSibling(plan.ground().elevationFile());
        GroundFile read = GroundSheet.read(file, progress).file();
        OptionalDouble trueNorth = read.scale().trueNorth().map(a -> OptionalDouble.of(a.radians()))
                .orElse(OptionalDouble.empty());
        String words = String.format(Locale.ROOT, "%s, %d \u00d7 %d nodes every %s m", read.format(),
                read.grid().frame().columns(), read.grid().frame().rows(), read.spacing());
        return new SiteGround(read.grid(), trueNorth, words, read.cautions());
    }
}
