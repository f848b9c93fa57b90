// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.Inventory;
import bermwright.editor.model.Workbench;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;

/** Everything the plan holds, by kind. */
final class InventoryPane extends ListView<Part> {
    private final Workbench bench;
    private boolean isFollowing;

    InventoryPane(Workbench bench, PartActions actions) {
        this.bench = bench;
        setId("inventory");
        setAccessibleText("Everything the plan holds");
        setCellFactory(list -> new ListCell<>() {
            @Override
            protected void updateItem(Part part, boolean isEmpty) {
                super.updateItem(part, isEmpty);
                // Long names wrap instead of making the list scroll sideways.
                setPrefWidth(0);
                setWrapText(true);
                setText(isEmpty || part == null ? null : part.words());
            }
        });
        getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> {
            if (!isFollowing && now != null) {
                bench.pick(Optional.of(now));
            }
        });
        setOnMouseClicked(event -> {
            if (event.getClickCount() == 2) {
                bench.picked().ifPresent(actions::flyTo);
            }
        });
        setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                bench.picked().ifPresent(actions::flyTo);
            } else if (event.getCode() == KeyCode.DELETE) {
                actions.remove();
            }
        });
        bench.calm().listen(this::refreshParts);
        bench.pickedChanged().listen(this::follow);
        refreshParts();
    }

    private void refreshParts() {
        List<Part> parts = Inventory.parts(bench.plan());
        if (!parts.equals(new ArrayList<>(getItems()))) {
            isFollowing = true;
            getItems().setAll(parts);
            isFollowing = false;
        }
        follow();
    }

    private void follow() {
        isFollowing = true;
        Optional<Part> picked = bench.picked();
        if (picked.isEmpty()) {
            getSelectionModel().clearSelection();
        } else if (!picked.get().equals(getSelectionModel().getSelectedItem())) {
            getSelectionModel().select(picked.get());
            scrollTo(Math.max(0, getItems().indexOf(picked.get()) - 2));
        }
        isFollowing = false;
    }
}
