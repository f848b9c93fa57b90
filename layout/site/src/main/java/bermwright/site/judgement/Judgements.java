// SPDX-License-Identifier: Apache-2.0
package bermwright.site.judgement;

import bermwright.finding.Finding;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.Annotations;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * All judgements on a plan, the oldest first; of two on the same thing by the same person the later stands.
 *
 * @param judgements  the judgements
 * @param annotations note, own keys and the keys given
 */
public record Judgements(List<Judgement> judgements, Annotations annotations) {
    /** No judgement yet. */
    public static final Judgements NONE = new Judgements(List.of(), Annotations.NOTHING);
    private static final double MILLI = 1000;

    /** Copies the judgements. */
    public Judgements {
        judgements = List.copyOf(judgements);
    }

    /** How a judgement relates to the plan as it now is. */
    public enum State {
        /** What was judged says the same now. */
        STANDS("stands"),
        /** The same finding or station now says something else: judge it anew. */
        CHANGED("JUDGE ANEW: what was judged has changed"),
        /** The finding or station is no longer there. */
        GONE("what was judged is gone");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /**
         * The state in words.
         *
         * @return the words
         */
        public String words() {
            return words;
        }
    }

    /**
     * A judgement beside the plan as it now is.
     *
     * @param judgement the judgement
     * @param state     whether it stands
     */
    public record Standing(Judgement judgement, State state) {
        /**
         * Judgement and state in words.
         *
         * @return the words
         */
        public String words() {
            return judgement.words() + (state == State.STANDS ? "" : " — " + state.words);
        }
    }

    /**
     * These judgements with one more.
     *
     * @param judgement the judgement
     * @return the longer list
     */
    public Judgements with(Judgement judgement) {
        List<Judgement> more = new ArrayList<>(judgements);
        more.add(judgement);
        return new Judgements(more, annotations);
    }

    /**
     * What can be judged, with what it says now.
     *
     * @param findings the findings
     * @param stations the doses at the stations
     * @return words by id: of each finding, and of each station as hull/station
     */
    public static Map<String, String> judged(List<Finding> findings, List<StationDose> stations) {
        Map<String, String> words = new LinkedHashMap<>();
        findings.forEach(f -> words.put(f.id(), f.level().word() + ": " + f.text()));
        stations.forEach(s -> words.put(s.name(), String.format(Locale.ROOT,
                "%s %.1f mSv, low %.1f, high %.1f", StationDose.QUANTITY, s.covered().best() * MILLI,
                s.covered().low() * MILLI, s.covered().high() * MILLI)));
        return words;
    }

    /**
     * The judgements that count, beside what can be judged now.
     *
     * @param now words by id, as {@link #judged} gives them
     * @return the latest judgement of each person on each thing, in the order in which they were made
     */
    public List<Standing> standing(Map<String, String> now) {
        Map<String, Judgement> latest = new LinkedHashMap<>();
        for (Judgement judgement : judgements) {
            String key = judgement.of() + "\n" + judgement.name();
            latest.remove(key);
            latest.put(key, judgement);
        }
        return latest.values().stream().map(j -> new Standing(j, Optional.ofNullable(now.get(j.of()))
                .map(w -> w.equals(j.judgedOn()) ? State.STANDS : State.CHANGED).orElse(State.GONE))).toList();
    }
}
