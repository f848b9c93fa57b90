// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.Unit;
import bermwright.site.assessment.GroundSheet;
import bermwright.site.ground.GroundWork;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GroundSource;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Says what an elevation file holds, writes surfaces of it, and makes invented ground. */
@Command(name = "ground", description = "Says what an elevation file holds: size, spacing, reference system, range,"
        + " slope; or writes surfaces of it as files; or, with --make, invented ground. Files of any size are worked on"
        + " piece by piece.")
final class GroundCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Answers with one JSON object.")
    private boolean json;

    @Mixin
    private GroundOptions surfaces;

    @Mixin
    private MakeOptions invented;

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "The elevation file: GeoTIFF, ESRI ASCII grid, or a"
            + " PDS3 or PDS4 image by its label.")
    private Optional<Path> file = Optional.empty();

    @Override
    public Integer call() {
        Console console = program.console();
        if (invented.file().isPresent()) {
            make(invented.file().get(), console);
        }
        if (file.isEmpty() && (invented.file().isEmpty() || surfaces.any())) {
            throw Options.bad("FILE", "not given", "an elevation file, or --make FILE");
        }
        if (file.isPresent() && surfaces.any()) {
            surfaces(file.get(), console);
        } else if (file.isPresent()) {
            GroundSheet sheet = GroundSheet.read(file.get(), console.progress());
            console.progress().end();
            if (json) {
                console.out().println(JsonObjects.text(page(sheet)));
            } else {
                text(sheet, console.out());
            }
        }
        return ExitCode.DONE.number();
    }

    private void make(Path made, Console console) {
        invented.write(made, console.progress());
        console.progress().end();
        if (json && file.isEmpty()) {
            ObjectNode page = JsonObjects.object();
            page.put("made", made.toString()).put("what", invented.words());
            console.out().println(JsonObjects.text(page));
        } else if (!json) {
            console.out().printf("Invented ground, which stands for no place: %s, %s.%n", made, invented.words());
        }
    }

    private void surfaces(Path from, Console console) {
        try (GroundWork work = GroundWork.open(from, surfaces.packed(), console.progress().part(0, 0.1))) {
            surfaces.write(work, console.progress().part(0.1, 1));
            console.progress().end();
            if (json) {
                console.out().println(JsonObjects.text(page(work)));
                return;
            }
            TextTable table = new TextTable("what", "unit", "file");
            work.written().forEach(w -> table.row(w.title(), w.unit(), w.file().toString()));
            console.out().print(table);
            work.written().stream().map(GroundWork.Written::note).filter(n -> !n.isEmpty()).distinct()
                    .forEach(n -> console.out().printf("Note: %s.%n", n));
            work.ground().cautions().forEach(caution -> console.out().printf("Caution: %s%n", caution));
        }
    }

    private static ObjectNode page(GroundWork work) {
        ObjectNode page = JsonObjects.object();
        page.put("file", work.ground().file().toString()).put("format", work.ground().format());
        ArrayNode written = page.putArray("written");
        work.written().forEach(w -> {
            ObjectNode one = written.addObject();
            one.put("what", w.title()).put("unit", w.unit()).put("file", w.file().toString());
            if (!w.note().isEmpty()) {
                one.put("note", w.note());
            }
        });
        work.ground().cautions().forEach(page.putArray("cautions")::add);
        return page;
    }

    private static ObjectNode page(GroundSheet sheet) {
        GroundSource ground = sheet.file();
        GridFrame frame = ground.frame();
        ObjectNode page = JsonObjects.object();
        page.put("file", ground.file().toString()).put("format", ground.format());
        page.put("rows", frame.rows()).put("columns", frame.columns());
        page.put("spacing_m", frame.spacing()).put("true_spacing_m", ground.trueSpacing());
        page.put("west_m", frame.west()).put("south_m", frame.south());
        page.put("east_m", frame.eastEdge()).put("north_m", frame.northEdge());
        JsonObjects.put(page, "lowest_m", sheet.statistics().lowest());
        JsonObjects.put(page, "highest_m", sheet.statistics().highest());
        page.put("missing", sheet.statistics().missing());
        ObjectNode slope = page.putObject("slope_deg");
        JsonObjects.put(slope, "median", Unit.DEG.of(sheet.statistics().slope(0.5)));
        JsonObjects.put(slope, "ninety_percent", Unit.DEG.of(sheet.statistics().slope(0.9)));
        JsonObjects.put(slope, "ninety_nine_percent", Unit.DEG.of(sheet.statistics().slope(0.99)));
        JsonObjects.put(slope, "greatest", Unit.DEG.of(sheet.statistics().slope(1)));
        page.put("stored", ground.heights().stored()).put("vertical_unit", ground.heights().verticalUnit());
        JsonObjects.put(page, "no_data_mark", ground.heights().noDataMark());
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
        sheet.cautions().forEach(page.putArray("cautions")::add);
        return page;
    }

    private static void text(GroundSheet sheet, PrintStream out) {
        GroundSource ground = sheet.file();
        GridFrame frame = ground.frame();
        out.printf("%s, %s%n%n", ground.file(), ground.format());
        TextTable table = new TextTable("what", "value", "unit");
        table.row("rows × columns", frame.rows() + " × " + frame.columns(), "nodes");
        table.row("spacing", TextTable.number(frame.spacing(), 3), "m projected");
        table.row("spacing on the ground", TextTable.number(ground.trueSpacing(), 3), "m");
        table.row("west edge", TextTable.number(frame.west(), 2), "m east");
        table.row("east edge", TextTable.number(frame.eastEdge(), 2), "m east");
        table.row("south edge", TextTable.number(frame.south(), 2), "m north");
        table.row("north edge", TextTable.number(frame.northEdge(), 2), "m north");
        table.row("lowest height", TextTable.number(sheet.statistics().lowest(), 2), "m");
        table.row("highest height", TextTable.number(sheet.statistics().highest(), 2), "m");
        table.row("heights missing", TextTable.number(sheet.statistics().missing(), 0), "nodes");
        table.row("slope, median", TextTable.number(Unit.DEG.of(sheet.statistics().slope(0.5)), 2), "deg");
        table.row("slope, 90 % below", TextTable.number(Unit.DEG.of(sheet.statistics().slope(0.9)), 2), "deg");
        table.row("slope, 99 % below", TextTable.number(Unit.DEG.of(sheet.statistics().slope(0.99)), 2), "deg");
        table.row("slope, greatest", TextTable.number(Unit.DEG.of(sheet.statistics().slope(1)), 2), "deg");
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
        sheet.cautions().forEach(caution -> out.printf("Caution: %s%n", caution));
    }
}
