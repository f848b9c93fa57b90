// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.FigureLook;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.MapFigure;
import bermwright.finding.Finding;
import bermwright.foundation.Point;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javafx.stage.Window;

/** The key of the map in a window of its own: everything the map draws, as it draws it, what it is and means. */
final class MapKey {
    private static final double WIDE = 54;
    private static final double HIGH = 30;
    private static final double RIM = 6;
    /** Room for names over the text's size (1). */
    private static final double NAME = 11;
    private static final Part NOBODY = new Part(Part.Kind.PLAN, "");

    private MapKey() {
    }

    static void show(Window owner, Dress dress) {
        GridPane grid = new GridPane();
        grid.getStyleClass().addAll("editor", dress.isDark() ? "dark" : "light", "map-key");
        grid.setStyle("-fx-font-size: " + dress.textSize() + "px;");
        int row = 0;
        for (Finding.Level level : Finding.Level.values()) {
            add(grid, row++, FindingBadge.node(level, "S1", dress.isDark(), dress.textSize()),
                    new String[] {"Finding: " + level.word().toLowerCase(Locale.ROOT), switch (level) {
                        case REFUSE -> "The plan must not be carried out so.";
                        case WARN -> "Somebody must look and decide.";
                        case NOTE -> "Worth knowing.";
                    }});
        }
        for (FigureLook look : FigureLook.values()) {
            add(grid, row++, sample(look, dress), new String[] {look.word(), look.rule()});
        }
        ScrollPane scroll = new ScrollPane(grid);
        scroll.setFitToWidth(true);
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.setTitle("Key of the map");
        Scene scene = new Scene(scroll, 560 * dress.scale(), Math.min(760, owner.getHeight()));
        scene.getStylesheets().addAll(owner.getScene().getStylesheets());
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                stage.close();
            }
        });
        stage.setScene(scene);
        stage.show();
    }

    private static void add(GridPane grid, int row, Node sample, String[] words) {
        Label name = new Label(words[0]);
        name.getStyleClass().add("finding-title");
        name.setMinWidth(NAME * name.getFont().getSize());
        Label rule = new Label(words[1]);
        for (Label label : List.of(name, rule)) {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
        }
        grid.addRow(row, sample, name, rule);
    }

    private static Node sample(FigureLook look, Dress dress) {
        Canvas canvas = new Canvas(WIDE, HIGH);
        GraphicsContext g = canvas.getGraphicsContext2D();
        MapColours style = MapColours.of(dress.isDark());
        g.setFill(style.ground());
        g.fillRect(0, 0, WIDE, HIGH);
        MapCamera camera = new MapCamera(new Point(WIDE / 2, HIGH / 2), 1, WIDE, HIGH);
        new FigurePainter(style, dress.textSize()).paint(g, camera, List.of(figure(look)), List.of());
        return canvas;
    }

    private static MapFigure figure(FigureLook look) {
        if (look.isMark()) {
            return MapFigure.mark(look, NOBODY, "", new Point(WIDE / 2, HIGH / 2));
        } else if (look == FigureLook.HAUL_WAY || look == FigureLook.FOOT_WAY) {
            return MapFigure.line(look, NOBODY, "", List.of(new Point(RIM, RIM), new Point(WIDE - RIM, HIGH - RIM)));
        }
        return MapFigure.area(look, NOBODY, "", List.of(new Point(RIM, RIM), new Point(WIDE - RIM, RIM),
                new Point(WIDE - RIM, HIGH - RIM), new Point(RIM, HIGH - RIM)));
    }
}
