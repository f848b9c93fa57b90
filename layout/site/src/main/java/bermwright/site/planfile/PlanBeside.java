// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A plan for another folder: paths that start beside the plan lead to the same files from there. */
public final class PlanBeside {
    private static final String BUILT_IN = "built in";

    private PlanBeside() {
    }

    /**
     * The plan for another folder.
     *
     * @param plan the plan
     * @param from folder of its file
     * @param to   folder of the file to come
     * @return the plan with its paths led anew; absolute paths stay
     */
    public static Plan moved(Plan plan, Path from, Path to) {
        Plan changed = PlanValues.with(plan, "ground.elevation_file",
                path(plan.ground().elevationFile(), from, to));
        ExposurePlan exposure = plan.exposure();
        if (exposure.eventSpectrumFile().isPresent()) {
            changed = PlanValues.with(changed, "exposure.event_spectrum_file",
                    path(exposure.eventSpectrumFile().get(), from, to));
        }
        if (!BUILT_IN.equals(exposure.response())) {
            changed = PlanValues.with(changed, "exposure.response", path(exposure.response(), from, to));
        }
        if (!exposure.moreResponses().isEmpty()) {
            List<String> led = new ArrayList<>();
            exposure.moreResponses().forEach(r -> led.add(path(r, from, to)));
            changed = PlanValues.with(changed, "exposure.more_responses", "[" + String.join(", ", led) + "]");
        }
        for (int i = 0; i < plan.orderOfWork().size(); i++) {
            Optional<String> survey = plan.orderOfWork().get(i).asBuilt().flatMap(WorkStep.AsBuilt::elevationFile);
            if (survey.isPresent()) {
                changed = PlanValues.with(changed, "order_of_work[" + i + "].as_built.elevation_file",
                        path(survey.get(), from, to));
            }
        }
        return changed;
    }

    private static String path(String beside, Path from, Path to) {
        if (Path.of(beside).isAbsolute()) {
            return JsonText.quoted(beside);
        }
        Path there = from.toAbsolutePath().normalize().resolve(beside).normalize();
        Path folder = to.toAbsolutePath().normalize();
        String written = Objects.equals(there.getRoot(), folder.getRoot()) ? folder.relativize(there).toString()
                : there.toString();
        return JsonText.quoted(written.replace('\\', '/'));
    }
}
