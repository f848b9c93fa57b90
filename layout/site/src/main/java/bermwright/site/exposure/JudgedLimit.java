// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A limit of the plan and the doses that are held against it.
 *
 * @param limit the limit
 * @param why   why no dose is held against it; empty where doses are
 * @param held  the crew's dose, then that of somebody who never leaves a station, for each station; none where the
 *              limit is not judged or no station has a dose
 */
public record JudgedLimit(LimitInForce limit, String why, List<Held> held) {
    /** Who the crew is in {@link Held#who}. */
    public static final String CREW = "crew";

    /** Copies the list. */
    public JudgedLimit {
        held = List.copyOf(held);
    }

    /** Whether a dose meets its limit. */
    public enum Verdict {
        /** The 84th percentile is at or below the limit. */
        MET("met"),
        /** The best value is at or below the limit, the 84th percentile above. */
        IF_NOT_HIGH("best below, high above"),
        /** The best value is above the limit. */
        NOT_MET("NOT met");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /**
         * The words used in files and pages.
         *
         * @return the words
         */
        public String word() {
            return word;
        }
    }

    /**
     * A dose held against the limit.
     *
     * @param who     whose dose: {@link #CREW}, or a station as hull/station
     * @param dose    the dose over the limit's time from the limit's sources (Sv or Gy-Eq)
     * @param verdict whether it meets the limit
     */
    public record Held(String who, StationDose.Spread dose, Verdict verdict) {
        /**
         * Whose dose, in words.
         *
         * @return the crew as planned, or somebody who stays at a station all the time
         */
        public String words() {
            return isCrew() ? "crew, sharing time as planned" : who + " alone";
        }

        /**
         * Whether it is the crew's dose, which decides.
         *
         * @return false for somebody who stays at one station all the time
         */
        public boolean isCrew() {
            return who.equals(CREW);
        }
    }

    /**
     * Whether doses are held against the limit.
     *
     * @return false where {@code why} says why not
     */
    public boolean isJudged() {
        return why.isEmpty();
    }

    /**
     * The crew's dose and the greatest one of somebody who never leaves a station.
     *
     * @return one or two doses; none where none is held against the limit
     */
    public List<Held> crewAndWorst() {
        return Stream.concat(held.stream().filter(Held::isCrew), held.stream().filter(h -> !h.isCrew())
                .max(Comparator.comparingDouble(h -> h.dose().high())).stream()).toList();
    }

    static List<JudgedLimit> of(ExposurePlan exposure, List<StationDose> stations, SiteDose.Outside outside) {
        List<JudgedLimit> limits = new ArrayList<>();
        for (LimitInForce limit : exposure.limitsInForce()) {
            List<Held> held = new ArrayList<>();
            boolean isJudged = exposure.judges(limit);
            if (isJudged && !stations.isEmpty()) {
                held.add(held(limit, CREW, CrewDose.of(exposure, stations, outside, limit.quantity())
                        .against(limit)));
                stations.forEach(s -> held.add(held(limit, s.hull() + "/" + s.station(),
                        CrewDose.alone(exposure, s, limit))));
            }
            limits.add(new JudgedLimit(limit, isJudged ? "" : LimitFindings.NO_STAY, held));
        }
        return limits;
    }

    private static Held held(LimitInForce limit, String who, StationDose.Spread dose) {
        return new Held(who, dose, dose.high() <= limit.limit() ? Verdict.MET
                : dose.best() <= limit.limit() ? Verdict.IF_NOT_HIGH : Verdict.NOT_MET);
    }
}
