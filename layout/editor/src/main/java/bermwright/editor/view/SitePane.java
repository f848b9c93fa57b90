// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.SetValue;
import bermwright.editor.mend.MendingField;
import bermwright.editor.model.Answers;
import bermwright.editor.model.FormModel;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.MapHands;
import bermwright.editor.model.NewPlan;
import bermwright.editor.model.Plainly;
import bermwright.editor.model.PlanDocument;
import bermwright.editor.model.ReliefData;
import bermwright.editor.model.ReliefLook;
import bermwright.editor.model.ReliefPicture;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.report.sheet.AsBuiltSheets;
import bermwright.report.sheet.CalendarSheets;
import bermwright.site.assessment.AsBuilt;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.assessment.WorkCalendar;
import bermwright.site.plan.GroundPlan;
import bermwright.site.stages.Stage;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** Everything in the window for one document: list and form, map, answers, status. */
final class SitePane extends BorderPane implements AutoCloseable {
    private static final String GROUND_LANE = "ground";
    private static final String RELIEF_LANE = "relief";
    private static final int THREADS = 4;
    private static final String WORKING = "Cover, dose and soil: ";
    /** Text so many times the usual counts as large (1). */
    static final double LARGE = 1.4;

    private final Background background = new Background(Platform::runLater, THREADS);
    private final Workbench bench;
    private final MapPane map;
    private final MapHands hands;
    private final PartActions actions;
    private final FormModel form;
    private final InventoryPane inventory;
    private final FormPane formPane;
    private final StatusStrip status;
    private final Notices notices = new Notices();
    private final AnswerTabs answers;
    private final SplitPane left = new SplitPane();
    private final SplitPane columns = new SplitPane();
    private Optional<ReliefData> relief = Optional.empty();
    private Optional<ReliefData> stageRelief = Optional.empty();
    private ReliefLook reliefLook = new ReliefLook(true, true, false, false, 1);
    private Optional<GroundPlan> groundOf = Optional.empty();
    private final LayerPanel layers;
    private final SectionDrawer section;
    private Dress dress;
    private boolean isFitted;

    SitePane(PlanDocument document, Dress dress) {
        this.dress = dress;
        bench = new Workbench(document, new Answers(background, Assessments.standard()));
        hands = new MapHands(bench);
        map = new MapPane(bench, hands, background);
        actions = new PartActions(bench, map, notices);
        form = new FormModel(bench);
        status = new StatusStrip(bench);
        map.dress(map.dress().in(dress.isDark(), dress.scale()));
        map.onPointer(status::point);
        reliefLook = new ReliefLook(true, true, false, dress.isDark(), 1);
        inventory = new InventoryPane(bench, actions);
        formPane = new FormPane(bench, form);
        VBox below = new VBox(new FormHeading(bench, actions, background, notices), formPane);
        VBox.setVgrow(below.getChildren().get(1), Priority.ALWAYS);
        left.getItems().addAll(inventory, below);
        left.setOrientation(Orientation.VERTICAL);
        left.setDividerPositions(0.36);
        layers = new LayerPanel(() -> reliefLook, () -> MapKey.show(getScene().getWindow(), this.dress));
        section = new SectionDrawer(bench, hands.draft(), dress);
        map.keepReadoutOff(layers);
        StackPane over = new StackPane(map, layers, notices);
        StackPane.setAlignment(notices, Pos.TOP_CENTER);
        StackPane.setAlignment(layers, Pos.BOTTOM_RIGHT);
        VBox.setVgrow(over, Priority.ALWAYS);
        over.setMinHeight(0);
        VBox middle = new VBox(new MapTools(hands, actions, layers), over, section);
        answers = new AnswerTabs(bench, map, actions, background, dress);
        answers.onSurface(this::showSurface);
        answers.onField(this::openField);
        columns.getItems().addAll(left, middle, answers);
        columns.getStyleClass().add("columns");
        SplitPane.setResizableWithParent(left, false);
        SplitPane.setResizableWithParent(answers, false);
        divide(dress);
        map.widthProperty().addListener((observed, before, now) -> fitOnce());
        map.heightProperty().addListener((observed, before, now) -> fitOnce());
        setCenter(columns);
        setBottom(status);
        bench.troubleChanged().listen(this::tellTrouble);
        bench.answers().working().listen(this::tellWorking);
        bench.calm().listen(this::tellWorking);
        bench.calm().listen(this::followGround);
        readGround();
    }

    /** Reads the ground anew where the plan names another file or reference system. */
    private void followGround() {
        GroundPlan now = bench.document().plan().ground();
        if (groundOf.isPresent() && !(now.elevationFile().equals(groundOf.get().elevationFile())
                && now.referenceSystem().equals(groundOf.get().referenceSystem()))
                || isBeyondGround()) {
            readGround();
        }
    }

    /** Whether something was put where a large elevation file was not read yet. */
    private boolean isBeyondGround() {
        return !bench.isTrying() && !background.isBusy(GROUND_LANE)
                && bench.answers().ground().filter(g -> !g.covers(bench.document().plan())).isPresent();
    }

    private void tellTrouble() {
        bench.trouble().ifPresentOrElse(words -> notices.show("trouble", words, List.of()),
                () -> notices.hide("trouble"));
    }

    private void tellWorking() {
        if (background.isBusy(GROUND_LANE)) {
            return;
        }
        Answers all = bench.answers();
        if (all.step().isPresent()) {
            Background.Step step = all.step().get();
            status.working(step.share(), WORKING + step.words() + all.timeLeft().map(t -> ", " + t).orElse(""),
                    all::stop);
            return;
        }
        status.idle();
        Optional<String> standing = all.standing(bench.plan());
        status.fresh(!all.failures().isEmpty() ? "\u2716 could not be worked out: "
                + String.join(", ", new java.util.TreeSet<>(all.failures().keySet()))
                : standing.map(s -> WORKING + s).orElse("\u2714 all answers are of this plan"));
        if (all.failures().isEmpty()) {
            notices.hide("failure");
        } else {
            String words = all.failures().entrySet().stream().map(e -> e.getKey() + ": " + e.getValue())
                    .collect(java.util.stream.Collectors.joining("; "));
            notices.show("failure", "Not worked out. " + words + ". The plan itself is safe.",
                    List.of(new Notices.Choice("Try again", all::again)));
        }
    }

    private void readGround() {
        groundOf = Optional.of(bench.document().plan().ground());
        notices.hide("ground");
        bench.answers().readingGround();
        status.working(-1, "reading the ground", () -> background.cancel(GROUND_LANE));
        background.start(GROUND_LANE,
                progress -> SiteGround.read(bench.document().plan(), bench.document().file(), progress),
                new Background.Listener<SiteGround>(this::groundRead, failure -> noGround(Plainly.words(failure)),
                        step -> status.working(step.share(), step.words(), () -> background.cancel(GROUND_LANE)),
                        () -> noGround("Reading it was stopped.")));
    }

    /** Without its ground nothing is shown of the plan but its outlines, and another file can be named. */
    private void noGround(String reason) {
        status.idle();
        bench.answers().noGround(reason);
        if (!isFitted) {
            fitAtOnce();
        }
        notices.show("ground", "The ground could not be read; the plan can be edited all the same, but nothing is"
                + " checked. " + reason, List.of(new Notices.Choice("Choose a file\u2026", this::askGround),
                        new Notices.Choice("Try again", this::readGround)));
    }

    private void askGround() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("The elevation file of this plan");
        chooser.getExtensionFilters().addAll(PlanBeginning.ELEVATIONS, PlanBeginning.ALL_FILES);
        chooser.setInitialDirectory(bench.document().file().toAbsolutePath().getParent().toFile());
        Optional.ofNullable(chooser.showOpenDialog(getScene().getWindow()))
                .ifPresentOrElse(file -> takeGround(file.toPath()), () -> noGround("No file was chosen."));
    }

    /** Names another elevation file in the plan, as a step that can be undone, and reads it. */
    void takeGround(Path file) {
        bench.make(new SetValue("ground.elevation_file", "\"" + NewPlan.path(file, bench.document().file())
                .replace("\"", "\\\"") + "\"", "Choose the elevation file"));
    }

    private void groundRead(SiteGround ground) {
        status.idle();
        bench.answers().ground(ground);
        reliefLook = new ReliefLook(reliefLook.isShaded(), reliefLook.hasContours(), reliefLook.hasSlopeBands(),
                reliefLook.isDark(), ReliefLook.intervalFor(ground.grid().lowest(), ground.grid().highest()));
        layers.refresh();
        background.start(RELIEF_LANE, progress -> ReliefData.of(pictured(ground, progress), progress),
                Background.Listener.of(data -> {
                    relief = Optional.of(data);
                    paintRelief();
                }, failure -> bench.tell("The ground could not be painted. " + Plainly.words(failure))));
        fitOnce();
    }

    /** What is painted of a ground: of a file too large to be worked on at once all of it, on wider nodes. */
    private ElevationGrid pictured(SiteGround ground, Progress progress) {
        return ground.file().isPart() ? SiteGround.overview(bench.document().plan(), bench.document().file(), progress)
                : ground.grid();
    }

    /** Shows the ground as it is after a stage of the work; empty for the ground before any work. */
    private void showSurface(Optional<Stage> stage) {
        stageRelief = Optional.empty();
        if (stage.isEmpty()) {
            paintRelief();
            return;
        }
        background.start(RELIEF_LANE, progress -> ReliefData.of(stage.get().surface(), progress),
                Background.Listener.of(data -> {
                    stageRelief = Optional.of(data);
                    paintRelief();
                }, failure -> bench.tell("The stage could not be painted. " + Plainly.words(failure))));
    }

    private void paintRelief() {
        stageRelief.or(() -> relief).ifPresent(data -> background.start(RELIEF_LANE,
                progress -> ReliefPicture.of(data, reliefLook, progress),
                Background.Listener.of(map::show,
                        failure -> bench.tell("The ground could not be painted. " + Plainly.words(failure)))));
    }

    /** Says at what is picked what the keys have done. */
    void say(String words) {
        map.say(words, bench.picked().flatMap(bench::box).map(MapCamera.Box::centre));
    }

    /** Gives the keys to the next part of the window: map, list, form, answers. */
    void focusNext(Node owner) {
        List<Node> parts = List.of(map, inventory, formPane, answers.tabs());
        int now = -1;
        for (Node node = owner; node != null && now < 0; node = node.getParent()) {
            now = parts.indexOf(node);
        }
        for (int step = 1; step <= parts.size(); step++) {
            Node next = parts.get((now + step) % parts.size());
            // A column that is hidden is passed over.
            if (next.getScene() != null) {
                next.requestFocus();
                return;
            }
        }
    }

    /** Opens the field in which a finding is mended. */
    private void openField(MendingField field) {
        if (!hasList()) {
            columns.getItems().add(0, left);
        }
        bench.pick(Optional.of(field.part()));
        reveal(field.path());
    }

    /** Opens a field of the picked thing's form and gives it the keys. */
    void reveal(String path) {
        formPane.reveal(path);
    }

    /** Shows the whole plan once, as soon as both the ground is read and the map has its size. */
    private void fitOnce() {
        if (!isFitted && bench.answers().ground().isPresent()) {
            fitAtOnce();
        }
    }

    /** Larger text needs wider columns beside the map. */
    private void divide(Dress dress) {
        boolean isLarge = dress.scale() > LARGE;
        double forList = isLarge ? 0.28 : 0.21;
        double forAnswers = isLarge ? 0.55 : 0.62;
        if (columns.getItems().size() == 3) {
            columns.setDividerPositions(forList, forAnswers);
        } else if (columns.getItems().contains(left)) {
            columns.setDividerPositions(forList);
        } else if (columns.getItems().contains(answers)) {
            columns.setDividerPositions(forAnswers);
        }
    }

    /** Shows or hides the columns beside the map, so that the map can have their room. */
    void showColumns(boolean hasList, boolean hasAnswers, Dress dress) {
        columns.getItems().removeAll(left, answers);
        if (hasList) {
            columns.getItems().add(0, left);
        }
        if (hasAnswers) {
            columns.getItems().add(answers);
        }
        divide(dress);
        map.requestFocus();
    }

    boolean hasList() {
        return columns.getItems().contains(left);
    }

    boolean hasAnswers() {
        return columns.getItems().contains(answers);
    }

    /** Shows the whole plan without a flight. */
    void fitAtOnce() {
        if (map.getWidth() > 1 && map.getHeight() > 1) {
            bench.box().ifPresent(box -> {
                map.fit(box, PartActions.WHOLE);
                isFitted = true;
            });
        }
    }

    /** Looks at a part of the ground that is not to be changed once the ground is read. */
    void lookAtOnce(MapCamera camera) {
        map.look(camera);
        isFitted = true;
    }

    /** Dresses the pane for another window. */
    void dress(Dress changed) {
        dress = changed;
        divide(dress);
        section.dress(dress);
        map.dress(map.dress().in(dress.isDark(), dress.scale()));
        answers.dress(dress);
        relief(new ReliefLook(reliefLook.isShaded(), reliefLook.hasContours(), reliefLook.hasSlopeBands(),
                dress.isDark(), reliefLook.contourInterval()));
    }

    void relief(ReliefLook look) {
        reliefLook = look;
        layers.refresh();
        paintRelief();
    }

    ReliefLook relief() {
        return reliefLook;
    }

    boolean isGroundShown() {
        return relief.isPresent() && !background.isBusy(RELIEF_LANE);
    }

    Workbench bench() {
        return bench;
    }

    MapPane map() {
        return map;
    }

    MapHands hands() {
        return hands;
    }

    HandoverWork handover() {
        return new HandoverWork(bench, background, notices);
    }

    /** Shows when each step of the work begins and ends, by the calendar. */
    void showCalendar() {
        Optional<Assessment> whole = bench.answers().assessment();
        if (whole.isEmpty()) {
            bench.tell(bench.answers().heading("There is no calendar yet", bench.plan()) + ".");
            return;
        }
        WorkCalendar.of(whole.get()).flatMap(calendar -> whole.get().stages()
                .map(stages -> new CalendarSheets(calendar, stages))).ifPresentOrElse(sheets -> TableWindow.show(
                        getScene().getWindow(), bench.answers().heading("Calendar", bench.plan()), sheets.words(),
                        List.of(sheets.dates(), sheets.nights())),
                () -> bench.tell("There is no calendar: give the day the work begins under Rules, steps in the order"
                        + " of work, and ground with a reference system."));
    }

    /** Shows what was surveyed after steps of the work against what was planned. */
    void showAsBuilt() {
        Optional<Assessment> whole = bench.answers().assessment();
        if (bench.document().plan().orderOfWork().stream().noneMatch(s -> s.asBuilt().isPresent())) {
            bench.tell("Nothing was surveyed yet: open a step of the work and add what was built, with the elevation"
                    + " file of its survey.");
            return;
        } else if (whole.isEmpty()) {
            bench.tell(bench.answers().heading("There is nothing to hold the survey against yet", bench.plan()) + ".");
            return;
        }
        String title = bench.answers().heading("As built", bench.plan());
        background.start("as built", progress -> new AsBuiltSheets(AsBuilt.of(whole.get(), progress),
                whole.get().surveys().hulls()),
                Background.Listener.of(sheets -> TableWindow.show(getScene().getWindow(), title, "What was"
                        + " surveyed after steps of the work, beside the plan.", List.of(sheets.ends(),
                        sheets.volumes(), sheets.covers(), sheets.doses())), failure -> bench.tell("The survey was not"
                        + " compared. " + Plainly.words(failure))));
    }

    LayerPanel layers() {
        return layers;
    }

    PartActions actions() {
        return actions;
    }

    FormModel form() {
        return form;
    }

    Notices notices() {
        return notices;
    }

    AnswerTabs answers() {
        return answers;
    }

    SplitPane columns() {
        return columns;
    }

    Background background() {
        return background;
    }

    /** The middle of the map, for what has no better place. */
    Point middle() {
        return map.camera().centre();
    }

    @Override
    public void close() {
        background.close();
    }
}
