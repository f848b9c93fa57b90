// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.report.page.Table;
import bermwright.report.sheet.EgressSheets;
import bermwright.shielding.dose.Band;
import bermwright.shielding.fold.DoseUncertainty;
import bermwright.site.assessment.Assessment;
import bermwright.site.exposure.StationDose;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** The crew-safety reviewer's figures beside the drawings: what each dose's spread is made of, and the ways out. */
final class ReviewFigures {
    private ReviewFigures() {
    }

    /** From low to high: what spreads the dose of each station, the greatest named first. */
    static List<Node> spreads(Assessment assessment) {
        List<Node> nodes = new ArrayList<>();
        assessment.dose().ifPresent(dose -> {
            nodes.add(SoilFigures.heading("What the spread of each dose is made of"));
            GridPane grid = grid();
            List<String> heads = new ArrayList<>(List.of("station", "from"));
            for (DoseUncertainty.Term term : DoseUncertainty.Term.values()) {
                heads.add(term.word());
            }
            line(grid, 0, heads, true);
            int row = 1;
            for (StationDose station : dose.stations()) {
                String name = station.name();
                line(grid, row++, uncertainty(name, "cosmic", station.parts().uncertainties().cosmic()), false);
                Optional<DoseUncertainty> event = station.parts().uncertainties().event();
                if (event.isPresent()) {
                    line(grid, row++, uncertainty("", "event", event.get()), false);
                }
            }
            nodes.add(grid);
            nodes.add(SoilFigures.line("Factors on the best figure at its 16th and 84th percentile, each by itself; the"
                    + " one that spreads the dose most is marked \u25CF."));
        });
        return nodes;
    }

    private static List<String> uncertainty(String station, String source, DoseUncertainty uncertainty) {
        List<String> cells = new ArrayList<>(List.of(station, source));
        for (DoseUncertainty.Term term : DoseUncertainty.Term.values()) {
            Band band = uncertainty.of(term);
            cells.add(String.format(Locale.ROOT, "\u00d7%.2f\u2013%.2f%s", band.low(), band.high(),
                    term == uncertainty.greatest() ? " \u25CF" : ""));
        }
        return cells;
    }

    /** The ways out of each hull and to the storm shelters. */
    static List<Node> ways(Assessment assessment) {
        EgressSheets sheets = new EgressSheets(assessment.plan().hulls(), assessment.waysOut());
        List<Node> nodes = new ArrayList<>();
        for (Table table : List.of(sheets.out(), sheets.shelters())) {
            nodes.add(SoilFigures.heading(table.title()));
            if (table.rows().isEmpty()) {
                nodes.add(SoilFigures.line("None: no station is named as a storm shelter, or none can be reached."));
                continue;
            }
            GridPane grid = grid();
            line(grid, 0, table.columns().stream().map(Table.Column::heading).toList(), true);
            for (int row = 0; row < table.rows().size(); row++) {
                line(grid, row + 1, table.rows().get(row), false);
            }
            nodes.add(grid);
        }
        nodes.add(SoilFigures.line(sheets.words()));
        return nodes;
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("figures");
        grid.setMinWidth(0);
        return grid;
    }

    private static void line(GridPane grid, int row, List<String> cells, boolean isHead) {
        for (int column = 0; column < cells.size(); column++) {
            Label label = new Label(cells.get(column));
            label.setWrapText(true);
            label.setMinWidth(0);
            if (isHead) {
                label.getStyleClass().add("hint");
                ColumnConstraints width = new ColumnConstraints();
                width.setHgrow(column == 0 ? Priority.ALWAYS : Priority.SOMETIMES);
                width.setHalignment(HPos.LEFT);
                grid.getColumnConstraints().add(width);
            }
            grid.add(label, column, row);
        }
    }
}
