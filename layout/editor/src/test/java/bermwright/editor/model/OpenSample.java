// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.SampleSite;
import bermwright.editor.run.Background;
import bermwright.site.assessment.Assessments;
import java.nio.file.Path;

/** The sample plan, open on a workbench without a window. */
final class OpenSample implements AutoCloseable {
    private final Background background = new Background(Runnable::run, 1);
    private final Workbench bench;

    OpenSample(Path folder) {
        bench = new Workbench(PlanDocument.open(SampleSite.write(folder)),
                new Answers(background, Assessments.standard()));
    }

    Workbench bench() {
        return bench;
    }

    @Override
    public void close() {
        background.close();
        bench.document().close();
    }
}
