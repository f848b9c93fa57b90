// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.PlaceAnswers;
import bermwright.site.answer.Unit;
import bermwright.site.assessment.GroundSheet;
import bermwright.site.ground.GroundWork;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says what an elevation file holds, writes surfaces of it, and makes invented ground. */
@Command(name = "ground", description = "Says what an elevation file holds: size, spacing, reference system, range,"
        + " slope; or writes surfaces of it as files; or, with --make, invented ground. Files of any size are worked on"
        + " piece by piece.")
final class GroundCommand extends JsonCommand {
    @Mixin
    private GroundOptions surfaces;

    @Mixin
    private MakeOptions invented;

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "The elevation file: GeoTIFF, ESRI ASCII grid, or a"
            + " PDS3 or PDS4 image by its label.")
    private Optional<Path> file = Optional.empty();

    @Override
    public Integer call() {
        Console console = console();
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
            if (json()) {
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
        if (json() && file.isEmpty()) {
            ObjectNode page = JsonObjects.object();
            page.put("made", made.toString()).put("what", invented.words());
            console.out().println(JsonObjects.text(page));
        } else if (!json()) {
            console.out().printf("Invented ground, which stands for no place: %s, %s.%n", made, invented.words());
        }
    }

    private void surfaces(Path from, Console console) {
        try (GroundWork work = GroundWork.open(from, surfaces.packed(), console.progress().part(0, 0.1))) {
            surfaces.write(work, console.progress().part(0.1, 1));
            console.progress().end();
            if (json()) {
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
        ObjectNode page = JsonObjects.object();
        JsonObjects.put(page, PlaceAnswers.FILE, sheet);
        return page;
    }

    private static void text(GroundSheet sheet, PrintStream out) {
        TextTable table = new TextTable("what", "value", "unit");
        PlaceAnswers.FILE.brief().stream().filter(f -> !f.text(sheet).isEmpty()).forEach(f -> table.row(f.heading(),
                f.text(sheet), f.unit().map(Unit::symbol).orElse("")));
        out.print(table);
        if (sheet.file().referenceSystem().isEmpty()) {
            out.printf("Reference system: none in the file; projected metres are taken as true metres.%n");
        }
        sheet.cautions().forEach(caution -> out.printf("Caution: %s%n", caution));
    }
}
