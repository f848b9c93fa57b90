// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.shielding.dose.Response;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A limit of the plan and the doses that are held against it.
 *
 * @param limit the limit
 * @param why   why no dose is held against it; empty where doses are
 * @param by    the calculations its doses come from, one for each source it counts; none where no dose is known
 * @param held  the crew's dose, then that of somebody who never leaves a station, for each station; none where the
 *              limit is not judged or no station has a dose
 */
public record JudgedLimit(LimitInForce limit, String why, List<By> by, List<Held> held) {
    /** Who the crew is in {@link Held#who}. */
    public static final String CREW = "crew";
    private static final String NO_DOSE = "no station has a dose";

    /** Copies the lists. */
    public JudgedLimit {
        by = List.copyOf(by);
        held = List.copyOf(held);
    }

    /**
     * The calculation behind the doses of one source.
     *
     * @param source     cosmic rays, or event
     * @param model      whose response it is, in words
     * @param isReviewed whether a reviewer handed the response over
     */
    public record By(String source, String model, boolean isReviewed) {
        private static By of(String source, Response response) {
            return new By(source, response.isHandedOver() ? response.note().model() : "built-in calculation",
                    response.isHandedOver());
        }
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
     * The unit that limit and doses are shown in.
     *
     * @return mSv, or mGy-Eq for gray equivalents
     */
    public String unit() {
        return StationDose.milli(limit.quantity());
    }

    /**
     * The calculations that the doses come from, in words.
     *
     * @return one model where all sources have the same, else each with its source
     */
    public String calculation() {
        return by.stream().map(By::model).distinct().count() == 1 ? by.get(0).model()
                : by.stream().map(b -> b.source() + ": " + b.model()).collect(Collectors.joining("; "));
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

    static List<JudgedLimit> of(ExposurePlan exposure, List<StationDose> stations, SiteDose.Outside outside,
            Optional<DoseSources.OfHull> responses) {
        List<JudgedLimit> limits = new ArrayList<>();
        for (LimitInForce limit : exposure.limitsInForce()) {
            List<Held> held = new ArrayList<>();
            String why = !exposure.judges(limit) ? LimitFindings.NO_STAY : stations.isEmpty() ? NO_DOSE : "";
            if (why.isEmpty()) {
                held.add(held(limit, CREW, CrewDose.of(exposure, stations, outside, limit.quantity())
                        .against(limit)));
                stations.forEach(s -> held.add(held(limit, s.hull() + "/" + s.station(),
                        CrewDose.alone(exposure, s, limit))));
            }
            limits.add(new JudgedLimit(limit, why,
                    responses.filter(r -> why.isEmpty()).map(r -> by(limit, r)).orElse(List.of()), held));
        }
        return limits;
    }

    /** Where the doses that a limit counts come from. */
    static List<By> by(LimitInForce limit, DoseSources.OfHull responses) {
        DoseSources.OfQuantity of = responses.in(limit.quantity());
        List<By> by = new ArrayList<>();
        if (limit.countsCosmic()) {
            by.add(By.of("cosmic rays", of.cosmic()));
        }
        of.event().filter(e -> limit.countsEvent()).ifPresent(e -> by.add(By.of("event", e)));
        return by;
    }

    private static Held held(LimitInForce limit, String who, StationDose.Spread dose) {
        return new Held(who, dose, dose.high() <= limit.limit() ? Verdict.MET
                : dose.best() <= limit.limit() ? Verdict.IF_NOT_HIGH : Verdict.NOT_MET);
    }
}
