// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A finding under the number it carries in every answer, table and drawing.
 *
 * @param number  letter of its discipline and a count, with a small letter where several are read as one
 *                ({@code L3}, {@code S2b})
 * @param finding the finding
 */
public record Numbered(String number, Finding finding) {
    private static final int LETTERS = 26;

    /**
     * Findings that are read as one: of one rule and one level.
     *
     * @param number  the number that they share
     * @param members the findings, the worst first; at least one
     */
    public record Block(String number, List<Numbered> members) {
        /** Copies the members. */
        public Block {
            members = List.copyOf(members);
        }

        /**
         * The worst of them.
         *
         * @return the first member
         */
        public Finding worst() {
            return members.get(0).finding;
        }

        /**
         * What they are about, in words.
         *
         * @return the subjects, the worst first, each once
         */
        public String subjects() {
            return members.stream().map(m -> m.finding.subject()).distinct().collect(Collectors.joining(", "));
        }

        /**
         * The words of a member, unless they say of it what the first one's say, but for names and figures.
         *
         * @param member one of the members
         * @return its text; empty where the first one's is enough
         */
        public String text(Numbered member) {
            return member != members.get(0) && pattern(member.finding).equals(pattern(worst())) ? ""
                    : member.finding.text();
        }

        /**
         * What to do about them.
         *
         * @return what to do, each remedy once
         */
        public String todo() {
            return members.stream().map(m -> m.finding.todo()).distinct().collect(Collectors.joining(" "));
        }

        private static String pattern(Finding finding) {
            String words = finding.text();
            List<String> names = new ArrayList<>(finding.parts());
            names.addAll(List.of(finding.subject().split("/")));
            for (String name : names) {
                words = words.replaceAll("\\b" + Pattern.quote(name) + "\\b", "@");
            }
            return words.replaceAll("-?[0-9][0-9.,]*", "#");
        }
    }

    /**
     * Puts findings in order, the worst first: by level, then by what they endanger, then by how far they are beyond
     * their limit; those of one rule and level stand together.
     *
     * @param findings the findings
     * @return the findings, each once
     */
    public static List<Finding> worstFirst(List<Finding> findings) {
        Comparator<Finding> badness = Comparator.comparing(Finding::level)
                .thenComparing((Finding f) -> f.rule().entry().danger())
                .thenComparing(f -> f.figures().beyond(), Comparator.reverseOrder())
                .thenComparing(f -> f.rule().id());
        Comparator<Finding> order = badness.thenComparing(Finding::id).thenComparing(Finding::text);
        Map<String, List<Finding>> blocks = new LinkedHashMap<>();
        findings.stream().distinct().sorted(order)
                .forEach(f -> blocks.computeIfAbsent(f.level() + f.group(), k -> new ArrayList<>()).add(f));
        return blocks.values().stream().flatMap(List::stream).toList();
    }

    /**
     * Numbers findings.
     *
     * @param findings the findings, in any order
     * @return the numbered findings, the worst first
     */
    public static List<Numbered> of(List<Finding> findings) {
        return blocks(findings).stream().flatMap(b -> b.members.stream()).toList();
    }

    /**
     * Numbers findings and puts together those that are read as one.
     *
     * @param findings the findings, in any order
     * @return the blocks, the worst first
     */
    public static List<Block> blocks(List<Finding> findings) {
        Map<String, List<Finding>> blocks = new LinkedHashMap<>();
        worstFirst(findings).forEach(f -> blocks.computeIfAbsent(f.level() + f.group(), k -> new ArrayList<>())
                .add(f));
        Map<Character, Integer> counts = new HashMap<>();
        List<Block> numbered = new ArrayList<>();
        for (List<Finding> block : blocks.values()) {
            char letter = block.get(0).rule().letter();
            String number = letter + Integer.toString(counts.merge(letter, 1, Integer::sum));
            List<Numbered> members = new ArrayList<>();
            for (int i = 0; i < block.size(); i++) {
                members.add(new Numbered(block.size() == 1 ? number : number + small(i), block.get(i)));
            }
            numbered.add(new Block(number, members));
        }
        return List.copyOf(numbered);
    }

    /** a, b, … z, aa, ab, … */
    private static String small(int index) {
        return (index < LETTERS ? "" : small(index / LETTERS - 1)) + (char) ('a' + index % LETTERS);
    }
}
