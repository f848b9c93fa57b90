// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.Workbench;
import bermwright.report.sheet.CoverSheets;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.layout.VBox;

/** Sections along and across the picked hull under its cover, and the depth of cover unrolled. */
final class CoverPane extends ScrollPane {
    private final Workbench bench;
    private final Label title = new Label();
    private final DrawingView along = new DrawingView();
    private final DrawingView across = new DrawingView();
    private final DrawingView unrolled = new DrawingView();
    private final Slider cut = new Slider(0, 1, 0.5);
    private Optional<Assessment> shown = Optional.empty();
    private Optional<String> shownHull = Optional.empty();

    CoverPane(Workbench bench) {
        this.bench = bench;
        title.getStyleClass().add("heading");
        title.setWrapText(true);
        cut.setId("cut");
        cut.setAccessibleText("Where the hull is cut across, from the base end to the far end");
        cut.setTooltip(Hint.of("Where the section across cuts the hull, from the base end on the left."));
        cut.valueProperty().addListener((observed, before, now) -> showAcross());
        Label cutWords = new Label("Cut across, from base end to far end");
        VBox box = new VBox(title, along, cutWords, cut, across, unrolled);
        box.getStyleClass().add("answer");
        setContent(box);
        setFitToWidth(true);
        bench.changed().listen(this::refresh);
        bench.pickedChanged().listen(this::refresh);
        refresh();
    }

    private Optional<HullAssessment> hull() {
        Optional<Assessment> assessment = bench.answers().assessment();
        return bench.picked().filter(p -> p.kind() == Part.Kind.HULL)
                .flatMap(p -> assessment.flatMap(a -> a.hull(p.id())))
                .or(() -> assessment.flatMap(a -> a.hulls().stream().filter(h -> h.lying().isPresent()).findFirst()));
    }

    private Optional<CoverSheets> sheets() {
        return hull().flatMap(h -> h.lying().flatMap(pose -> bench.answers().assessment().flatMap(Assessment::cover)
                .map(cover -> new CoverSheets(h.hull(), pose, cover))));
    }

    private void refresh() {
        Optional<Assessment> assessment = bench.answers().assessment();
        Optional<String> hull = hull().map(h -> h.hull().id());
        boolean isFresh = bench.answers().isAssessmentFresh(bench.plan());
        title.setText(hull.map(id -> "Hull " + id + " under its cover").orElse("No cover worked out yet")
                + (isFresh || assessment.isEmpty() ? "" : "  (provisional: of the plan before)"));
        if (assessment.equals(shown) && hull.equals(shownHull)) {
            return;
        }
        shown = assessment;
        shownHull = hull;
        along.show(sheets().map(CoverSheets::longSection));
        unrolled.show(sheets().flatMap(CoverSheets::unrolled));
        showAcross();
    }

    private void showAcross() {
        double length = hull().map(h -> h.hull().length()).orElse(0.0);
        across.show(sheets().map(s -> s.crossSection(cut.getValue() * length)));
    }
}
