// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.report.drawing.Drawing;
import bermwright.report.map.MapItem;
import bermwright.report.map.MapSheet;
import bermwright.report.map.MapStyle;
import bermwright.report.map.MapWindow;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.assessment.Assessment;
import bermwright.site.comparison.Comparison;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.judgement.Judgements;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What changed from one plan to another, as tables and as a drawing with both outlines; also for the editor.
 *
 * @param comparison what changed
 */
public record ReviewRound(Comparison comparison) {
    private static final Set<ShapeKind> SHOWN = EnumSet.of(ShapeKind.LYING, ShapeKind.STANDING, ShapeKind.SWEEP,
            ShapeKind.COVER_TOE);
    private static final double MARGIN = 15;

    /** How much changed, in a sentence or two. */
    public String words() {
        if (comparison.isSame()) {
            return "Nothing changed: no key, no finding and no figure.";
        }
        return comparison.keys().size() + " keys of the plan state something else. Findings: "
                + count(Comparison.Fate.GONE) + " gone, " + count(Comparison.Fate.COME) + " come, "
                + count(Comparison.Fate.CHANGED) + " changed. " + comparison.figures().size()
                + " figures read differently.";
    }

    private long count(Comparison.Fate fate) {
        return comparison.findings().stream().filter(f -> f.fate() == fate).count();
    }

    /** The keys that state something else. */
    public Table keys() {
        return new Table("changed-keys", "Keys of the plan", List.of(Column.words("key", "key"),
                Column.words("before", "before"), Column.words("after", "after")), comparison.keys().stream()
                .map(k -> List.of(k.key(), k.before(), k.after())).toList());
    }

    /** The findings that are gone, have come or changed. */
    public Table findings() {
        return new Table("changed-findings", "Findings", List.of(Column.words("fate", "has"),
                Column.words("id", "finding"), Column.words("level_before", "level before"),
                Column.words("level_after", "level now"), Column.words("before", "said before"),
                Column.words("after", "says now")), comparison.findings().stream().map(f -> List.of(f.fate().word(),
                f.id(), level(f.before()), level(f.after()), f.before().map(Finding::text).orElse(""),
                f.after().map(Finding::text).orElse(""))).toList());
    }

    private static String level(Optional<Finding> finding) {
        return finding.map(f -> f.level().word()).orElse("");
    }

    /** The figures of dose, cover, lowering, volumes and hours that read differently. */
    public Table figures() {
        List<List<String>> rows = new ArrayList<>();
        comparison.figures().forEach(f -> rows.add(List.of(f.of(), f.figure(), f.unit(), f.before(), f.after(),
                difference(f))));
        return new Table("changed-figures", "Figures", List.of(Column.words("of", "of"),
                Column.words("figure", "figure"), Column.words("unit", "unit"), Column.words("before", "before"),
                Column.words("after", "now"), Column.words("difference", "difference")), rows);
    }

    private static String difference(Comparison.FigureChange change) {
        try {
            double difference = Double.parseDouble(change.after()) - Double.parseDouble(change.before());
            int point = change.after().indexOf('.');
            return (difference > 0 ? "+" : "") + Words.fixed(difference, point < 0 ? 0
                    : change.after().length() - point - 1);
        } catch (NumberFormatException words) {
            return "";
        }
    }

    /** Hulls, sweeps and toes of both plans where they differ; empty where none does. */
    public Optional<Drawing> drawing() {
        List<MapItem> items = new ArrayList<>();
        List<Shape> old = shown(comparison.before());
        List<Shape> now = shown(comparison.after());
        old.stream().filter(s -> now.stream().noneMatch(n -> same(s, n))).forEach(s -> items.add(new MapItem.Area(
                MapStyle.BEFORE, s.kind() == ShapeKind.LYING ? s.subject() + ", before" : "", s.outline())));
        if (items.isEmpty() && now.stream().allMatch(n -> old.stream().anyMatch(s -> same(s, n)))) {
            return Optional.empty();
        }
        comparison.after().shapes().hulls().forEach(h -> items.addAll(SiteMap.bodies(h)));
        now.stream().filter(s -> s.kind() == ShapeKind.SWEEP || s.kind() == ShapeKind.STANDING).forEach(s ->
                items.add(new MapItem.Area(s.kind() == ShapeKind.SWEEP ? MapStyle.SWEEP : MapStyle.STANDING_HULL, "",
                        s.outline())));
        List<Point> places = items.stream().flatMap(i -> i.places().stream()).toList();
        Assessment after = comparison.after();
        return Optional.of(new MapSheet("changes", "Before and now", MapWindow.around(places, MARGIN),
                after.ground().grid(), after.ground().file().scale().trueNorth(), items, List.of()).drawing());
    }

    private static boolean same(Shape a, Shape b) {
        return a.kind() == b.kind() && a.subject().equals(b.subject()) && a.outline().equals(b.outline());
    }

    private static List<Shape> shown(Assessment assessment) {
        Stream<HullShapes> hulls = assessment.shapes().hulls().stream();
        return hulls.flatMap(h -> h.shapes().stream()).filter(s -> SHOWN.contains(s.kind())).toList();
    }

    /**
     * The judgements, with whether each still stands.
     *
     * @param judgements the judgements
     * @return the table
     */
    public static Table judgements(List<Judgements.Standing> judgements) {
        return new Table("judgements", "Judgements", List.of(Column.words("of", "of"),
                Column.words("decision", "decision"), Column.words("name", "name"), Column.words("date", "date"),
                Column.words("revision", "revision"), Column.words("remark", "remark"),
                Column.words("state", "for this plan"), Column.words("judged_on", "judged on")), judgements.stream()
                .map(s -> List.of(s.judgement().of(), s.judgement().decision().word(), s.judgement().name(),
                        s.judgement().date().toString(), s.judgement().revision().orElse(""),
                        s.judgement().remark().orElse(""), s.state().words(), s.judgement().judgedOn())).toList());
    }
}
