// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.Comparison;
import bermwright.editor.model.FigureList;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.MapFigure;
import bermwright.editor.model.MapFigures;
import bermwright.editor.model.Plainly;
import bermwright.editor.model.UnitWords;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.LiveSite;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Two variants of the plan side by side: both from above, and every figure with its difference. */
final class ComparePane extends VBox {
    private static final String LANE = "comparison";

    private final Workbench bench;
    private final Background background;
    private Dress dress;
    private final Label words = new Label("Keep the plan as it is now as a variant, go on editing, and see here what"
            + " became of every figure. Or compare with another plan file.");
    private final TableView<Comparison.Row> table = new TableView<>();
    private final CheckBox onlyChanged = new CheckBox("only what differs");
    private final HBox maps = new HBox(4);
    private final Canvas mine = new Canvas();
    private final Canvas other = new Canvas();
    private Optional<Assessment> kept = Optional.empty();
    private String keptName = "";
    private boolean isShown;

    ComparePane(Workbench bench, Background background, Dress dress) {
        this.bench = bench;
        this.background = background;
        this.dress = dress;
        words.setWrapText(true);
        words.setMinHeight(USE_PREF_SIZE);
        words.setId("compare-words");
        Button keep = new Button("Keep this variant");
        keep.setId("keep-variant");
        keep.setOnAction(event -> keepNow());
        onlyChanged.setSelected(true);
        onlyChanged.setOnAction(event -> refresh());
        maps.getChildren().addAll(framed("variant", other), framed("now", mine));
        maps.setMinHeight(170);
        maps.setPrefHeight(230);
        showMaps(false);
        table.setId("comparison");
        table.setAccessibleText("Figures of both plans");
        table.setPlaceholder(new Label("No difference to show yet."));
        fillTable();
        VBox.setVgrow(table, Priority.ALWAYS);
        HBox bar = new HBox(8, keep, onlyChanged);
        bar.getStyleClass().add("bar");
        getChildren().addAll(words, bar, maps, table);
        getStyleClass().add("answer");
        bench.calm().listen(this::refresh);
    }

    private void fillTable() {
        table.getColumns().clear();
        table.getColumns().add(column("about", 5.2, Comparison.Row::subject));
        table.getColumns().add(column("figure", dress.scale() > SitePane.LARGE ? 9 : 13, Comparison.Row::name));
        table.getColumns().add(column("variant", 5.4, r -> Figures.brief(r.mine())));
        table.getColumns().add(column("now", 5.0, r -> Figures.brief(r.other())));
        table.getColumns().add(column("difference", 6.6, r -> r.isSame() ? "none" : (r.difference() > 0 ? "+" : "")
                + Figures.brief(r.difference())));
        table.getColumns().add(column("unit", 4.2, r -> UnitWords.shown(r.unit())));
    }

    private void showMaps(boolean isThere) {
        maps.setVisible(isThere);
        maps.setManaged(isThere);
    }

    /** Dresses the pane for another window. */
    void dress(Dress changed) {
        boolean isOther = changed.scale() != dress.scale();
        dress = changed;
        if (isOther) {
            fillTable();
        }
        refresh();
    }

    private Region framed(String name, Canvas canvas) {
        Label over = new Label(name);
        over.getStyleClass().add("hint");
        Pane pane = new Pane(canvas, over);
        HBox.setHgrow(pane, Priority.ALWAYS);
        pane.setMinWidth(60);
        pane.widthProperty().addListener((observed, before, now) -> refresh());
        pane.heightProperty().addListener((observed, before, now) -> refresh());
        canvas.widthProperty().bind(pane.widthProperty());
        canvas.heightProperty().bind(pane.heightProperty());
        return pane;
    }

    private TableColumn<Comparison.Row, String> column(String name, double ems,
            Function<Comparison.Row, String> text) {
        TableColumn<Comparison.Row, String> column = new TableColumn<>(name);
        column.setPrefWidth(ems * dress.textSize());
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(text.apply(row.getValue())));
        boolean isNumber = !List.of("about", "figure", "unit").contains(name);
        column.setCellFactory(c -> {
            TableCell<Comparison.Row, String> cell = new TableCell<>() {
                @Override
                protected void updateItem(String item, boolean isEmpty) {
                    super.updateItem(item, isEmpty);
                    setText(isEmpty ? null : item);
                    setTooltip(isEmpty || item == null ? null : Hint.of(item));
                }
            };
            cell.setStyle(isNumber ? "-fx-alignment: center-right;" : "");
            return cell;
        });
        return column;
    }

    /** Keeps the plan as it is now; works it out first where that has not been done. */
    void keepNow() {
        Plan plan = bench.plan();
        keptName = "the plan " + bench.document().history().undoWords().map(w -> "after \u201c" + w + "\u201d")
                .orElse("as it was opened");
        if (bench.answers().isAssessmentFresh(plan)) {
            kept = bench.answers().assessment();
            refresh();
        } else {
            bench.answers().ground().ifPresent(ground -> workOut(plan, ground));
        }
    }

    /** Compares with another plan file. */
    void with(Path file) {
        words.setText("Reading " + file + "\u2026");
        background.start(LANE, progress -> {
            Plan plan = PlanFiles.read(file);
            return Assessments.standard().run(plan, file.toString(), SiteGround.read(plan, file, progress), progress);
        }, listener(file.getFileName().toString()));
    }

    private void workOut(Plan plan, SiteGround ground) {
        String name = keptName;
        background.start(LANE, progress -> Assessments.standard().run(plan, "variant", ground, progress),
                listener(name));
    }

    private Background.Listener<Assessment> listener(String name) {
        return new Background.Listener<>(assessment -> {
            kept = Optional.of(assessment);
            keptName = name;
            refresh();
        }, failure -> words.setText("The variant could not be worked out. " + Plainly.words(failure)),
                step -> words.setText("Working out the variant: " + step.words() + " "
                        + Math.round(100 * step.share()) + " %"),
                () -> words.setText("Working out the variant was stopped."));
    }

    /** Draws only while somebody looks. */
    void shown(boolean shownNow) {
        isShown = shownNow;
        refresh();
    }

    private void refresh() {
        Optional<Assessment> now = bench.answers().assessment();
        if (!isShown || kept.isEmpty() || now.isEmpty()) {
            return;
        }
        words.setText("Variant: " + keptName + ". Now: the plan in the window"
                + bench.answers().standing(bench.plan()).map(s -> ", " + s + ".").orElse("."));
        List<Comparison.Row> rows = Comparison.rows(FigureList.of(kept.get()), FigureList.of(now.get()));
        table.getItems().setAll(rows.stream().filter(r -> !onlyChanged.isSelected() || !r.isSame()).toList());
        showMaps(true);
        draw(other, kept.get());
        draw(mine, now.get());
    }

    private void draw(Canvas canvas, Assessment assessment) {
        if (canvas.getWidth() < 2 || canvas.getHeight() < 2) {
            return;
        }
        List<MapFigure> figures = MapFigures.of(LiveSite.of(assessment)).figures();
        MapColours style = MapColours.of(dress.isDark());
        var g = canvas.getGraphicsContext2D();
        g.setFill(style.ground());
        g.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
        figures.stream().filter(f -> f.part().filter(p -> p.kind() == bermwright.editor.edit.Part.Kind.HULL)
                .isPresent()).map(MapFigure::box).reduce(MapCamera.Box::with).ifPresent(box -> {
                    MapCamera camera = new MapCamera(box.centre(), 1, canvas.getWidth(), canvas.getHeight())
                            .fitting(box, 0.92);
                    g.save();
                    g.beginPath();
                    g.rect(0, 0, canvas.getWidth(), canvas.getHeight());
                    g.clip();
                    new FigurePainter(style, dress.textSize() * 0.85).paint(g, camera, figures, List.of());
                    g.restore();
                });
    }
}
