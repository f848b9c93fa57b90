// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.foundation.Azimuth;
import bermwright.site.assessment.Assessment;
import bermwright.terrain.gridfile.ReferenceSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What every sheet of a plan says in its title block.
 *
 * @param title     title of the plan
 * @param plan      name of the plan file
 * @param version   version of the program
 * @param issue     revision and date
 * @param system    reference system of the places
 * @param datum     what heights are counted from
 * @param trueNorth azimuth of true north from grid north; empty where it is not known
 */
record SheetInfo(String title, String plan, String version, Issue issue, String system, String datum,
        Optional<Azimuth> trueNorth) {
    /** Said on every sheet. */
    static final List<String> CAUTIONS = List.of("Planning drawing. Lowering: qualified riggers and engineers, local"
            + " codes and licensed practice decide. Radiation: qualified health physics decides.");

    /**
     * Which issue of the sheets it is.
     *
     * @param revision letter or number of the revision; empty for none
     * @param date     date as it is to stand there; empty for none
     */
    record Issue(String revision, String date) {
    }

    static SheetInfo of(Assessment assessment, Issue issue) {
        Path name = Path.of(assessment.planName()).getFileName();
        Optional<ReferenceSystem> system = assessment.ground().file().referenceSystem();
        return new SheetInfo(assessment.plan().title().isBlank() ? assessment.planName() : assessment.plan().title(),
                name == null ? assessment.planName() : name.toString(), assessment.version(), issue,
                system.map(s -> s.name() + s.code().map(c -> " (" + c + ")").orElse(""))
                        .orElse("not stated by the elevation file"),
                "Heights in metres as in " + assessment.ground().file().file().getFileName() + system.map(s ->
                        String.format(Locale.ROOT, ", over the sphere of radius %,.0f m", s.bodyRadius())).orElse(""),
                assessment.ground().file().scale().trueNorth());
    }
}
