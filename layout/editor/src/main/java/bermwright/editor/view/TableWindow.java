// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.report.page.Table;
import java.util.List;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;

/** Tables of an answer in a window of their own; each column sorts, numbers as numbers. */
final class TableWindow {
    private static final double ROW = 2.2;
    private static final int MOST_ROWS = 14;

    private TableWindow() {
    }

    static void show(Window owner, String title, String words, List<Table> tables) {
        VBox all = new VBox(8);
        all.getStyleClass().add("answer");
        Label head = new Label(title);
        head.getStyleClass().add("heading");
        Label over = new Label(words);
        over.setWrapText(true);
        all.getChildren().addAll(head, over);
        for (Table table : tables) {
            Label heading = new Label(table.title());
            heading.getStyleClass().add("heading");
            all.getChildren().addAll(heading, view(table));
        }
        ScrollPane scroll = new ScrollPane(all);
        scroll.setFitToWidth(true);
        Dialogs.dress(scroll, owner.getScene());
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.setTitle(title);
        stage.setScene(new Scene(scroll, Math.min(900, owner.getWidth()), Math.min(640, owner.getHeight())));
        Dialogs.closeOnEscape(stage);
        stage.show();
    }

    private static TableView<List<String>> view(Table table) {
        TableView<List<String>> view = new TableView<>();
        view.setId("table-" + table.name());
        view.setAccessibleText(table.title());
        for (int i = 0; i < table.columns().size(); i++) {
            int at = i;
            TableColumn<List<String>, String> column = new TableColumn<>(table.columns().get(i).heading());
            column.setCellValueFactory(row -> new ReadOnlyStringWrapper(row.getValue().get(at)));
            column.setComparator(TableWindow::compare);
            view.getColumns().add(column);
        }
        view.getItems().setAll(table.rows());
        view.setStyle("-fx-pref-height: " + ROW * (2 + Math.min(MOST_ROWS, table.rows().size())) + "em;");
        return view;
    }

    private static int compare(String one, String other) {
        String number = "-?[0-9][0-9,]*(\\.[0-9]+)?";
        if (one.matches(number) && other.matches(number)) {
            return Double.compare(Double.parseDouble(one.replace(",", "")), Double.parseDouble(other.replace(",",
                    "")));
        }
        return one.compareTo(other);
    }
}
