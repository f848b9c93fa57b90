// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.shielding.spectrum.Sun;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How long people stay, under which sun, against which limits.
 *
 * @param stayDays          length of the stay (days), above zero
 * @param hoursOutsideADay  hours a day outside the hulls (h), 0 to 24
 * @param timeToShelter     time from the first warning of an event until all of the crew are in the shelter (s), zero
 *                          or more; empty where the plan does not say, and no time is counted
 * @param solarActivity     minimum or maximum; empty where a modulation is given alone
 * @param solarDate         day whose place in the sunspot cycle gives the modulation; stands over the solar activity
 * @param modulationW       solar modulation index (1), 0 to 200; stands over the solar date and the solar activity
 * @param event             name of the solar particle event; empty for none
 * @param eventSpectrumFile own event spectrum, as a path beside the plan; stands over the event
 * @param eventFit          the event by the figures of a published fit; stands over the file and the name
 * @param response          {@code built in}, or a response table as a path beside the plan
 * @param moreResponses     response tables of other quantities or the other time, as paths beside the plan
 * @param limits            limits to be met
 * @param people            named persons, each judged by itself beside the crew
 * @param hazards           what covers are judged for besides radiation
 * @param annotations       note, own keys and the keys given
 */
public record ExposurePlan(double stayDays, double hoursOutsideADay, OptionalDouble timeToShelter,
        Optional<SolarActivity> solarActivity,
        Optional<LocalDate> solarDate, OptionalDouble modulationW, Optional<String> event,
        Optional<String> eventSpectrumFile, Optional<EventFit> eventFit, String response,
        List<String> moreResponses, List<Limit> limits, List<Person> people, HazardPlan hazards,
        Annotations annotations) {
    /** Copies the lists. */
    public ExposurePlan {
        moreResponses = List.copyOf(moreResponses);
        limits = List.copyOf(limits);
        people = List.copyOf(people);
    }

    /** Presets of solar activity. */
    public enum SolarActivity {
        /** Solar minimum, modulation index 10: the most cosmic rays. */
        MINIMUM,
        /** Solar maximum, modulation index 100. */
        MAXIMUM;

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What a limit counts. */
    public enum From {
        /** Cosmic rays. */
        COSMIC("cosmic rays"),
        /** The solar particle event. */
        EVENT("a solar particle event"),
        /** Both. */
        ALL("all sources");

        private final String words;

        From(String words) {
            this.words = words;
        }

        /**
         * What it is, in words.
         *
         * @return such as "a solar particle event"
         */
        public String words() {
            return words;
        }

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The time a limit runs over. */
    public enum Over {
        /** The whole stay. */
        STAY("stay", "the whole stay"),
        /** One event. */
        EVENT("event", "one event"),
        /** Any day. */
        DAY("1 day", "any day"),
        /** Any thirty days. */
        THIRTY_DAYS("30 days", "any 30 days"),
        /** Any year. */
        YEAR("1 year", "any year"),
        /** All that a person ever gets at work in space; the stay is what the plan knows of it. */
        CAREER("career", "a career");

        private static final double YEAR_DAYS = 365.25;

        private final String word;
        private final String words;

        Over(String word, String words) {
            this.word = word;
            this.words = words;
        }

        /**
         * The time in words, as a sentence has it.
         *
         * @return such as "the whole stay"
         */
        public String words() {
            return words;
        }

        /**
         * How much of a stay falls into the time that a limit runs over.
         *
         * @param stayDays length of the stay (days), above zero
         * @return days counted (days): all of the stay for a stay, an event and a career, at most the stay
         */
        public double days(double stayDays) {
            return switch (this) {
                case DAY -> Math.min(stayDays, 1);
                case THIRTY_DAYS -> Math.min(stayDays, 30);
                case YEAR -> Math.min(stayDays, YEAR_DAYS);
                case STAY, EVENT, CAREER -> stayDays;
            };
        }

        /**
         * The word used in files and pages.
         *
         * @return the word
         */
        public String word() {
            return word;
        }
    }

    /**
     * A limit as the plan gives it: by value, by the name of a published limit, or both; {@link LimitInForce} says what
     * then holds.
     *
     * @param published name of a published limit; empty where the limit is the plan's own
     * @param quantity  {@code effective dose}, or the gray equivalent of skin, eye or blood-forming organs
     * @param from      what it counts
     * @param over      the time it runs over
     * @param limit     the limit (Sv; Gy-Eq for gray equivalents), above zero
     * @param source    where the limit is from
     * @param annotations      note, own keys and the keys given
     */
    public record Limit(Optional<String> published, Optional<String> quantity, Optional<From> from,
            Optional<Over> over, OptionalDouble limit, Optional<String> source, Annotations annotations) {
    }

    /**
     * The limits that hold.
     *
     * @return one for each limit of the plan, in its order
     */
    public List<LimitInForce> limitsInForce() {
        return limits.stream().map(LimitInForce::of).toList();
    }

    /**
     * The limits that doses are held against.
     *
     * @return the limits in force, in the plan's order, without those that {@link #judges} leaves out
     */
    public List<LimitInForce> judgedLimits() {
        return limitsInForce().stream().filter(this::judges).toList();
    }

    /**
     * Whether doses can be held against a limit.
     *
     * @param limit the limit
     * @return false for a limit over a career where the plan gives no length of stay: the default length is nobody's
     */
    public boolean judges(LimitInForce limit) {
        return limit.over() != Over.CAREER || annotations.given().contains("stay_days");
    }

    /**
     * The modulation index in force.
     *
     * @return modulation index W (1): the given one, else that of the solar date, else 10 for minimum and 100 for
     *     maximum
     */
    public double modulation() {
        double preset = solarActivity.orElse(SolarActivity.MINIMUM) == SolarActivity.MINIMUM ? 10 : 100;
        return modulationW.orElse(solarDate.map(bermwright.shielding.spectrum.SolarActivity::modulationW)
                .orElse(preset));
    }

    /**
     * The sun in force, with how far it may be off.
     *
     * @return the sun of the modulation given, else of the solar date, else of the preset
     */
    public Sun sun() {
        return dayInForce().map(Sun::at).orElseGet(() -> Sun.of(modulation()));
    }

    /**
     * Whether the plan says which event is counted.
     *
     * @return true where it gives a fit, a file or a name
     */
    public boolean namesEvent() {
        return eventFit.isPresent() || eventSpectrumFile.isPresent() || event.isPresent();
    }

    /**
     * The day that the modulation in force is that of.
     *
     * @return the day; empty where a modulation or a preset stands
     */
    public Optional<LocalDate> dayInForce() {
        return modulationW.isPresent() ? Optional.empty() : solarDate;
    }
}
