// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.Workbench;
import bermwright.report.sheet.DoseSheets;
import bermwright.site.assessment.Assessment;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** Dose by station, against each limit, and the sky as the picked hull's stations see it. */
final class DosePane extends ScrollPane {
    private final Workbench bench;
    private final Label title = new Label();
    private final VBox limits = new VBox(6);
    private final DrawingView stations = new DrawingView();
    private final DrawingView sky = new DrawingView();
    private final Label models = new Label();
    private Optional<Assessment> shown = Optional.empty();
    private Optional<String> shownHull = Optional.empty();

    DosePane(Workbench bench) {
        this.bench = bench;
        title.getStyleClass().add("heading");
        title.setWrapText(true);
        models.setWrapText(true);
        VBox box = new VBox(title, limits, stations, sky, models);
        box.getStyleClass().add("answer");
        setContent(box);
        setFitToWidth(true);
        bench.changed().listen(this::refresh);
        bench.pickedChanged().listen(this::refresh);
        refresh();
    }

    private void refresh() {
        Optional<Assessment> assessment = bench.answers().assessment();
        boolean isFresh = bench.answers().isAssessmentFresh(bench.plan());
        title.setText(assessment.isEmpty() ? "Dose is being worked out" : isFresh ? "Dose of this plan"
                : "Dose (provisional: of the plan before)");
        Optional<String> hull = bench.picked().filter(p -> p.kind() == Part.Kind.HULL).map(Part::id)
                .or(() -> assessment.flatMap(a -> a.hulls().stream().filter(h -> !h.stations().isEmpty()).findFirst())
                        .map(h -> h.hull().id()));
        if (assessment.equals(shown) && hull.equals(shownHull)) {
            return;
        }
        boolean isSame = assessment.equals(shown);
        shown = assessment;
        shownHull = hull;
        Optional<DoseSheets> sheets = assessment.flatMap(a -> a.dose()
                .map(dose -> new DoseSheets(a.plan().exposure(), dose)));
        sky.show(sheets.flatMap(s -> hull.flatMap(s::sky)));
        if (!isSame) {
            stations.show(sheets.map(DoseSheets::stations));
            limits.getChildren().clear();
            sheets.ifPresent(s -> {
                for (int i = 0; i < s.exposure().limits().size(); i++) {
                    DrawingView view = new DrawingView();
                    view.show(Optional.of(s.against(i)));
                    limits.getChildren().add(view);
                }
            });
            models.setText(assessment.flatMap(Assessment::dose).map(d -> d.models().stream()
                    .map(m -> m.model() + " Holds for: " + m.validFor() + " Spread: " + m.spread() + " ("
                            + m.status().word() + ")").collect(java.util.stream.Collectors.joining("\n\n")))
                    .orElse(""));
        }
    }
}
