// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.PartOutline;
import bermwright.editor.model.Inventory;
import bermwright.editor.model.MapTool;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Keys on the map: arrows move what is picked or the map, brackets turn, plus and minus zoom. */
final class EditorKeys {
    /** What the keys do, for people. */
    static final String WORDS = """
            Arrows: move what is picked by 1 m (with Shift 0.1 m); with nothing picked, move the map
            Alt + arrows, dragging with the middle button or with the space bar held: move the map
            [ and ] or Q and W: turn the picked hull by 1\u00b0 (with Shift 0.1\u00b0)
            + and \u2212: closer and farther;  Home: whole plan;  Enter: what is picked
            Delete: remove what is picked;  Escape: give up what the hand holds
            Ctrl + Down and Ctrl + Up: pick the next thing and the one before
            Ctrl + click: pick several;  Shift + drag: pick what lies in a frame;  Ctrl + A on the map: pick all
            Ctrl + C and Ctrl + V on the map: copy what is picked and put it at the pointer
            Drawing: Enter ends, Backspace takes a corner back, Escape lays the tool down
            Double click on a corner takes it out; drag the small cross on an edge to make one
            Alt while dragging: no snapping
            F6: from map to list, form and answers and on;  Alt + 1 to 6: answers;  F1: guided path;  F2: key of the map
            F7 and F8: smaller and larger text;  Ctrl + + and Ctrl + \u2212: closer and farther from anywhere
            Ctrl + 8 and Ctrl + 9: hide or show list and form, and the answers;  a click on a drawing shows it large""";
    private static final double NUDGE = 1;
    private static final double FINE_NUDGE = 0.1;
    private static final double TURN = Math.toRadians(1);
    private static final double FINE_TURN = Math.toRadians(0.1);
    private static final double PAN = 80;

    private EditorKeys() {
    }

    /** Keys of the whole window; an open menu keeps its own. */
    static void install(Scene scene, EditorWindow window) {
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> window.site().ifPresent(pane -> {
            if (event.getCode() == KeyCode.F6) {
                pane.focusNext(scene.getFocusOwner());
                event.consume();
            }
            // On keyboards that have the plus over the equals sign the menu's own key never comes.
            if (event.isShortcutDown() && zoomed(pane, event.getCode())) {
                event.consume();
            }
            if (event.getCode() == KeyCode.ESCAPE && !(scene.getFocusOwner() instanceof TextInputControl)
                    && !window.isInMenus()) {
                pane.hands().draft().take(MapTool.PICK);
                pane.hands().giveUp();
                pane.bench().clearTrouble();
                pane.map().requestFocus();
            }
        }));
        // After all filters, so that what the menu bar takes for itself never reaches the map.
        scene.addEventHandler(KeyEvent.KEY_PRESSED, event -> window.site().ifPresent(pane -> {
            if (scene.getFocusOwner() == pane.map() && !window.isInMenus()
                    && (event.isShortcutDown() ? clipboard(pane, event) : handled(pane, event))) {
                event.consume();
            }
        }));
    }

    private static boolean zoomed(SitePane pane, KeyCode code) {
        boolean isCloser = code == KeyCode.EQUALS || code == KeyCode.PLUS || code == KeyCode.ADD;
        boolean isFarther = code == KeyCode.MINUS || code == KeyCode.SUBTRACT;
        if (isCloser || isFarther) {
            zoom(pane, isCloser ? 1.4 : 1 / 1.4);
        }
        return isCloser || isFarther;
    }

    private static boolean clipboard(SitePane pane, KeyEvent event) {
        switch (event.getCode()) {
            case C -> pane.actions().remember();
            case V -> pane.actions().paste();
            case A -> pane.bench().pickAll(Inventory.parts(pane.bench().plan()).stream()
                    .filter(p -> !PartOutline.corners(pane.bench().plan(), p).isEmpty()).toList());
            default -> {
                return false;
            }
        }
        return true;
    }

    private static boolean handled(SitePane pane, KeyEvent event) {
        if (pane.hands().draft().isActive()) {
            if (event.getCode() == KeyCode.ENTER) {
                pane.hands().draft().finish();
                return true;
            } else if (event.getCode() == KeyCode.BACK_SPACE) {
                pane.hands().draft().back();
                return true;
            }
        }
        boolean fine = event.isShiftDown();
        double turn = fine ? FINE_TURN : TURN;
        switch (event.getCode()) {
            case LEFT -> move(pane, event, -1, 0);
            case RIGHT -> move(pane, event, 1, 0);
            case UP -> move(pane, event, 0, 1);
            case DOWN -> move(pane, event, 0, -1);
            case OPEN_BRACKET, Q -> turn(pane, -turn);
            case CLOSE_BRACKET, W -> turn(pane, turn);
            case DELETE -> pane.actions().remove();
            case PLUS, EQUALS, ADD -> zoom(pane, 1.25);
            case MINUS, SUBTRACT -> zoom(pane, 1 / 1.25);
            case HOME -> pane.actions().fit();
            case ENTER -> pane.bench().picked().ifPresent(pane.actions()::flyTo);
            default -> {
                return false;
            }
        }
        return true;
    }

    private static void move(SitePane pane, KeyEvent event, int east, int north) {
        if (event.isAltDown() || pane.bench().picked().isEmpty()) {
            pane.map().look(pane.map().camera().panned(-PAN * east, PAN * north));
        } else {
            double step = event.isShiftDown() ? FINE_NUDGE : NUDGE;
            pane.hands().nudge(step * east, step * north);
            pane.hands().nudged().ifPresent(pane::say);
        }
    }

    private static void turn(SitePane pane, double turn) {
        pane.hands().nudgeTurn(turn);
        pane.hands().nudged().ifPresent(pane::say);
    }

    private static void zoom(SitePane pane, double factor) {
        var camera = pane.map().camera();
        pane.map().look(camera.zoomed(factor, camera.width() / 2, camera.height() / 2));
    }
}
