// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.ReliefLook;
import bermwright.editor.model.Workbench;
import bermwright.report.HandoverPart;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;

/** The menus; everything the editor does can be reached from here by key. */
final class EditorMenus {
    private final EditorWindow window;
    private final Menu recent = new Menu("Open _recent");
    private final MenuItem undo = new MenuItem("Undo");
    private final MenuItem redo = new MenuItem("Redo");
    private final MenuBar bar = new MenuBar();

    EditorMenus(EditorWindow window) {
        this.window = window;
        bar.setId("menus");
        bar.getMenus().addAll(file(), edit(), add(), look(), answers());
        refreshRecent();
        undo.setDisable(true);
        redo.setDisable(true);
    }

    MenuBar bar() {
        return bar;
    }

    /** Whether a menu is open or its heading is chosen by key. */
    boolean isInUse() {
        return bar.getMenus().stream().anyMatch(Menu::isShowing)
                || bar.lookupAll(".menu-button").stream().anyMatch(Node::isFocused);
    }

    private Menu file() {
        return new Menu("_Plan", null,
                item("_New from an elevation file\u2026", "Shortcut+N", () -> window.beginning().ask()),
                item("_Open\u2026", "Shortcut+O", window::askOpen), recent,
                item("_Save", "Shortcut+S", window::save), item("Save _as\u2026", "Shortcut+Shift+S", window::saveAs),
                new SeparatorMenuItem(),
                handOver(), item("S_urvey for places\u2026", "Shortcut+Shift+V", new WindowAsks(window)::survey),
                item("Com_pare with\u2026", "Shortcut+M", window::askCompare),
                item("Map as a pic_ture\u2026", "Shortcut+Shift+E", window::askPicture),
                item("P_rint the map\u2026", "Shortcut+P", window::print), new SeparatorMenuItem(),
                item("_Close", "Shortcut+Q", window::close));
    }

    private Menu handOver() {
        return new Menu("_Hand over", null,
                item("_Reports\u2026", "Shortcut+R", () -> new WindowAsks(window).handOver(HandoverPart.REPORTS)),
                item("_Drawings to scale\u2026", "Shortcut+Shift+R",
                        () -> new WindowAsks(window).handOver(HandoverPart.DRAWINGS)),
                item("_Exchange files\u2026", "Shortcut+Shift+X",
                        () -> new WindowAsks(window).handOver(HandoverPart.EXCHANGE)));
    }

    private Menu edit() {
        undo.setAccelerator(KeyCombination.valueOf("Shortcut+Z"));
        undo.setOnAction(event -> withBench(Workbench::undo));
        undo.setId("undo");
        redo.setAccelerator(KeyCombination.valueOf("Shortcut+Shift+Z"));
        redo.setOnAction(event -> withBench(Workbench::redo));
        redo.setId("redo");
        return new Menu("_Edit", null, undo, redo, new SeparatorMenuItem(),
                item("_Copy what is picked", "Shortcut+D", () -> withSite(s -> s.actions().copy())),
                item("_Remove what is picked", "Shortcut+Delete", () -> withSite(s -> s.actions().remove())),
                item("Align _hatches\u2026", "Shortcut+H", () -> withSite(s -> s.actions().align())),
                new SeparatorMenuItem(),
                item("Pick the _next", "Shortcut+Down", () -> withBench(b -> b.pickNext(1))),
                item("Pick the one _before", "Shortcut+Up", () -> withBench(b -> b.pickNext(-1))));
    }

    private Menu add() {
        Menu menu = new Menu("_Add");
        for (Part.Kind kind : Part.Kind.values()) {
            if (!kind.isSingle()) {
                menu.getItems().add(item(kind.word(), "", () -> withSite(s -> s.actions().add(kind))));
            }
        }
        return menu;
    }

    private Menu look() {
        Menu menu = new Menu("_View", null,
                item("Whole _plan", "Shortcut+0", () -> withSite(s -> s.actions().fit())),
                item("What is p_icked", "Shortcut+E", () -> withSite(s -> s.bench().picked()
                        .ifPresent(s.actions()::flyTo))),
                item("Clos_er", "Shortcut+Plus", () -> zoom(1.4)),
                item("Farther", "Shortcut+Minus", () -> zoom(1 / 1.4)),
                new SeparatorMenuItem());
        menu.getItems().add(check("_Shaded relief", "Shortcut+1", shown("shade"), on -> relief(r -> new ReliefLook(on,
                r.hasContours(), r.hasSlopeBands(), r.isDark(), r.contourInterval()))));
        menu.getItems().add(check("_Contours", "Shortcut+2", shown("contours"),
                on -> relief(r -> new ReliefLook(r.isShaded(), on,
                r.hasSlopeBands(), r.isDark(), r.contourInterval()))));
        menu.getItems().add(check("Slope _bands", "Shortcut+3", window.settings().flag("layer.slopes", false),
                on -> relief(r -> new ReliefLook(r.isShaded(),
                r.hasContours(), on, r.isDark(), r.contourInterval()))));
        menu.getItems().add(check("_Gear and its zones", "Shortcut+4", shown("gear"), on -> withSite(s -> dress(s,
                l -> new MapLook(l.isDark(), l.textSize(), on, l.hasSweeps(), l.hasCover(), l.hasMarks())))));
        menu.getItems().add(check("Lowering s_weeps", "Shortcut+5", shown("sweeps"), on -> withSite(s -> dress(s,
                l -> new MapLook(l.isDark(), l.textSize(), l.hasGear(), on, l.hasCover(), l.hasMarks())))));
        menu.getItems().add(check("Cover _toes", "Shortcut+6", shown("toes"), on -> withSite(s -> dress(s,
                l -> new MapLook(l.isDark(), l.textSize(), l.hasGear(), l.hasSweeps(), on, l.hasMarks())))));
        menu.getItems().add(check("_Findings on the map", "Shortcut+7", shown("findings"),
                on -> withSite(s -> dress(s, l -> new MapLook(l.isDark(), l.textSize(), l.hasGear(), l.hasSweeps(),
                        l.hasCover(), on)))));
        menu.getItems().add(new SeparatorMenuItem());
        menu.getItems().add(check("_List and form", "Shortcut+8", window.settings().flag(RememberedView.LIST,
                true), on -> withSite(s -> s.showColumns(on, s.hasAnswers(), window.dress()))));
        menu.getItems().add(check("Ans_wers", "Shortcut+9", window.settings().flag(RememberedView.ANSWERS, true),
                on -> withSite(s -> s.showColumns(s.hasList(), on, window.dress()))));
        menu.getItems().add(check("_Dark window", "Shortcut+Shift+D", window.dress().isDark(),
                on -> window.dress(on, window.dress().scale())));
        menu.getItems().add(item("Larger te_xt", "F8", () -> window.dress(window.dress().isDark(),
                window.dress().scale() + 0.25)));
        menu.getItems().add(item("S_maller text", "F7", () -> window.dress(window.dress().isDark(),
                window.dress().scale() - 0.25)));
        return menu;
    }

    private boolean shown(String layer) {
        return window.settings().flag("layer." + layer, true);
    }

    private Menu answers() {
        Menu menu = new Menu("An_swers");
        String[] headings = {"Findings", "Lowering", "Cover", "Dose", "Soil and work", "Compare"};
        for (int i = 0; i < headings.length; i++) {
            String heading = headings[i];
            menu.getItems().add(item(heading, "Alt+" + (i + 1), () -> withSite(s -> s.answers().show(heading))));
        }
        menu.getItems().addAll(new SeparatorMenuItem(),
                item("Cale_ndar of the work\u2026", "Shortcut+T", () -> withSite(SitePane::showCalendar)),
                item("As _built\u2026", "Shortcut+B", () -> withSite(SitePane::showAsBuilt)),
                item("_Work out again", "F5", () -> withBench(b -> b.answers().again())),
                item("_Arrange the hulls\u2026", "Shortcut+Shift+A", () -> withBench(b -> SearchWindow.arrange(
                        window.stage(), b))),
                item("What is in _doubt\u2026", "Shortcut+Shift+U", () -> withBench(b -> SearchWindow.doubts(
                        window.stage(), b))),
                item("_Guided path", "F1", () -> withSite(s -> GuideBar.start(s, window.settings()))),
                item("Key of the _map", "F2", () -> MapKey.show(window.stage(), window.dress())),
                item("_Keys", "Shortcut+K", new WindowAsks(window)::showKeys));
        return menu;
    }

    private void dress(SitePane pane, java.util.function.UnaryOperator<MapLook> change) {
        pane.map().dress(change.apply(pane.map().dress()));
    }

    private void relief(java.util.function.UnaryOperator<ReliefLook> change) {
        withSite(pane -> pane.relief(change.apply(pane.relief())));
    }

    private void zoom(double factor) {
        withSite(pane -> pane.map().fly(pane.map().camera().zoomed(factor, pane.map().camera().width() / 2,
                pane.map().camera().height() / 2)));
    }

    private void withSite(Consumer<SitePane> work) {
        window.site().ifPresent(work);
    }

    private void withBench(Consumer<Workbench> work) {
        withSite(pane -> work.accept(pane.bench()));
    }

    private static MenuItem item(String words, String key, Runnable action) {
        MenuItem item = new MenuItem(words);
        item.setMnemonicParsing(true);
        if (!key.isEmpty()) {
            item.setAccelerator(KeyCombination.valueOf(key));
        }
        item.setOnAction(event -> action.run());
        return item;
    }

    private static CheckMenuItem check(String words, String key, boolean on, Consumer<Boolean> action) {
        CheckMenuItem item = new CheckMenuItem(words);
        item.setId(key);
        item.setSelected(on);
        item.setAccelerator(KeyCombination.valueOf(key));
        item.setOnAction(event -> action.accept(item.isSelected()));
        return item;
    }

    /** Keeps the names behind undo and redo up to date with a document. */
    void follow(SitePane pane) {
        Runnable refresh = () -> {
            var history = pane.bench().document().history();
            undo.setText("Undo" + history.undoWords().map(w -> ": " + w).orElse(""));
            undo.setDisable(history.undoWords().isEmpty());
            redo.setText("Redo" + history.redoWords().map(w -> ": " + w).orElse(""));
            redo.setDisable(history.redoWords().isEmpty());
        };
        pane.bench().calm().listen(refresh);
        refresh.run();
        pane.layers().follow(bar.getMenus().stream().flatMap(m -> m.getItems().stream())
                .filter(CheckMenuItem.class::isInstance).map(CheckMenuItem.class::cast)
                .filter(item -> item.getId() != null && item.getId().matches("Shortcut\\+[1-7]")).toList());
    }

    void refreshRecent() {
        recent.getItems().clear();
        for (Path file : window.settings().recentFiles()) {
            MenuItem item = new MenuItem(file.toString());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> window.open(file));
            recent.getItems().add(item);
        }
        recent.setDisable(recent.getItems().isEmpty());
    }
}
