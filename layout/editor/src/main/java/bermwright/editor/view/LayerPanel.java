// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.ReliefLook;
import bermwright.editor.model.SlopeBand;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** What the map shows, each layer with its switch, and what slope bands and contour lines mean. */
final class LayerPanel extends VBox {
    private static final int WIDE = 34;
    private static final int HIGH = 16;

    private final Supplier<ReliefLook> look;
    private final VBox switches = new VBox(2);
    private final VBox legend = new VBox(4);

    LayerPanel(Supplier<ReliefLook> look, Runnable key) {
        this.look = look;
        setId("layers");
        getStyleClass().add("layer-panel");
        setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
        Label title = new Label("Layers");
        title.getStyleClass().add("heading");
        Button whole = new Button("Key of the map");
        whole.setOnAction(event -> key.run());
        getChildren().addAll(title, switches, legend, whole);
        setVisible(false);
        managedProperty().bind(visibleProperty());
        visibleProperty().addListener((observed, before, now) -> refresh());
    }

    /** Takes the switches of the menu: each is one switch at two places. */
    void follow(List<CheckMenuItem> items) {
        switches.getChildren().clear();
        for (CheckMenuItem item : items) {
            CheckBox box = new CheckBox(item.getText().replace("_", ""));
            box.selectedProperty().bindBidirectional(item.selectedProperty());
            box.setOnAction(event -> {
                item.getOnAction().handle(new ActionEvent(item, item));
                refresh();
            });
            switches.getChildren().add(box);
        }
    }

    /** Says what the ground's colours and lines mean now. */
    void refresh() {
        ReliefLook now = look.get();
        legend.getChildren().clear();
        if (now.hasContours()) {
            Label contours = new Label(String.format(Locale.ROOT, "Contours every %s m; every fifth is thicker",
                    now.contourInterval() < 1 ? String.valueOf(now.contourInterval())
                            : String.format(Locale.ROOT, "%.0f", now.contourInterval())));
            contours.setId("contour-legend");
            legend.getChildren().add(contours);
        }
        if (now.hasSlopeBands()) {
            GridPane bands = new GridPane();
            bands.setId("slope-legend");
            bands.setHgap(8);
            bands.setVgap(3);
            SlopeBand[] all = SlopeBand.values();
            for (int i = 0; i < all.length; i++) {
                bands.addRow(i, sample(all[i]), new Label(i + 1 < all.length
                        ? String.format(Locale.ROOT, "slope %.0f\u00b0 to %.0f\u00b0", all[i].fromDeg(),
                                all[i + 1].fromDeg())
                        : String.format(Locale.ROOT, "slope %.0f\u00b0 and more", all[i].fromDeg())));
            }
            legend.getChildren().add(bands);
        }
    }

    /** A band as it looks on bright ground, with its pattern, so that it is known without its colour. */
    private static Node sample(SlopeBand band) {
        WritableImage image = new WritableImage(WIDE, HIGH);
        for (int y = 0; y < HIGH; y++) {
            for (int x = 0; x < WIDE; x++) {
                boolean isEdge = x == 0 || y == 0 || x == WIDE - 1 || y == HIGH - 1;
                image.getPixelWriter().setArgb(x, y, isEdge ? 0xFF5B5446 : band.hasInk(x, y)
                        ? 0xFF000000 | band.colour() : 0xFFD9D4C8);
            }
        }
        return new ImageView(image);
    }
}
