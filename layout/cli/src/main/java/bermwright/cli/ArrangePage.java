// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.PairingRule;
import bermwright.site.answer.Unit;
import bermwright.site.arrangement.Arrangement;
import bermwright.site.arrangement.ArrangementSearch;
import bermwright.site.arrangement.Figures;
import bermwright.site.assessment.Cautions;
import bermwright.site.assessment.Version;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

/** What a search for arrangements found, for people, for programs and as a table. */
record ArrangePage(Path planFile, Path directory, ArrangementSearch.Found found, long seed) {
    private static final double PERCENT = 100;

    static String file(int place) {
        return "arrangement-" + (place + 1) + ".json";
    }

    private List<Figures> all() {
        return found.arrangements().stream().map(Arrangement::figures).toList();
    }

    /** Share of the planned hours; not a number where the plan has hulls in one place, which are no plan to go by. */
    private double share(Figures figures) {
        boolean isSetOut = found.planned().refusals().stream().noneMatch(f -> f.rule()
                == PairingRule.HULLS_IN_ONE_PLACE);
        return isSetOut && figures.hours().isPresent() && found.planned().figures().hours().orElse(0) > 0
                ? figures.hours().getAsDouble() / found.planned().figures().hours().getAsDouble() : Double.NaN;
    }

    ObjectNode json() {
        ObjectNode page = JsonObjects.object();
        page.put("plan", planFile.toString()).put("bermwright", Version.text());
        Cautions.all().forEach(page.putArray("cautions")::add);
        page.put("seed", seed).put("steps", found.steps());
        ObjectNode planned = page.putObject("planned");
        planned.put("refusals", found.planned().refusals().size());
        put(planned, found.planned().figures());
        ArrayNode list = page.putArray("arrangements");
        for (int i = 0; i < found.arrangements().size(); i++) {
            Arrangement one = found.arrangements().get(i);
            ObjectNode entry = list.addObject().put("plan_file", directory.resolve(file(i)).toString())
                    .put("step", one.step());
            put(entry, one.figures());
            JsonObjects.put(entry, "share_of_planned_hours", share(one.figures()));
            entry.put("gives_up", one.figures().givenUp(all()));
        }
        ObjectNode refused = page.putObject("refused_on_the_way");
        new TreeMap<>(found.refused()).forEach(refused::put);
        return page;
    }

    private static void put(ObjectNode entry, Figures figures) {
        JsonObjects.put(entry, "machine_hours", figures.hours());
        JsonObjects.put(entry, "placed_m3", figures.soil());
        entry.put("warnings", figures.warnings());
        JsonObjects.put(entry, "tunnels_m", figures.tunnels());
        JsonObjects.put(entry, "cut_m3", figures.cut());
        figures.dose().ifPresent(d -> JsonObjects.put(entry, "worst_station_high_mSv", Unit.MSV.of(d)));
    }

    void text(PrintStream out) {
        TextTable table = new TextTable("", "plan file", "machine hours", "of planned", "soil m³", "warnings",
                "tunnels m", "cut m³", "worst station high mSv");
        row(table, "as given", found.planned().isPassed() ? planFile.getFileName().toString() : "refused: "
                + found.planned().refusals().size() + " findings", found.planned().figures());
        for (int i = 0; i < found.arrangements().size(); i++) {
            row(table, Integer.toString(i + 1), file(i), found.arrangements().get(i).figures());
        }
        if (found.arrangements().isEmpty()) {
            out.printf(Locale.ROOT, "No arrangement without refusal was found in %d step%s.%n", found.steps(),
                    found.steps() == 1 ? "" : "s");
            out.println("Widen arrange_within, free a held hull, or let it run longer with --steps.");
        } else {
            boolean one = found.arrangements().size() == 1;
            out.printf(Locale.ROOT, "%d arrangement%s that nothing refuses%s (steps %d, seed %d); written to %s with"
                    + " arrangements.svg and arrangements.csv.%n", found.arrangements().size(), one ? "" : "s",
                    one ? "" : ", none better in all than another", found.steps(), seed, directory);
        }
        out.println();
        out.print(table);
        out.println();
        for (int i = 0; i < found.arrangements().size() && found.arrangements().size() > 1; i++) {
            out.printf(Locale.ROOT, "  %d gives up: %s.%n", i + 1,
                    found.arrangements().get(i).figures().givenUp(all()));
        }
        out.println();
        if (!found.refused().isEmpty()) {
            out.println("  Turned down on the way: " + String.join(", ", new TreeMap<>(found.refused()).entrySet()
                    .stream().map(e -> e.getKey() + " (" + e.getValue() + ")").toList()) + ".");
        }
        if (!found.arrangements().isEmpty()) {
            out.println("  Each has passed the full assessment; its warnings and notes: bermwright assess FILE.");
        }
        CommonText.cautions(Cautions.all(), out);
    }

    private void row(TextTable table, String number, String file, Figures figures) {
        double share = share(figures);
        table.row(number, file, TextTable.number(figures.hours(), 0),
                new TextTable.Cell(Double.isNaN(share) ? "-" : String.format(Locale.ROOT, "%.0f %%", PERCENT * share)),
                TextTable.number(figures.soil(), 0), TextTable.number(figures.warnings(), 0),
                TextTable.number(figures.tunnels(), 1), TextTable.number(figures.cut(), 0),
                TextTable.number(Unit.MSV.of(figures.dose().orElse(Double.NaN)), 1));
    }

    String csv() {
        StringBuilder csv = new StringBuilder("plan_file,machine_hours,share_of_planned_hours,placed_m3,warnings,"
                + "tunnels_m,cut_m3,worst_station_high_mSv,gives_up\n");
        for (int i = 0; i < found.arrangements().size(); i++) {
            Figures f = found.arrangements().get(i).figures();
            csv.append(file(i)).append(String.format(Locale.ROOT, ",%.0f,%.4f,%.0f,%d,%.1f,%.0f,%.1f,\"%s\"%n",
                    f.hours().orElse(Double.NaN), share(f), f.soil(), f.warnings(), f.tunnels(), f.cut(),
                    Unit.MSV.of(f.dose().orElse(Double.NaN)), f.givenUp(all())));
        }
        return csv.toString();
    }
}
