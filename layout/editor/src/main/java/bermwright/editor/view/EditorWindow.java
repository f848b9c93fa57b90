// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.EditJournal;
import bermwright.editor.model.NewPlan;
import bermwright.editor.model.Plainly;
import bermwright.editor.model.PlanDocument;
import bermwright.editor.model.Settings;
import bermwright.foundation.InputException;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import javafx.util.Duration;

/** The editor's window: opens and saves plans, remembers itself, and asks before work would be lost. */
public final class EditorWindow {
    private static final double WIDTH = 1400;
    private static final double HEIGHT = 900;
    /** Least width and height at which list, map and answers can all be used (pixels). */
    private static final double LEAST_WIDTH = 800;
    private static final double LEAST_HEIGHT = 560;
    static final FileChooser.ExtensionFilter PLANS =
            new FileChooser.ExtensionFilter("Site plans", "*.json");

    private final Stage stage;
    private final Settings settings;
    private final BorderPane root = new BorderPane();
    private final EditorMenus menus;
    private final Notices welcome = new Notices();
    private final PlanBeginning beginning = new PlanBeginning(this);
    private Optional<SitePane> site = Optional.empty();
    private Dress dress;
    private Optional<String> seenOutside = Optional.empty();

    /**
     * A window on a stage.
     *
     * @param stage    the stage
     * @param settings what is remembered
     */
    public EditorWindow(Stage stage, Settings settings) {
        this.stage = stage;
        this.settings = settings;
        this.dress = new Dress(settings.flag("dark", false), clampScale(settings.number("text", 1)));
        this.menus = new EditorMenus(this);
        Scene scene = new Scene(root, settings.number("width", WIDTH), settings.number("height", HEIGHT));
        String sheet = Objects.requireNonNull(EditorWindow.class.getResource("editor.css"), "editor.css")
                .toExternalForm();
        scene.getStylesheets().add(sheet);
        root.setTop(menus.bar());
        root.setCenter(new StackPane(new WelcomePane(this), welcome));
        StackPane.setAlignment(welcome, Pos.TOP_CENTER);
        stage.setMinWidth(LEAST_WIDTH);
        stage.setMinHeight(LEAST_HEIGHT);
        scene.setOnDragOver(this::dragOver);
        scene.setOnDragDropped(this::dropped);
        EditorKeys.install(scene, this);
        stage.setScene(scene);
        placeStage();
        stage.setOnCloseRequest(this::closing);
        Timeline watch = new Timeline(new KeyFrame(Duration.seconds(2), event -> lookOutside()));
        watch.setCycleCount(Animation.INDEFINITE);
        watch.play();
        dressUp();
        title();
    }

    private static double clampScale(double scale) {
        return Math.max(1, Math.min(2, scale));
    }

    private void placeStage() {
        double x = settings.number("x", Double.NaN);
        double y = settings.number("y", Double.NaN);
        if (!Double.isNaN(x) && !Double.isNaN(y) && x > -200 && y > -20 && x < 6000 && y < 4000) {
            stage.setX(x);
            stage.setY(y);
        }
        stage.setMaximized(settings.flag("maximized", false));
    }

    /**
     * Opens a plan in this window.
     *
     * @param file the plan
     * @return true where it was opened
     */
    public boolean open(Path file) {
        try {
            // Read before the plan in the window is left, and once more afterwards: leaving may save to the same file.
            PlanFiles.read(file);
            return mayLeave() && openNow(file);
        } catch (InputException refused) {
            report("This plan could not be opened", refused.getMessage());
            return false;
        }
    }

    boolean openNow(Path file) {
        PlanDocument document = PlanDocument.open(file);
        site.ifPresent(before -> {
            RememberedView.keep(before, settings);
            before.close();
        });
        show(document);
        settings.opened(document.file());
        settings.keep();
        menus.refreshRecent();
        askAboutJournal(document);
        return true;
    }

    /**
     * Takes a file that was dropped on the window: a plan is opened, an elevation file begins a new plan beside it.
     *
     * @param file the file
     * @return true where it was taken up
     */
    public boolean take(Path file) {
        if (NewPlan.isPlan(file)) {
            return open(file);
        }
        beginning.begin(file, NewPlan.beside(file));
        return true;
    }

    private void show(PlanDocument document) {
        SitePane pane = new SitePane(document, dress);
        site = Optional.of(pane);
        RememberedView.restore(pane, settings, dress);
        seenOutside = Optional.empty();
        root.setCenter(pane);
        pane.bench().calm().listen(this::title);
        menus.follow(pane);
        title();
        pane.map().requestFocus();
    }

    private void askAboutJournal(PlanDocument document) {
        if (EditJournal.isInUse(document.file())) {
            notices().show("journal", "This plan is being edited in another window. Edits made here are not kept safe"
                    + " against a crash, and whoever saves last wins.", List.of());
            return;
        }
        document.leftBehind().ifPresent(content -> {
            if (document.isOutdated(content)) {
                setAside(document).ifPresent(aside -> notices().show("journal", "Edits that were never saved are older"
                        + " than this file. They were set aside in " + aside.getFileName() + ".", List.of()));
                return;
            }
            String changed = document.fits(content) ? ""
                    : " The plan file was changed since; taking the edits up puts the plan as it was in the window.";
            notices().show("journal", "Editing of this plan was cut off with " + content.steps().size()
                    + (content.steps().size() == 1 ? " step" : " steps") + " not saved, the last one \u201c"
                    + content.steps().get(content.steps().size() - 1).words() + "\u201d." + changed,
                    List.of(new Notices.Choice("Take them up", () -> recover(document, content)),
                            new Notices.Choice("Set them aside", () -> setAside(document))));
        });
    }

    private void recover(PlanDocument document, EditJournal.Content content) {
        try {
            int steps = document.recover(content);
            site.ifPresent(pane -> pane.bench().planChanged());
            notices().show("journal", steps + " steps are back. Nothing is saved yet; each step can be undone.",
                    List.of());
        } catch (InputException refused) {
            report("The edits could not be taken up", refused.getMessage());
        }
    }

    private Optional<Path> setAside(PlanDocument document) {
        try {
            return Optional.of(document.setAside());
        } catch (IOException stays) {
            report("The journal could not be set aside", Plainly.words(stays));
            return Optional.empty();
        }
    }

    private void lookOutside() {
        site.map(SitePane::bench).ifPresent(bench -> bench.document().journalTrouble()
                .filter(words -> bench.trouble().isEmpty()).ifPresent(bench::tell));
        site.ifPresent(pane -> pane.bench().document().changedOutside()
                .filter(text -> seenOutside.filter(text::equals).isEmpty()).ifPresent(text -> {
                    seenOutside = Optional.of(text);
                    askWhose(pane, text, " was changed by another program. Taking the file's plan can be undone.",
                            new Notices.Choice("Keep mine", () -> keepMine(pane, text)));
                }));
    }

    private void askWhose(SitePane pane, String text, String words, Notices.Choice mine) {
        notices().show("outside", pane.bench().document().file().getFileName() + words,
                List.of(new Notices.Choice("Take the file's", () -> takeTheirs(pane, text)), mine));
    }

    private static void keepMine(SitePane pane, String text) {
        pane.bench().document().keepMine(text);
        pane.bench().planChanged();
    }

    private void takeTheirs(SitePane pane, String text) {
        try {
            pane.bench().document().takeTheirs(text);
            pane.bench().planChanged();
        } catch (InputException refused) {
            report("The changed file is not a plan; your work stays as it is", refused.getMessage());
        }
    }

    /**
     * Saves the plan; asks first where another program changed the file.
     *
     * @return true where it was saved
     */
    public boolean save() {
        return site.map(pane -> {
            AtomicReference<Optional<String>> outside = new AtomicReference<>(Optional.empty());
            boolean isWritten = write(() -> outside.set(pane.bench().document().save()), pane);
            outside.get().ifPresent(text -> askWhose(pane, text, " was changed by another program since you opened it."
                    + " Nothing is saved yet. Taking the file's plan can be undone; saving yours replaces theirs.",
                    new Notices.Choice("Save mine over it", () -> {
                        keepMine(pane, text);
                        save();
                    })));
            return isWritten && outside.get().isEmpty();
        }).orElse(false);
    }

    private boolean write(Runnable work, SitePane pane) {
        try {
            work.run();
            seenOutside = Optional.empty();
            pane.bench().planChanged();
            return true;
        } catch (InputException refused) {
            report("The plan was not saved; your work is still here", refused.getMessage());
            return false;
        }
    }

    /** Asks for a file and saves the plan there. */
    void saveAs() {
        site.ifPresent(pane -> {
            FileChooser chooser = chooser("Save the plan as");
            chooser.setInitialFileName(pane.bench().document().file().getFileName().toString());
            Optional.ofNullable(chooser.showSaveDialog(stage)).ifPresent(file -> saveAs(file.toPath()));
        });
    }

    /**
     * Saves the plan under another name.
     *
     * @param file the file
     */
    public void saveAs(Path file) {
        site.ifPresent(pane -> {
            if (write(() -> pane.bench().document().saveAs(file), pane)) {
                settings.opened(file);
                settings.keep();
                menus.refreshRecent();
            }
        });
    }

    /** Asks for a plan and opens it. */
    void askOpen() {
        Optional.ofNullable(chooser("Open a plan").showOpenDialog(stage)).ifPresent(file -> open(file.toPath()));
    }

    private FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters().add(PLANS);
        site.map(pane -> pane.bench().document().file().getParent().toFile())
                .filter(folder -> Files.isDirectory(folder.toPath())).ifPresent(chooser::setInitialDirectory);
        return chooser;
    }

    /** Asks for a plan and compares with it. */
    void askCompare() {
        site.ifPresent(pane -> Optional.ofNullable(chooser("Compare with").showOpenDialog(stage))
                .ifPresent(file -> pane.answers().compareWith(file.toPath())));
    }

    /** Asks for a file and writes the map there. */
    void askPicture() {
        site.ifPresent(pane -> {
            FileChooser chooser = new FileChooser();
            chooser.setTitle("Map as a picture");
            chooser.setInitialFileName("map.png");
            chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Pictures", "*.png"));
            Optional.ofNullable(chooser.showSaveDialog(stage)).ifPresent(file -> writePicture(file.toPath()));
        });
    }

    /**
     * Writes the map as a picture.
     *
     * @param file the file
     */
    public void writePicture(Path file) {
        site.ifPresent(pane -> {
            try {
                MapExport.write(pane.map(), file);
                notices().show("picture", "The map was written to " + file + ".", List.of());
            } catch (IOException refused) {
                report("The picture was not written", Plainly.words(refused));
            }
        });
    }

    /** Prints the map. */
    void print() {
        site.ifPresent(pane -> {
            String trouble = MapExport.print(pane.map());
            if (!trouble.isEmpty()) {
                report("The map was not printed", trouble);
            }
        });
    }

    /** Starts the guided path. */
    public void guide() {
        site.ifPresent(pane -> GuideBar.start(pane, settings));
    }

    private void dragOver(DragEvent event) {
        if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
        }
        event.consume();
    }

    private void dropped(DragEvent event) {
        boolean opened = event.getDragboard().hasFiles()
                && take(event.getDragboard().getFiles().get(0).toPath());
        event.setDropCompleted(opened);
        event.consume();
    }

    boolean mayLeave() {
        boolean isUnsaved = site.filter(pane -> pane.bench().document().isUnsaved()).isPresent();
        if (!isUnsaved) {
            site.ifPresent(pane -> pane.bench().document().close());
            return true;
        }
        ButtonType save = new ButtonType("Save", ButtonBar.ButtonData.YES);
        ButtonType drop = new ButtonType("Do not save", ButtonBar.ButtonData.NO);
        Alert alert = new Alert(Alert.AlertType.CONFIRMATION, "The plan has edits that are not saved.", save, drop,
                ButtonType.CANCEL);
        alert.setHeaderText("Save the plan first?");
        Dialogs.dress(alert, stage);
        ButtonType answer = alert.showAndWait().orElse(ButtonType.CANCEL);
        if (answer == save) {
            return save();
        }
        if (answer == drop) {
            site.ifPresent(pane -> pane.bench().document().close());
        }
        return answer == drop;
    }

    private void closing(WindowEvent event) {
        if (!mayLeave()) {
            event.consume();
            return;
        }
        remember();
        beginning.close();
        site.ifPresent(SitePane::close);
    }

    private void remember() {
        settings.put("maximized", stage.isMaximized());
        if (!stage.isMaximized()) {
            settings.put("x", stage.getX());
            settings.put("y", stage.getY());
            settings.put("width", stage.getScene().getWidth());
            settings.put("height", stage.getScene().getHeight());
        }
        site.ifPresent(pane -> RememberedView.keep(pane, settings));
        settings.put("dark", dress.isDark());
        settings.put("text", dress.scale());
        settings.keep();
    }

    /**
     * Says that the editor itself made a mistake; the plan, its steps and its journal are as they were.
     *
     * @param mistake what was thrown
     */
    public void mistake(Throwable mistake) {
        mistake.printStackTrace();
        Path log = settings.logMistake(mistake);
        notices().show("mistake", "The editor made a mistake; the plan and its steps are kept. "
                + Plainly.words(mistake) + " What is needed to repeat it stands in " + log + ".", List.of());
    }

    /**
     * Says what went wrong, in a window of its own.
     *
     * @param event  what happened
     * @param where what is known of it
     */
    void report(String event, String where) {
        Alert alert = new Alert(Alert.AlertType.ERROR, where, ButtonType.CLOSE);
        alert.setHeaderText(event);
        alert.getDialogPane().setId("trouble-dialog");
        Dialogs.dress(alert, stage);
        alert.show();
    }

    /**
     * Dresses the window.
     *
     * @param isDark whether dark
     * @param scale  text size over the usual (1), 1 to 2
     */
    void dress(boolean isDark, double scale) {
        dress = new Dress(isDark, clampScale(scale));
        dressUp();
        site.ifPresent(pane -> pane.dress(dress));
    }

    private void dressUp() {
        root.getStyleClass().removeAll("dark", "light");
        root.getStyleClass().addAll("editor", dress.isDark() ? "dark" : "light");
        root.setStyle("-fx-font-size: " + dress.textSize() + "px;");
    }

    Dress dress() {
        return dress;
    }

    /** Whether the menu bar has the keys: a menu is open or its heading is chosen. */
    boolean isInMenus() {
        return menus.isInUse();
    }

    private void title() {
        stage.setTitle(site.map(pane -> {
            PlanDocument document = pane.bench().document();
            String name = document.plan().title().isBlank() ? document.file().getFileName().toString()
                    : document.plan().title();
            return (document.isUnsaved() ? "\u2022 " : "") + name + " \u2013 Bermwright";
        }).orElse("Bermwright"));
    }

    Notices notices() {
        return site.map(SitePane::notices).orElse(welcome);
    }

    PlanBeginning beginning() {
        return beginning;
    }

    Optional<SitePane> site() {
        return site;
    }

    Settings settings() {
        return settings;
    }

    Stage stage() {
        return stage;
    }

    /** Closes the window after asking about unsaved edits. */
    public void close() {
        WindowEvent request = new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST);
        stage.fireEvent(request);
    }
}
