// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.Plainly;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.report.sheet.CoverSheets;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.layout.VBox;

/** Sections along and across the picked hull under its cover, and the depth of cover unrolled. */
final class CoverPane extends ScrollPane {
    private static final String LANE = "sections";
    private static final String CUT_LANE = "section across";

    private final Workbench bench;
    private final Background background;
    private final Label title = new Label();
    private final DrawingView along = new DrawingView();
    private final DrawingView across = new DrawingView();
    private final DrawingView unrolled = new DrawingView();
    private final Slider cut = new Slider(0, 1, 0.5);
    private Optional<Assessment> shown = Optional.empty();
    private Optional<String> shownHull = Optional.empty();
    private boolean isShown;

    CoverPane(Workbench bench, Background background) {
        this.bench = bench;
        this.background = background;
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
        bench.calm().listen(this::refresh);
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
        return bench.answers().assessment().flatMap(all -> hull().flatMap(h -> h.lying().flatMap(pose -> all.cover()
                .map(cover -> new CoverSheets(h.hull(), pose, cover, all.plan().walls())))));
    }

    private void refresh() {
        Optional<Assessment> assessment = bench.answers().assessment();
        Optional<String> hull = hull().map(h -> h.hull().id());
        title.setText(bench.answers().heading(hull.map(id -> "Hull " + id + " under its cover").orElse("Cover"),
                bench.plan()));
        boolean isSame = shown.isPresent() && assessment.isPresent() && shown.get() == assessment.get();
        if (!isShown || isSame && hull.equals(shownHull)) {
            return;
        }
        shown = assessment;
        shownHull = hull;
        Optional<CoverSheets> sheets = sheets();
        background.start(LANE, progress -> List.of(DrawingView.prepared(sheets.map(CoverSheets::longSection)),
                DrawingView.prepared(sheets.flatMap(CoverSheets::unrolled))), Background.Listener.of(drawn -> {
                    along.show(drawn.get(0));
                    unrolled.show(drawn.get(1));
                }, failure -> bench.tell("The sections could not be drawn. " + Plainly.words(failure))));
        showAcross();
    }

    private void showAcross() {
        double way = cut.getValue() * hull().map(h -> h.hull().length()).orElse(0.0);
        Optional<CoverSheets> sheets = sheets();
        background.start(CUT_LANE, progress -> DrawingView.prepared(sheets.map(s -> s.crossSection(way))),
                Background.Listener.of(across::show,
                        failure -> bench.tell("The section could not be drawn. " + Plainly.words(failure))));
    }

    /** Draws only while somebody looks. */
    void shown(boolean shownNow) {
        isShown = shownNow;
        refresh();
    }
}
