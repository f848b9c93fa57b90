// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.Drafting;
import bermwright.editor.model.MapHands;
import bermwright.editor.model.MapTool;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The tools over the map: what the hand does, what places snap to, and how picked things are put in order. */
final class MapTools extends VBox {
    private static final double GRID = 5;

    private final Drafting draft;
    private final Map<MapTool, ToggleButton> buttons = new EnumMap<>(MapTool.class);
    private final Label help = new Label();

    MapTools(MapHands hands, PartActions actions, LayerPanel layers) {
        this.draft = hands.draft();
        setId("map-tools");
        FlowPane line = new FlowPane();
        line.getStyleClass().add("map-tools");
        ToggleGroup group = new ToggleGroup();
        for (MapTool tool : MapTool.values()) {
            ToggleButton button = new ToggleButton(tool.word());
            button.setId("tool-" + tool.name().toLowerCase(java.util.Locale.ROOT));
            button.setToggleGroup(group);
            button.setTooltip(Hint.of(tool.help()));
            button.setAccessibleText(tool.kind().isPresent() ? "Draw: " + tool.word() : tool.isMeasure()
                    ? "Measure: " + tool.word() : tool.word());
            button.setOnAction(event -> draft.take(tool));
            buttons.put(tool, button);
            line.getChildren().add(button);
        }
        ToggleButton grid = new ToggleButton("Grid 5 m");
        grid.setId("snap-grid");
        grid.setTooltip(Hint.of("Places snap to whole 5 m east and north. Alt while dragging: no snapping at all."));
        grid.setOnAction(event -> hands.snapping().grid(grid.isSelected(), GRID));
        ToggleButton legend = new ToggleButton("Layers");
        legend.setId("show-layers");
        legend.setTooltip(Hint.of("What the map shows, and what its colours and lines mean."));
        legend.selectedProperty().bindBidirectional(layers.visibleProperty());
        line.getChildren().addAll(arrange(actions), grid, legend);
        help.getStyleClass().add("hint");
        help.setId("tool-help");
        // One line that is always there, so that the map does not move under the hand.
        help.setMaxWidth(Double.MAX_VALUE);
        getChildren().addAll(line, help);
        draft.changed().listen(this::follow);
        follow();
    }

    private static MenuButton arrange(PartActions actions) {
        MenuButton menu = new MenuButton("Arrange");
        menu.setId("arrange");
        menu.setTooltip(Hint.of("Puts several picked things in order; the one picked first stays."));
        for (PartActions.Order order : PartActions.Order.values()) {
            MenuItem item = new MenuItem(order.words());
            item.setId("arrange-" + order.name().toLowerCase(java.util.Locale.ROOT));
            item.setOnAction(event -> actions.arrange(order));
            menu.getItems().add(item);
        }
        return menu;
    }

    private void follow() {
        buttons.forEach((tool, button) -> button.setSelected(tool == draft.tool()));
        help.setText(draft.tool().help() + (draft.isActive() ? " Escape lays the tool down." : ""));
        help.setTooltip(Hint.of(help.getText()));
    }
}
