// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.Verdict;
import bermwright.shielding.dose.Response;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Person;
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
 * @param held  the crew's dose, then those of the plan's named persons, then that of somebody who never leaves a
 *              station, for each station that has a dose; the crew's is left out where it can't be known
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

    /**
     * A dose held against the limit.
     *
     * @param who     whose dose: {@link #CREW}, a person, or a station as hull/station
     * @param whose   crew, named person, or somebody who never leaves a station
     * @param dose    the dose over the limit's time from the limit's sources (Sv or Gy-Eq), as far as it is known
     * @param verdict whether it meets the limit
     * @param reason  why the verdict is not plainly met or not met; empty where it is
     */
    public record Held(String who, Whose whose, StationDose.Spread dose, Verdict verdict, String reason) {
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
         * @return the crew as planned, a named person, or somebody who stays at a station all the time
         */
        public String words() {
            return switch (whose) {
                case CREW -> "crew, sharing time as planned";
                case PERSON -> who + ", with own hours";
                case ALONE -> who + " alone";
            };
        }

        /**
         * Whether the verdict on this dose decides the limit.
         *
         * @return true for the crew and for named persons
         */
        public boolean decides() {
            return whose != Whose.ALONE;
        }

        /**
         * Whether it is the crew's dose.
         *
         * @return false for a named person and for somebody who stays at one station all the time
         */
        public boolean isCrew() {
            return whose == Whose.CREW;
        }
    }

    /** Whose dose is held against a limit. */
    public enum Whose {
        /** The crew, sharing its time as planned. */
        CREW,
        /** A named person of the plan. */
        PERSON,
        /** Somebody who never leaves a station. */
        ALONE;

        /**
         * The word used in files.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * Whether the limit is met, which the doses of the crew and of each named person decide.
     *
     * @return not met where any of them does not meet it; not judged where one of them is not, or the crew's dose can't
     *     be known
     */
    public Verdict verdict() {
        List<Verdict> verdicts = held.stream().filter(Held::decides).map(Held::verdict).toList();
        return verdicts.contains(Verdict.NOT_MET) ? Verdict.NOT_MET
                : verdicts.contains(Verdict.NOT_JUDGED) || held.stream().noneMatch(Held::isCrew) ? Verdict.NOT_JUDGED
                : Verdict.MET;
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
     * The doses of crew and named persons, and the greatest one of somebody who never leaves a station.
     *
     * @return the doses; none where none is held against the limit
     */
    public List<Held> decidingAndWorst() {
        return Stream.concat(held.stream().filter(Held::decides), held.stream().filter(h -> !h.decides())
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
                held.add(held(limit, new Who(CREW, Whose.CREW), CrewDose.of(exposure, people.stations, outside,
                        limit.quantity()).against(limit), event));
            }
            if (isKnown && !people.stations.isEmpty()) {
                held.addAll(persons(exposure, new PersonDose.At(people.stations, outside, limit.quantity()), limit,
                        event));
            }
            people.stations.stream().filter(s -> isKnown).forEach(s -> held.add(held(limit,
                    new Who(s.name(), Whose.ALONE), CrewDose.alone(exposure, s, limit), event)));
            limits.add(new JudgedLimit(limit, whyNot(held, why), responses.filter(r -> isKnown).map(r -> by(limit, r))
                    .orElse(List.of()), held));
        }
        return limits;
    }

    private static List<Held> persons(ExposurePlan exposure, PersonDose.At at, LimitInForce limit, String event) {
        List<Held> held = new ArrayList<>();
        for (Person person : exposure.people()) {
            PersonDose dose = PersonDose.of(exposure, at, person);
            held.add(held(limit, new Who(person.id(), Whose.PERSON), dose.against(limit),
                    event.isEmpty() ? dose.missing(limit) : event));
        }
        return held;
    }

    /** Why there is no verdict, from the doses and from why the crew's is not known; empty where there is one. */
    private static String whyNot(List<Held> held, String crew) {
        List<Held> deciding = held.stream().filter(Held::decides).toList();
        if (deciding.stream().anyMatch(h -> h.verdict == Verdict.NOT_MET)) {
            return "";
        }
        boolean isCrewKnown = deciding.stream().anyMatch(h -> h.isCrew() && h.verdict != Verdict.NOT_JUDGED);
        return !isCrewKnown && !crew.isEmpty() ? crew : deciding.stream()
                .filter(h -> h.verdict == Verdict.NOT_JUDGED).findFirst().map(Held::reason)
                .orElse(isCrewKnown || held.isEmpty() ? "" : held.get(0).reason);
    }

    private record Who(String name, Whose whose) {
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
                    .map(s -> h.named(s.id()))).filter(id -> stations.stream()
                    .noneMatch(d -> id.equals(d.name()))).toList();
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
    private static Held held(LimitInForce limit, Who who, StationDose.Spread dose, String missing) {
        String name = who.name;
        if (dose.best() > limit.limit()) {
            return new Held(name, who.whose, dose, Verdict.NOT_MET, missing);
        } else if (!missing.isEmpty()) {
            return new Held(name, who.whose, dose, Verdict.NOT_JUDGED, missing);
        } else if (!Double.isFinite(dose.high()) || !Double.isFinite(dose.best())) {
            return new Held(name, who.whose, dose, Verdict.NOT_JUDGED, "the dose could not be worked out");
        }
        return dose.high() <= limit.limit() ? new Held(name, who.whose, dose, Verdict.MET, "")
                : new Held(name, who.whose, dose, Verdict.NOT_MET, "best value below the limit, 84th percentile above");
    }
}
