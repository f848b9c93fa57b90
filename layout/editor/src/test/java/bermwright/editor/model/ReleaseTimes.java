// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Move;
import bermwright.editor.edit.Part;
import bermwright.foundation.Progress;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Processor time of a whole assessment after a hull was moved, by what it says it does, by an assessment that is kept
 * from move to move and, beside it, by one that knows nothing of moves before; run by hand with a plan file
 * and a number of moves: {@code q testrun layout/editor bermwright.editor.model.ReleaseTimes demo-site/plan.json 5}.
 */
final class ReleaseTimes {
    private static final OperatingSystemMXBean SYSTEM =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private static final long NANOS_A_MILLI = 1_000_000;

    private ReleaseTimes() {
    }

    /** Runs the moves: plan file, number of moves, and which hull is moved, from 0. */
    public static void main(String[] arguments) {
        Path file = Path.of(arguments[0]).toAbsolutePath();
        Plan plan = PlanFiles.read(file);
        SiteGround ground = SiteGround.read(plan, file, Progress.NONE);
        Assessments assessments = Assessments.standard();
        int hull = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 0;
        for (int i = 0; i < Integer.parseInt(arguments[1]); i++) {
            Plan moved = new Move(Part.hull(plan.hulls().get(hull).id()), 3.0 * i, 0).applied(plan);
            run("kept", assessments, new Assessments.Site(moved, "plan", ground));
            run("new", Assessments.standard(), new Assessments.Site(moved, "plan", ground));
        }
    }

    private static void run(String which, Assessments assessments, Assessments.Site site) {
        Steps steps = new Steps();
        assessments.run(Assessments.Asked.EVERYTHING, site, steps, early -> steps.dose());
        steps.print(which);
    }

    private static final class Steps implements Progress {
        private final Map<String, Long> nanos = new LinkedHashMap<>();
        private final long begun = SYSTEM.getProcessCpuTime();
        private long last = begun;
        private String step = "start";
        private long dose;

        @Override
        public void report(double share, String words) {
            long now = SYSTEM.getProcessCpuTime();
            nanos.merge(step, now - last, Long::sum);
            last = now;
            step = words;
        }

        @Override
        public boolean isCancelled() {
            return false;
        }

        private void dose() {
            dose = SYSTEM.getProcessCpuTime() - begun;
        }

        private void print(String which) {
            System.out.printf(Locale.ROOT, "%s: dose as designed after %d ms, all after %d ms of processor time%n",
                    which, dose / NANOS_A_MILLI, (SYSTEM.getProcessCpuTime() - begun) / NANOS_A_MILLI);
            nanos.forEach((words, spent) -> System.out.printf(Locale.ROOT, "    %-40s %d%n", words,
                    spent / NANOS_A_MILLI));
        }
    }
}
