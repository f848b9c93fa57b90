// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.InputException;
import bermwright.report.SurveyFolder;
import bermwright.site.assessment.Cautions;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.survey.BlockSpread;
import bermwright.site.survey.LocalSpread;
import bermwright.site.survey.PlanFolders;
import bermwright.site.survey.Reason;
import bermwright.site.survey.Survey;
import bermwright.site.survey.SurveyOrder;
import bermwright.site.survey.SurveyPlace;
import bermwright.site.survey.SurveyResult;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.ServiceLoader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds where hulls could lie in a region. */
@Command(name = "survey", description = "Finds where hulls could lie in a region of any size: scores every cell and"
        + " heading, gives the best places that do not overlap with their reasons, a map, and a plan file for each.")
final class SurveyCommand extends JsonCommand {
    @Option(names = "--best", paramLabel = "N", defaultValue = "10", description = "How many places are wanted; 10.")
    private int best;

    @Option(names = "--out", paramLabel = "DIR", description = "Where map, table and plan files go; made where it is"
            + " not there.")
    private Optional<Path> directory = Optional.empty();

    @Option(names = "--hulls", paramLabel = "PLAN", description = "With an elevation file: the plan whose hulls are"
            + " placed, together as they stand to each other; else a built-in hull.")
    private Optional<Path> hulls = Optional.empty();

    @Option(names = "--spark", paramLabel = "MASTER", description = "Scores on the Apache Spark cluster with this"
            + " master, such as spark://host:7077 or local[*]; needs the module layout/survey-spark.")
    private Optional<String> master = Optional.empty();

    @Mixin
    private SurveyOptions asked;

    @Parameters(paramLabel = "FILE|PLAN", description = "An elevation file, or a plan: then its own elevation file is"
            + " surveyed for its hulls.")
    private Path input;

    @Override
    public Integer call() {
        Console console = console();
        check();
        Optional<Path> plan = isPlan() ? Optional.of(input) : hulls;
        Survey.Question question = new Survey.Question(region(), plan, isPlan(), asked.within(), asked.limits());
        SurveyOrder order = Survey.order(question);
        PlanFolders folders = new PlanFolders(plan.map(p -> folder(p)).orElse(Path.of("")),
                directory.orElse(Path.of("")));
        SurveyResult result = Survey.run(order, best, folders, spread(), console.progress().part(0, 0.95));
        directory.ifPresent(d -> OutFolder.write(d, () -> SurveyFolder.write(result, d,
                console.progress().part(0.95, 1))));
        console.progress().end();
        if (json()) {
            console.out().println(JsonObjects.text(page(result)));
        } else {
            text(result, console.out());
        }
        return ExitCode.DONE.number();
    }

    private void check() {
        if (best < 1 || best > 1000) {
            throw Options.bad("--best", Integer.toString(best), "1 to 1000");
        }
        if (isPlan() && hulls.isPresent()) {
            throw Options.bad("--hulls", hulls.get().toString(), "none beside a plan; give the elevation file");
        }
        directory.ifPresent(folder -> OutFolder.check(folder, "an earlier survey", console().err()));
    }

    /** A plan file is JSON and begins with a brace. */
    private boolean isPlan() {
        if (!Files.isRegularFile(input)) {
            return input.toString().toLowerCase(Locale.ROOT).endsWith(".json");
        }
        try (InputStream in = Files.newInputStream(input)) {
            String head = new String(in.readNBytes(64), java.nio.charset.StandardCharsets.UTF_8);
            return head.replace("\uFEFF", "").stripLeading().startsWith("{");
        } catch (IOException e) {
            throw InputException.unreadable(InputException.Place.of(input.toString()), "it cannot be read ("
                    + e.getMessage() + ")", "an elevation file or a plan file", Optional.of(e));
        }
    }

    private Path region() {
        if (!isPlan()) {
            return input;
        }
        Plan plan = PlanFiles.read(input);
        return InputException.beside(folder(input), plan.ground().elevationFile(),
                new InputException.Place(input.toString(), 0, "ground.elevation_file"));
    }

    private static Path folder(Path file) {
        return Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(Path.of("."));
    }

    private BlockSpread spread() {
        if (master.isEmpty()) {
            return new LocalSpread();
        }
        return ServiceLoader.load(BlockSpread.OfCluster.class).findFirst().map(c -> c.on(master.get())).orElseThrow(
                () -> Options.bad("--spark", master.get(), "with the module layout/survey-spark, which is built"
                + " only where it is asked for: see layout/survey-spark/README.md"));
    }

    private void text(SurveyResult result, PrintStream out) {
        SurveyResult.Tally t = result.tally();
        out.printf(Locale.ROOT, "%s: %,d cells of %.2f m, %d headings, hulls of %s%n%n", input, t.cells(),
                result.ground().trueSpacing(), t.headings(), result.order().planName());
        TextTable cells = new TextTable("what became of the cells", "cells", "share %");
        row(cells, "a hull can lie", t.admitted(), t);
        row(cells, "too steep at every heading, or near a pad", t.tooSteep(), t);
        row(cells, "bed, sweep, gear or lines not clear", t.tooRough(), t);
        row(cells, "no soil enough within reach", t.noSoil(), t);
        row(cells, "relay or sun not seen", t.noSight(), t);
        row(cells, "not known, or kept free", t.unknown(), t);
        out.print(cells);
        out.printf(Locale.ROOT, "%nOf %,d headings proven bounds leave %,d; the others lie below the best of"
                + " their cell.%n%n", t.cells() * t.headings(), t.workedOut());
        if (result.places().isEmpty()) {
            out.println("No place was found where the hulls can lie.");
        } else {
            out.printf(Locale.ROOT, "Best places, %.0f m apart or more. A score is the least margin of a place: 1 far"
                    + " from every limit, 0 on one.%n", result.apart());
            TextTable places = new TextTable("place", "east m", "north m", "laid down to deg", "score",
                    "tightest limit");
            result.places().forEach(p -> places.row(p.rank(), TextTable.number(p.centre().east(), 1),
                    TextTable.number(p.centre().north(), 1), TextTable.number(p.heading().degrees(), 0),
                    TextTable.number(p.score(), 3), p.tightest().criterion().words()));
            out.print(places);
            result.places().forEach(p -> reasons(p, out));
        }
        out.println();
        result.notes().forEach(n -> CommonText.wrapped(n, 0, out));
        Cautions.all().forEach(c -> CommonText.wrapped("Caution: " + c, 0, out));
        directory.ifPresent(d -> out.printf("Written: %s%n", d.resolve(SurveyFolder.PICTURE)));
    }

    private static void row(TextTable table, String what, long cells, SurveyResult.Tally tally) {
        table.row(what, TextTable.number(cells, 0), TextTable.number(100.0 * cells / tally.cells(), 2));
    }

    private static void reasons(SurveyPlace place, PrintStream out) {
        out.printf(Locale.ROOT, "%nPlace %d%n", place.rank());
        TextTable table = new TextTable("figure", "measured", "limit", "unit", "margin");
        for (Reason r : place.reasons()) {
            table.row(r.criterion().words(), TextTable.number(r.measured(), 2), (r.criterion().isLeast() ? "at least "
                    : "at most ") + TextTable.words(r.limit(), 2), r.criterion().unit(),
                    TextTable.number(r.margin(), 2));
        }
        out.print(table);
    }

    private ObjectNode page(SurveyResult result) {
        SurveyResult.Tally t = result.tally();
        ObjectNode page = JsonObjects.object();
        page.put("file", input.toString()).put("hulls", result.order().planName());
        page.put("cells", t.cells()).put("headings", t.headings()).put("cell_m", result.ground().trueSpacing());
        page.putObject("tally").put("admitted", t.admitted()).put("too_steep", t.tooSteep())
                .put("too_rough", t.tooRough()).put("no_soil", t.noSoil()).put("no_sight", t.noSight())
                .put("unknown", t.unknown()).put("headings_worked_out", t.workedOut());
        page.put("apart_m", result.apart()).put("soil_bank_m3", result.soil());
        page.put("map_square_cells", result.map().square());
        ArrayNode places = page.putArray("places");
        for (SurveyPlace p : result.places()) {
            ObjectNode one = places.addObject().put("rank", p.rank()).put("east_m", p.centre().east())
                    .put("north_m", p.centre().north()).put("heading_deg", p.heading().degrees())
                    .put("score", p.score()).put("tightest", p.tightest().criterion().words());
            directory.ifPresent(d -> one.put("plan", d.resolve(SurveyFolder.plan(p)).toString()));
            ArrayNode reasons = one.putArray("reasons");
            p.reasons().forEach(r -> reasons.addObject().put("criterion", r.criterion().words())
                    .put("measured", r.measured()).put("limit", r.limit()).put("unit", r.criterion().unit())
                    .put("limit_is", r.criterion().isLeast() ? "least" : "most").put("margin", r.margin()));
        }
        result.notes().forEach(page.putArray("notes")::add);
        Cautions.all().forEach(page.putArray("cautions")::add);
        directory.ifPresent(d -> page.put("directory", d.toString()));
        return page;
    }
}
