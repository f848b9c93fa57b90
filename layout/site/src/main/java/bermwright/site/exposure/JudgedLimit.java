// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.shielding.dose.Response;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
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
 * @param why   why the limit is not judged; empty where it is
 * @param by    the calculations its doses come from, one for each source it counts; none where no dose is known
 * @param held  the crew's dose, then that of somebody who never leaves a station, for each station that has a dose;
 *              the crew's is left out where it can't be known
 */
public record JudgedLimit(LimitInForce limit, String why, List<By> by, List<Held> held) {
    /** Who the crew is in {@link Held#who}. */
    public static final String CREW = "crew";
    private static final String NO_STATION = "the plan has no station, so nobody's dose is known";

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

    /** Whether a dose meets its limit. What is not judged is not met either. */
    public enum Verdict {
        /** The 84th percentile is at or below the limit. */
        MET("met"),
        /** The 84th percentile is above the limit. */
        NOT_MET("not met"),
        /** A part of the dose is missing, and what is known of it is not above the limit. */
        NOT_JUDGED("not judged");

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
     * @param dose    the dose over the limit's time from the limit's sources (Sv or Gy-Eq), as far as it is known
     * @param verdict whether it meets the limit
     * @param reason  why the verdict is not plainly met or not met; empty where it is
     */
    public record Held(String who, StationDose.Spread dose, Verdict verdict, String reason) {
        /**
         * The verdict and its reason.
         *
         * @return such as "not met: best value below the limit, 84th percentile above"
         */
        public String outcome() {
            return reason.isEmpty() ? verdict.word() : verdict.word() + ": " + reason;
        }

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
     * Whether the limit is met, which the crew's dose decides.
     *
     * @return the verdict on the crew's dose; not judged where that can't be known
     */
    public Verdict verdict() {
        return held.stream().filter(Held::isCrew).map(Held::verdict).findFirst().orElse(Verdict.NOT_JUDGED);
    }

    /**
     * Whether there is a verdict.
     *
     * @return false where {@code why} says why not
     */
    public boolean isJudged() {
        return verdict() != Verdict.NOT_JUDGED;
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

    static List<JudgedLimit> of(ExposurePlan exposure, People people, SiteDose.Outside outside,
            Optional<DoseSources.OfHull> responses) {
        List<JudgedLimit> limits = new ArrayList<>();
        for (LimitInForce limit : exposure.limitsInForce()) {
            String event = responses.isEmpty() ? "" : LimitFindings.noEvent(exposure, limit,
                    responses.get().in(limit.quantity()).event().isPresent());
            String why = !exposure.judges(limit) ? LimitFindings.NO_STAY : !people.why.isEmpty() ? people.why : event;
            boolean isKnown = exposure.judges(limit) && (event.isEmpty() || limit.countsCosmic());
            List<Held> held = new ArrayList<>();
            if (isKnown && people.why.isEmpty()) {
                held.add(held(limit, CREW, CrewDose.of(exposure, people.stations, outside, limit.quantity())
                        .against(limit), event));
            }
            people.stations.stream().filter(s -> isKnown).forEach(s -> held.add(held(limit,
                    s.hull() + "/" + s.station(), CrewDose.alone(exposure, s, limit), event)));
            boolean isCrewKnown = held.stream().anyMatch(h -> h.isCrew() && h.verdict != Verdict.NOT_JUDGED);
            limits.add(new JudgedLimit(limit, isCrewKnown ? "" : why.isEmpty() ? held.get(0).reason : why,
                    responses.filter(r -> isKnown).map(r -> by(limit, r)).orElse(List.of()), held));
        }
        return limits;
    }

    /**
     * Those whose doses are held against limits.
     *
     * @param stations the stations that have a dose
     * @param why      why the crew's dose is not known from them; empty where it is
     */
    record People(List<StationDose> stations, String why) {
        /** Those at the stations of a plan. */
        static People of(Plan plan, List<StationDose> stations) {
            List<String> without = plan.hulls().stream().flatMap(h -> h.stations().stream()
                    .map(s -> h.id() + "/" + s.id())).filter(id -> stations.stream()
                    .noneMatch(d -> id.equals(d.hull() + "/" + d.station()))).toList();
            return new People(stations, why(without, stations.isEmpty()));
        }

        /** Why the crew's dose is not known, from the stations without a dose and whether there is none with one. */
        static String why(List<String> without, boolean isNobodys) {
            return !without.isEmpty() ? "no dose could be worked out at " + String.join(", ", without)
                    : isNobodys ? NO_STATION : "";
        }
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

    /** What is known of a dose held against a limit; what is missing makes it only greater. */
    private static Held held(LimitInForce limit, String who, StationDose.Spread dose, String missing) {
        if (dose.best() > limit.limit()) {
            return new Held(who, dose, Verdict.NOT_MET, missing);
        } else if (!missing.isEmpty()) {
            return new Held(who, dose, Verdict.NOT_JUDGED, missing);
        } else if (!Double.isFinite(dose.high()) || !Double.isFinite(dose.best())) {
            return new Held(who, dose, Verdict.NOT_JUDGED, "the dose could not be worked out");
        }
        return dose.high() <= limit.limit() ? new Held(who, dose, Verdict.MET, "")
                : new Held(who, dose, Verdict.NOT_MET, "best value below the limit, 84th percentile above");
    }
}
