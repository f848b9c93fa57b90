// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.report.page.Table.Column;
import bermwright.report.page.Table;
import java.util.ArrayList;
import java.util.List;

/** The findings with the numbers they carry on drawings and in tables. */
public final class FindingSheets {
    private FindingSheets() {
    }

    /** The table of all findings. */
    public static Table table(List<Numbered> findings) {
        List<List<String>> rows = new ArrayList<>();
        for (Numbered numbered : findings) {
            Finding f = numbered.finding();
            rows.add(List.of(numbered.number(), f.level().word(), f.subject(), f.text(),
                    Words.fixed(f.measured(), 3), Words.fixed(f.limit(), 3), f.measured().isPresent()
                    || f.limit().isPresent() ? f.unit() : "", f.place().map(p -> Words.fixed(p.east(), 1)).orElse(""),
                    f.place().map(p -> Words.fixed(p.north(), 1)).orElse(""), f.rule().id(), f.source()));
        }
        return new Table("findings", "All findings, the worst first; the numbers stand on the drawings", List.of(
                Column.words("number", "no."), Column.words("level", "level"), Column.words("subject", "about"),
                Column.words("text", "what it means"), Column.number("measured", "measured"),
                Column.number("limit", "limit"), Column.words("unit", "unit"), Column.number("east_m", "east (m)"),
                Column.number("north_m", "north (m)"), Column.words("rule", "rule"),
                Column.words("source", "limit from, or what it goes by")), rows);
    }

    /** How many findings have a level. */
    public static long count(List<Finding> findings, Finding.Level level) {
        return findings.stream().filter(f -> f.level() == level).count();
    }
}
