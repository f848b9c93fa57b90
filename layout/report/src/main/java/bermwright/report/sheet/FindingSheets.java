// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.finding.Catalogue;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** The findings with the numbers they carry on drawings and in tables. */
public final class FindingSheets {
    private FindingSheets() {
    }

    /** The table of all findings. */
    public static Table table(List<Finding> findings) {
        List<List<String>> rows = new ArrayList<>();
        Numbered.of(findings).forEach(numbered -> rows.add(row(numbered)));
        return new Table("findings", "All findings, the worst first; the numbers stand on the drawings", List.of(
                Column.words("number", "no."), Column.words("level", "level"), Column.words("subject", "about"),
                Column.words("text", "what it means"), Column.words("todo", "what to do"),
                Column.number("measured", "value"), Column.number("limit", "limit"), Column.words("unit", "unit"),
                Column.number("east_m", "east (m)"), Column.number("north_m", "north (m)"),
                Column.words("rule", "rule"), Column.words("id", "id"),
                Column.words("source", "limit from, or what it goes by")), rows);
    }

    private static List<String> row(Numbered numbered) {
        Finding f = numbered.finding();
        boolean figures = f.measured().isPresent() || f.limit().isPresent();
        return List.of(numbered.number(), f.level().word(), f.subject(),
                f.text(), f.todo(), figure(f.measured()),
                figure(f.limit()), figures ? f.unit() : "", f.place().map(p -> Words.fixed(p.east(), 1)).orElse(""),
                f.place().map(p -> Words.fixed(p.north(), 1)).orElse(""), f.rule().id(), f.id(), f.source());
    }

    private static String figure(OptionalDouble value) {
        return value.isPresent() ? Finding.Figures.number(value.getAsDouble()).replace(",", "") : "";
    }

    /**
     * Findings of a reader in the columns that are read on paper; the file of all findings has more.
     *
     * @param findings all findings
     * @param shown    which of them
     * @return the table
     */
    public static Table shown(List<Finding> findings, Predicate<Finding> shown) {
        List<List<String>> rows = Numbered.of(findings).stream().filter(n -> shown.test(n.finding())).map(n -> {
            Finding f = n.finding();
            boolean figures = f.measured().isPresent() || f.limit().isPresent();
            return List.of(n.number(), f.level().word(), f.subject(), f.text(), f.todo(), figure(f.measured()),
                    figure(f.limit()), figures && !f.unit().equals("1") ? f.unit() : "", f.source());
        }).toList();
        return new Table("findings", "Findings, the worst first; the numbers stand on the drawings", List.of(
                Column.words("number", "no."), Column.words("level", "level"), Column.words("subject", "about"),
                Column.words("text", "what it means"), Column.words("todo", "what to do"),
                Column.number("measured", "value"), Column.number("limit", "limit"), Column.words("unit", "unit"),
                Column.words("source", "limit from, or what it goes by")), rows);
    }

    /**
     * The catalogue of all rules that findings come from.
     *
     * @return the table
     */
    public static Table catalogue() {
        return new Table("rules", "Every rule that a finding can come from", List.of(Column.words("rule", "rule"),
                Column.words("levels", "level"), Column.words("endangers", "endangers"),
                Column.words("measures", "what is measured"), Column.words("unit", "unit"),
                Column.words("source", "limit from, or what it goes by"), Column.words("todo", "what to do")),
                Catalogue.all().stream().map(r -> List.of(r.id(), r.levels(), r.entry().danger().word(),
                        r.entry().measures(), r.entry().unit(), r.entry().source(), r.entry().todo())).toList());
    }

    /** How many findings have a level. */
    public static long count(List<Finding> findings, Finding.Level level) {
        return findings.stream().filter(f -> f.level() == level).count();
    }
}
