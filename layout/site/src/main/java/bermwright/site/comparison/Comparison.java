// SPDX-License-Identifier: Apache-2.0
package bermwright.site.comparison;

import bermwright.finding.Finding;
import bermwright.site.answer.AnswerTable;
import bermwright.site.answer.Answers;
import bermwright.site.answer.Figure;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.exposure.StationDose;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.planfile.KeyChanges;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What changed from one assessed plan to another.
 *
 * @param before   the older
 * @param after    the newer
 * @param keys     keys of the plan that state something else
 * @param findings findings that are gone, have come or say something else, known again by their id
 * @param figures  figures that read differently, in the digits in which people read them
 */
public record Comparison(Assessment before, Assessment after, List<KeyChanges.Change> keys,
        List<FindingChange> findings, List<FigureChange> figures) {
    /** Copies the lists. */
    public Comparison {
        keys = List.copyOf(keys);
        findings = List.copyOf(findings);
        figures = List.copyOf(figures);
    }

    /** What became of a finding. */
    public enum Fate {
        /** It was there and is not any more. */
        GONE,
        /** It was not there. */
        COME,
        /** It is still there with another level or other words. */
        CHANGED;

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A finding that is not as it was.
     *
     * @param id     its id
     * @param fate   what became of it
     * @param before the finding as it was; empty where it has come
     * @param after  the finding as it is; empty where it is gone
     */
    public record FindingChange(String id, Fate fate, Optional<Finding> before, Optional<Finding> after) {
    }

    /**
     * A figure that reads differently.
     *
     * @param of     what it is a figure of, such as a hull, a station or the whole site
     * @param figure its heading
     * @param key    its key in answers
     * @param unit   its unit as people write it; empty for a pure number
     * @param before its characters before; empty where there was none
     * @param after  its characters after; empty where there is none
     */
    public record FigureChange(String of, String figure, String key, String unit, String before, String after) {
    }

    /**
     * Compares two assessments.
     *
     * @param before the older
     * @param after  the newer
     * @return what changed
     */
    public static Comparison of(Assessment before, Assessment after) {
        return new Comparison(before, after, KeyChanges.of(before.plan(), after.plan()),
                findings(before.findings(), after.findings()), figures(before, after));
    }

    /**
     * Whether nothing is different.
     *
     * @return true where no key, finding or figure differs
     */
    public boolean isSame() {
        return keys.isEmpty() && findings.isEmpty() && figures.isEmpty();
    }

    private static List<FindingChange> findings(List<Finding> before, List<Finding> after) {
        Map<String, Finding> old = byId(before);
        Map<String, Finding> now = byId(after);
        List<FindingChange> changes = new ArrayList<>();
        now.forEach((id, finding) -> {
            Optional<Finding> was = Optional.ofNullable(old.get(id));
            if (was.isEmpty()) {
                changes.add(new FindingChange(id, Fate.COME, was, Optional.of(finding)));
            } else if (was.get().level() != finding.level() || !was.get().text().equals(finding.text())) {
                changes.add(new FindingChange(id, Fate.CHANGED, was, Optional.of(finding)));
            }
        });
        old.forEach((id, finding) -> {
            if (!now.containsKey(id)) {
                changes.add(new FindingChange(id, Fate.GONE, Optional.of(finding), Optional.empty()));
            }
        });
        return changes;
    }

    private static Map<String, Finding> byId(List<Finding> findings) {
        Map<String, Finding> byId = new LinkedHashMap<>();
        findings.forEach(f -> byId.putIfAbsent(f.id(), f));
        return byId;
    }

    private static List<FigureChange> figures(Assessment before, Assessment after) {
        List<FigureChange> changes = new ArrayList<>();
        compare(Answers.STATIONS, stations(before), stations(after), changes);
        compare(Answers.COVER, hulls(before, HullAssessment::cover), hulls(after, HullAssessment::cover), changes);
        compare(Answers.LOWERING, hulls(before, h -> h.laydown().flatMap(l -> l.lowering())),
                hulls(after, h -> h.laydown().flatMap(l -> l.lowering())), changes);
        compare(Answers.EARTHWORKS, site(before), site(after), changes);
        compare(Answers.MACHINES, machines(before), machines(after), changes);
        String was = days(before);
        String is = days(after);
        if (!was.equals(is)) {
            changes.add(new FigureChange("order of work", "length of the work", "stages.days", "days", was, is));
        }
        return changes;
    }

    private static <T> void compare(AnswerTable<T> table, Map<String, T> before, Map<String, T> after,
            List<FigureChange> changes) {
        Set<String> names = new LinkedHashSet<>(after.keySet());
        names.addAll(before.keySet());
        for (String name : names) {
            for (Figure<T> figure : table.figures()) {
                String was = Optional.ofNullable(before.get(name)).map(figure::text).orElse("");
                String is = Optional.ofNullable(after.get(name)).map(figure::text).orElse("");
                if (!was.equals(is)) {
                    changes.add(new FigureChange(name, figure.heading(), table.path() + "." + figure.key(),
                            figure.unit().map(u -> u.symbol()).orElse(""), was, is));
                }
            }
        }
    }

    private static Map<String, StationDose> stations(Assessment assessment) {
        Map<String, StationDose> stations = new LinkedHashMap<>();
        assessment.dose().ifPresent(d -> d.stations().forEach(s -> stations.put(s.name(), s)));
        return stations;
    }

    private static <T> Map<String, T> hulls(Assessment assessment,
            Function<HullAssessment, Optional<T>> part) {
        Map<String, T> hulls = new LinkedHashMap<>();
        assessment.hulls().forEach(h -> part.apply(h).ifPresent(p -> hulls.put(h.hull().id(), p)));
        return hulls;
    }

    private static Map<String, EarthworksResult> site(Assessment assessment) {
        return assessment.earthworks().map(e -> Map.of("the whole site", e)).orElse(Map.of());
    }

    private static Map<String, EarthworksResult.MachineDays> machines(Assessment assessment) {
        Map<String, EarthworksResult.MachineDays> machines = new LinkedHashMap<>();
        assessment.earthworks().ifPresent(e -> e.machineDays().forEach(m -> machines.put(m.machine(), m)));
        return machines;
    }

    private static String days(Assessment assessment) {
        return assessment.stages().map(s -> String.format(Locale.ROOT, "%.2f", s.days())).orElse("");
    }
}
