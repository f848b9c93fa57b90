// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.Progress;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.nio.file.Path;

/** A plan file, read and assessed in full. */
final class Assessed {
    private static final double READ = 0.03;

    private Assessed() {
    }

    static Assessment plan(Path file, Progress progress) {
        Plan plan = PlanFiles.read(file);
        SiteGround ground = SiteGround.read(plan, file, progress.part(0, READ));
        return Assessments.standard().run(plan, file.toString(), ground, progress.part(READ, 1));
    }
}
