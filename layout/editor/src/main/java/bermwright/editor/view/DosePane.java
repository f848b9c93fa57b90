// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.Plainly;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.foundation.Azimuth;
import bermwright.report.sheet.DoseSheets;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.SiteDose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** Dose by station, against each limit, and the sky as the picked hull's stations see it. */
final class DosePane extends ScrollPane {
    private static final String LANE = "doses";
    private static final String SKY_LANE = "sky";

    private final Workbench bench;
    private final Background background;
    private final Label title = new Label();
    private final VBox limits = new VBox(6);
    private final DrawingView stations = new DrawingView();
    private final DrawingView sky = new DrawingView();
    private final VBox spreads = new VBox(4);
    private final VBox ways = new VBox(4);
    private final Label models = new Label();
    private Optional<Assessment> shown = Optional.empty();
    private Optional<SiteDose> shownEarly = Optional.empty();
    private Optional<String> shownHull = Optional.empty();
    private boolean isShown;

    DosePane(Workbench bench, Background background) {
        this.bench = bench;
        this.background = background;
        title.getStyleClass().add("heading");
        title.setWrapText(true);
        models.setWrapText(true);
        VBox box = new VBox(title, limits, stations, sky, spreads, ways, models);
        box.getStyleClass().add("answer");
        setContent(box);
        setFitToWidth(true);
        bench.calm().listen(this::refresh);
        bench.pickedChanged().listen(this::refresh);
        refresh();
    }

    private void refresh() {
        Optional<Assessment> assessment = bench.answers().assessment();
        Optional<Assessments.Designed> doses = bench.answers().dose().latest();
        title.setText(bench.answers().dose().standing(bench.plan()).map(s -> "Dose \u2013 " + s)
                .orElse("Dose of this plan"));
        if (doses.isPresent() && (assessment.isEmpty() || assessment.get().dose()
                .filter(d -> d == doses.get().dose()).isEmpty())) {
            early(doses.get());
            return;
        }
        Optional<String> hull = bench.picked().filter(p -> p.kind() == Part.Kind.HULL).map(Part::id)
                .or(() -> assessment.flatMap(a -> a.hulls().stream().filter(h -> !h.stations().isEmpty()).findFirst())
                        .map(h -> h.hull().id()));
        boolean isSame = shown.isPresent() && assessment.isPresent() && shown.get() == assessment.get();
        if (!isShown || assessment.isEmpty() || isSame && hull.equals(shownHull)) {
            return;
        }
        shown = assessment;
        shownHull = hull;
        Optional<DoseSheets> sheets = assessment.flatMap(a -> a.dose()
                .map(dose -> new DoseSheets(a.plan().exposure(), dose)));
        Optional<Azimuth> north = assessment.get().ground().file().scale().trueNorth();
        background.start(SKY_LANE, progress -> DrawingView.prepared(sheets.flatMap(s -> hull.flatMap(
                h -> s.sky(h, north)))),
                Background.Listener.of(sky::show, this::failed));
        if (!isSame) {
            shownEarly = Optional.empty();
            List<JudgedLimit> judged = assessment.get().dose().map(SiteDose::limits).orElse(List.of());
            background.start(LANE, progress -> drawn(sheets), Background.Listener.of(d -> show(d, judged),
                    this::failed));
            spreads.getChildren().setAll(assessment.map(ReviewFigures::spreads).orElse(List.of()));
            ways.getChildren().setAll(assessment.map(ReviewFigures::ways).orElse(List.of()));
            models.setText(assessment.flatMap(Assessment::dose).map(d -> d.models().stream()
                    .map(m -> "Model (" + m.status().word() + "): " + m.model() + "\nHolds for: " + m.validFor()
                            + "\nSpread: " + m.spread()).collect(Collectors.joining("\n\n"))).orElse(""));
        }
    }

    /** Shows doses before all else that is said beside them; what is of an earlier plan is taken away. */
    private void early(Assessments.Designed doses) {
        if (!isShown || shownEarly.filter(d -> d == doses.dose()).isPresent()) {
            return;
        }
        shown = Optional.empty();
        shownEarly = Optional.of(doses.dose());
        spreads.getChildren().clear();
        ways.getChildren().clear();
        models.setText("");
        sky.show(DrawingView.prepared(Optional.empty()));
        background.start(LANE, progress -> drawn(Optional.of(new DoseSheets(doses.plan().exposure(), doses.dose()))),
                Background.Listener.of(drawn -> show(drawn, doses.dose().limits()), this::failed));
    }

    /** The stations first, then each limit. */
    private static List<DrawingView.Prepared> drawn(Optional<DoseSheets> sheets) {
        List<DrawingView.Prepared> drawn = new ArrayList<>();
        drawn.add(DrawingView.prepared(sheets.map(DoseSheets::stations)));
        sheets.ifPresent(s -> {
            for (int i = 0; i < s.dose().limits().size(); i++) {
                drawn.add(DrawingView.prepared(Optional.of(s.against(i))));
            }
        });
        return drawn;
    }

    private void show(List<DrawingView.Prepared> drawn, List<JudgedLimit> judged) {
        stations.show(drawn.get(0));
        limits.getChildren().clear();
        for (int i = 1; i < drawn.size() && i <= judged.size(); i++) {
            DrawingView view = new DrawingView();
            view.show(drawn.get(i));
            Label origin = new Label(DoseSheets.origin(judged.get(i - 1)));
            origin.setWrapText(true);
            limits.getChildren().addAll(view, origin);
        }
    }

    private void failed(Throwable failure) {
        bench.tell("The doses could not be drawn. " + Plainly.words(failure));
    }

    /** Draws only while somebody looks. */
    void shown(boolean shownNow) {
        isShown = shownNow;
        refresh();
    }
}
