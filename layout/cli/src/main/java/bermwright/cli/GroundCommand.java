// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.GroundSheet;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GroundFile;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Says what an elevation file holds. */
@Command(name = "ground", description = "Says what an elevation file holds: size, spacing, reference system, range,"
        + " slope.")
final class GroundCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Answers with one JSON object.")
    private boolean json;

    @Parameters(paramLabel = "FILE", description = "The elevation file: GeoTIFF or ESRI ASCII grid.")
    private Path file;

    @Override
    public Integer call() {
        Console console = program.console();
        GroundSheet sheet = GroundSheet.read(file, console.progress());
        console.progress().end();
        if (json) {
            console.out().println(JsonPage.text(page(sheet)));
        } else {
            text(sheet, console.out());
        }
        return ExitCode.DONE.number();
    }

    private static ObjectNode page(GroundSheet sheet) {
        GroundFile ground = sheet.file();
        GridFrame frame = ground.grid().frame();
        ObjectNode page = JsonPage.object();
        page.put("file", ground.file().toString()).put("format", ground.format());
        page.put("rows", frame.rows()).put("columns", frame.columns());
        page.put("spacing_m", frame.spacing()).put("true_spacing_m", ground.grid().trueSpacing());
        page.put("west_m", frame.west()).put("south_m", frame.south());
        page.put("east_m", frame.eastEdge()).put("north_m", frame.northEdge());
        JsonPage.put(page, "lowest_m", ground.grid().lowest());
        JsonPage.put(page, "highest_m", ground.grid().highest());
        page.put("missing", sheet.missing());
        ObjectNode slope = page.putObject("slope_deg");
        JsonPage.put(slope, "median", InUnits.degrees(sheet.slopes().median()));
        JsonPage.put(slope, "ninety_percent", InUnits.degrees(sheet.slopes().ninety()));
        JsonPage.put(slope, "ninety_nine_percent", InUnits.degrees(sheet.slopes().ninetyNine()));
        JsonPage.put(slope, "greatest", InUnits.degrees(sheet.slopes().greatest()));
        page.put("stored", ground.heights().stored()).put("vertical_unit", ground.heights().verticalUnit());
        JsonPage.put(page, "no_data_mark", ground.heights().noDataMark());
        page.put("cells_are_areas", ground.heights().cellsAreAreas());
        ground.referenceSystem().ifPresent(system -> {
            ObjectNode named = page.putObject("reference_system");
            named.put("name", system.name());
            system.code().ifPresent(code -> named.put("code", code));
            named.put("body_radius_m", system.bodyRadius());
            named.put("well_known_text", system.wellKnownText());
        });
        sheet.middle().ifPresent(place -> page.put("middle_latitude_deg", place.latitudeDeg())
                .put("middle_longitude_deg", place.longitudeDeg()));
        page.put("scale_east", ground.scale().east()).put("scale_north", ground.scale().north());
        ground.scale().trueNorth().ifPresent(north -> page.put("true_north_azimuth_deg", north.degrees()));
        ground.cautions().forEach(page.putArray("cautions")::add);
        return page;
    }

    private static void text(GroundSheet sheet, PrintStream out) {
        GroundFile ground = sheet.file();
        GridFrame frame = ground.grid().frame();
        out.printf("%s, %s%n%n", ground.file(), ground.format());
        TextTable table = new TextTable("what", "value", "unit");
        table.row("rows × columns", frame.rows() + " × " + frame.columns(), "nodes");
        table.row("spacing", TextTable.number(frame.spacing(), 3), "m projected");
        table.row("spacing on the ground", TextTable.number(ground.grid().trueSpacing(), 3), "m");
        table.row("west edge", TextTable.number(frame.west(), 2), "m east");
        table.row("east edge", TextTable.number(frame.eastEdge(), 2), "m east");
        table.row("south edge", TextTable.number(frame.south(), 2), "m north");
        table.row("north edge", TextTable.number(frame.northEdge(), 2), "m north");
        table.row("lowest height", TextTable.number(ground.grid().lowest(), 2), "m");
        table.row("highest height", TextTable.number(ground.grid().highest(), 2), "m");
        table.row("heights missing", TextTable.number(sheet.missing(), 0), "nodes");
        table.row("slope, median", TextTable.number(InUnits.degrees(sheet.slopes().median()), 2), "deg");
        table.row("slope, 90 % below", TextTable.number(InUnits.degrees(sheet.slopes().ninety()), 2), "deg");
        table.row("slope, 99 % below", TextTable.number(InUnits.degrees(sheet.slopes().ninetyNine()), 2), "deg");
        table.row("slope, greatest", TextTable.number(InUnits.degrees(sheet.slopes().greatest()), 2), "deg");
        table.row("scale along east", TextTable.number(ground.scale().east(), 6), "m true a projected m");
        table.row("scale along north", TextTable.number(ground.scale().north(), 6), "m true a projected m");
        ground.scale().trueNorth().ifPresent(north -> table.row("true north lies at",
                TextTable.number(north.degrees(), 2), "deg from grid north"));
        sheet.middle().ifPresent(place -> {
            table.row("latitude of the middle", TextTable.number(place.latitudeDeg(), 5), "deg");
            table.row("longitude of the middle", TextTable.number(place.longitudeDeg(), 5), "deg");
        });
        out.print(table);
        out.printf("%nHeights are stored as %s, unit: %s.%n", ground.heights().stored(),
                ground.heights().verticalUnit());
        out.printf("Reference system: %s.%n", ground.referenceSystem()
                .map(s -> s.name() + s.code().map(code -> " (" + code + ")").orElse(""))
                .orElse("none in the file; projected metres are taken as true metres"));
        ground.cautions().forEach(caution -> out.printf("Caution: %s%n", caution));
    }
}
