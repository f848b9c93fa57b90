// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.finding.Sentence;
import bermwright.report.reader.Reader;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The findings as a list shows them: left out, searched and put together as asked. */
public final class FindingBoard {
    /** What findings about the whole plan stand under. */
    public static final String WHOLE_PLAN = "the whole plan";

    private FindingBoard() {
    }

    /** How findings are put together. */
    public enum Grouping {
        /** Those of one rule and level. */
        CAUSE("by cause"),
        /** Those about one hull, with its stations and gear; else about one other thing. */
        HULL("by hull"),
        /** Not at all. */
        NONE("one by one");

        private final String words;

        Grouping(String words) {
            this.words = words;
        }

        /**
         * The grouping in words.
         *
         * @return the words
         */
        public String words() {
            return words;
        }
    }

    /**
     * Which findings are to be seen.
     *
     * @param levels  their levels
     * @param about   what they are about, as {@link #about}; empty for all
     * @param reader  who decides them; empty for all
     * @param search  words that each must hold, in any order; capitals do not matter
     * @param hidden  ids of findings left out, such as accepted ones
     */
    public record Filter(Set<Finding.Level> levels, Optional<String> about, Optional<Reader> reader, String search,
            Set<String> hidden) {
        /** Everything. */
        public static final Filter ALL = new Filter(EnumSet.allOf(Finding.Level.class), Optional.empty(),
                Optional.empty(), "", Set.of());

        /** Copies the sets. */
        public Filter {
            levels = Set.copyOf(levels);
            hidden = Set.copyOf(hidden);
        }

        /**
         * Whether a finding is to be seen.
         *
         * @param plan     the plan
         * @param numbered the finding
         * @return true where it is
         */
        public boolean keeps(Plan plan, Numbered numbered) {
            Finding finding = numbered.finding();
            String all = (numbered.number() + " " + finding.subject() + " " + finding.rule().id() + " "
                    + cause(finding) + " " + finding.text() + " " + finding.todo()).toLowerCase(Locale.ROOT);
            boolean isFound = true;
            for (String word : search.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
                isFound = isFound && all.contains(word);
            }
            return isFound && levels.contains(finding.level()) && !hidden.contains(finding.id())
                    && about.filter(a -> !a.equals(FindingBoard.about(plan, finding))).isEmpty()
                    && reader.filter(r -> !r.decides(finding)).isEmpty();
        }
    }

    /**
     * Findings under one heading.
     *
     * @param key     what tells the group apart from others, the same after an edit
     * @param heading the heading
     * @param members the findings, the worst first; at least one
     */
    public record Group(String key, String heading, List<Numbered> members) {
        /** Copies the members. */
        public Group {
            members = List.copyOf(members);
        }

        /**
         * The worst level in it.
         *
         * @return the level
         */
        public Finding.Level worst() {
            return members.stream().map(n -> n.finding().level()).min(Enum::compareTo).orElseThrow();
        }

        /**
         * How many findings of each level it holds.
         *
         * @return such as "1 refuse, 3 warn"
         */
        public String counts() {
            List<String> counts = new ArrayList<>();
            for (Finding.Level level : Finding.Level.values()) {
                long count = members.stream().filter(n -> n.finding().level() == level).count();
                if (count > 0) {
                    counts.add(count + " " + level.word());
                }
            }
            return String.join(", ", counts);
        }
    }

    /**
     * The groups to be shown.
     *
     * @param plan     the plan
     * @param findings the findings, the worst first
     * @param filter   which are to be seen
     * @param grouping how they are put together
     * @return the groups, that of the worst finding first; one with an empty heading where they are not put together
     */
    public static List<Group> groups(Plan plan, List<Numbered> findings, Filter filter, Grouping grouping) {
        Map<String, List<Numbered>> groups = new LinkedHashMap<>();
        Map<String, String> headings = new LinkedHashMap<>();
        for (Numbered numbered : findings) {
            if (filter.keeps(plan, numbered)) {
                Finding finding = numbered.finding();
                String heading = grouping == Grouping.CAUSE ? cause(finding)
                        : grouping == Grouping.HULL ? about(plan, finding) : "";
                String key = grouping == Grouping.CAUSE ? finding.level().word() + " " + finding.rule().id() : heading;
                groups.computeIfAbsent(key, k -> new ArrayList<>()).add(numbered);
                headings.putIfAbsent(key, heading);
            }
        }
        List<Group> all = new ArrayList<>();
        groups.forEach((key, members) -> all.add(new Group(key, headings.get(key), members)));
        return all;
    }

    /**
     * What a finding is about: a hull with all that is its own, or another thing of the plan.
     *
     * @param plan    the plan
     * @param finding the finding
     * @return such as {@code Hull A}; {@link #WHOLE_PLAN} where it is about no one thing
     */
    public static String about(Plan plan, Finding finding) {
        return Part.bySubject(plan, finding.subject()).map(Part::words).orElse(finding.subject().isBlank() ? WHOLE_PLAN
                : finding.subject());
    }

    /** What the rule measures, as a heading. */
    private static String cause(Finding finding) {
        String words = finding.rule().entry().measures();
        return words.isEmpty() ? finding.rule().id() : Sentence.begin(words);
    }
}
