// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.NewPlan;
import bermwright.editor.model.Plainly;
import bermwright.editor.run.Background;
import bermwright.foundation.InputException;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.stage.FileChooser;

/** Begins a new plan on an elevation file, once that was read and found good. */
final class PlanBeginning implements AutoCloseable {
    private static final String LANE = "new plan";
    static final FileChooser.ExtensionFilter ELEVATIONS =
            new FileChooser.ExtensionFilter("Elevation files", "*.tif", "*.tiff", "*.asc", "*.txt", "*.lbl", "*.LBL");
    static final FileChooser.ExtensionFilter ALL_FILES = new FileChooser.ExtensionFilter("All files", "*");
    private static final String NOTICE = "new";

    private final EditorWindow window;
    private final Background background = new Background(Platform::runLater, 1);

    PlanBeginning(EditorWindow window) {
        this.window = window;
    }

    /** Asks for an elevation file and for the place of the plan, and begins the plan. */
    void ask() {
        askElevation().ifPresent(elevation -> {
            FileChooser place = new FileChooser();
            place.setTitle("Where the new plan goes");
            place.getExtensionFilters().add(EditorWindow.PLANS);
            Path suggested = NewPlan.beside(elevation);
            place.setInitialDirectory(suggested.getParent().toFile());
            place.setInitialFileName(suggested.getFileName().toString());
            Optional.ofNullable(place.showSaveDialog(window.stage())).ifPresent(to -> begin(elevation, to.toPath()));
        });
    }

    /** Asks for an elevation file. */
    Optional<Path> askElevation() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Elevation file");
        chooser.getExtensionFilters().addAll(ELEVATIONS, ALL_FILES);
        return Optional.ofNullable(chooser.showOpenDialog(window.stage())).map(File::toPath);
    }

    /** Begins a plan; a file that holds no heights begins nothing and leaves the window as it is. */
    void begin(Path elevation, Path planFile) {
        Plan plan = NewPlan.on(elevation, planFile);
        window.notices().show(NOTICE, "Reading " + elevation.getFileName() + " \u2026",
                List.of(new Notices.Choice("Stop", () -> background.cancel(LANE))));
        background.start(LANE, progress -> SiteGround.read(plan, planFile, progress), Background.Listener.of(read -> {
            window.notices().hide(NOTICE);
            if (window.mayLeave()) {
                write(plan, planFile);
            }
        }, failure -> {
            window.notices().hide(NOTICE);
            window.report("No plan was begun on " + elevation.getFileName(), Plainly.words(failure));
        }));
    }

    private void write(Plan plan, Path planFile) {
        try {
            PlanFiles.write(plan, planFile);
            window.openNow(planFile);
            window.notices().show(NOTICE, "The new plan is " + planFile.getFileName() + ". All its values are the"
                    + " printed defaults: look them over under ground, exposure and rules in the list. Hulls and all"
                    + " else come from the menu Add.", List.of());
        } catch (InputException refused) {
            window.report("The new plan was not written", refused.getMessage());
        }
    }

    @Override
    public void close() {
        background.close();
    }
}
