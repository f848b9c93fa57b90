// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static bermwright.site.answer.AnswerTable.within;
import static bermwright.site.answer.Figure.flag;
import static bermwright.site.answer.Figure.of;
import static bermwright.site.answer.Figure.said;
import static bermwright.site.answer.Figure.words;

import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.DoseCurve;
import bermwright.shielding.dose.DoseLimit;
import bermwright.shielding.dose.Particles;
import bermwright.shielding.dose.PublishedDose;
import bermwright.shielding.fold.DoseUncertainty;
import bermwright.site.answer.AnswerTable.Part;
import bermwright.site.exposure.CrewDose;
import bermwright.site.exposure.DoseAgainstCover;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.PersonDose;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Tables of doses: their spread, the limits they are held against, the crew's own, and dose against cover. */
public final class DoseAnswers {
    /** Days in a year (1). */
    public static final double YEAR_DAYS = 365.25;
    private static final AnswerTable<Term> TERMS = within("What makes it uncertain, each by itself.", List.of(
            words("term", "term", (Term t) -> t.term.word()),
            of("low_factor", "16th percentile over best", Unit.ONE, (Term t) -> t.band.low()),
            of("high_factor", "84th percentile over best", Unit.ONE, (Term t) -> t.band.high())));
    /** What low and high are made of, and which term is the greatest. */
    public static final AnswerTable<DoseUncertainty> UNCERTAINTY = within("What makes it uncertain.", List.of(
            words("greatest", "mostly by", (DoseUncertainty u) -> u.greatest().word()))).with(List.of(
            Part.all("terms", TERMS, u -> Arrays.stream(DoseUncertainty.Term.values()).map(t -> new Term(t, u.of(t)))
                    .toList())));
    /** A dose with its percentiles. */
    public static final AnswerTable<StationDose.Spread> SPREAD = within("A dose with its percentiles.", List.of(
            of("best_mSv", "best", Unit.MSV, StationDose.Spread::best),
            of("low_mSv", "low, 16th percentile", Unit.MSV, StationDose.Spread::low),
            of("high_mSv", "high, 84th percentile", Unit.MSV, StationDose.Spread::high)));
    private static final AnswerTable<StationDose.Parts> SPREADS = within("The spread by source.",
            List.<Figure<StationDose.Parts>>of()).with(List.of(
            Part.one("cosmic", spread(), p -> new Spread(p.cosmicAll(), p.uncertainties().cosmic())),
            Part.maybe("event", spread(), p -> p.uncertainties().event().map(u -> new Spread(p.eventAll(), u)))));
    /** A station's dose, whole. */
    public static final AnswerTable<StationDose> STATION = Answers.STATIONS.and(List.of(
            words("quantity", "quantity", (StationDose d) -> StationDose.QUANTITY),
            Figure.list("place", "place: east, north, height (m)", (StationDose d) ->
                    LoweringAnswers.place(d.place())))).with(List.of(Part.one("spread", SPREADS, StationDose::parts)));
    /** How a station sees the sky through its thinnest direction. */
    public static final AnswerTable<StationDose> DIRECTIONS = within("Thinnest direction of each station.", List.of(
            words("station", "station", (StationDose d) -> d.name()),
            of("azimuth_deg", "azimuth", Unit.DEG, (StationDose d) -> d.seen().worst().azimuth()).digits(0),
            of("elevation_deg", "elevation", Unit.DEG, (StationDose d) -> Math.asin(d.seen().worst().sine()))
                    .digits(0),
            of("areal_density_g_cm2", "areal density", Unit.G_CM2, (StationDose d) -> d.seen().leastArealDensity()),
            Figure.count("directions", "directions looked along", (StationDose d) -> d.seen().directions()),
            of("open_share", "dose open by", Unit.PERCENT, (StationDose d) -> d.seen().openShare()).digits(2)));
    /** What makes the doses of a station uncertain, by source. */
    public static final AnswerTable<FromSource> UNCERTAINTIES = within("What makes the doses uncertain, one standard"
            + " deviation down and up.", uncertainties());
    private static final AnswerTable<JudgedLimit.By> BY = within("The calculations that the doses come from.", List.of(
            words("source", "source", JudgedLimit.By::source), words("model", "model", JudgedLimit.By::model),
            flag("by_reviewer", "by the plan's reviewer", JudgedLimit.By::isReviewed)));
    private static final AnswerTable<JudgedLimit.Held> HELD = within("Doses held against the limit.", List.of(
            words("who", "who", JudgedLimit.Held::who),
            words("whose", "crew, person or alone", (JudgedLimit.Held h) -> h.whose().word()),
            of("best_mSv", "best", Unit.MSV, (JudgedLimit.Held h) -> h.dose().best()),
            of("low_mSv", "low, 16th percentile", Unit.MSV, (JudgedLimit.Held h) -> h.dose().low()),
            of("high_mSv", "high, 84th percentile", Unit.MSV, (JudgedLimit.Held h) -> h.dose().high()),
            words("verdict", "verdict", (JudgedLimit.Held h) -> h.verdict().word()),
            said("reason", "reason", (JudgedLimit.Held h) -> some(h.reason()))));
    /** The plan's limits and the doses held against them. */
    public static final AnswerTable<JudgedLimit> LIMITS = new AnswerTable<>("limits[]",
            "The plan's limits and the doses held against them.", "", List.of(
            said("published", "published as", (JudgedLimit j) -> j.limit().published().map(DoseLimit::name)),
            words("quantity", "limit on", (JudgedLimit j) -> j.limit().quantity()),
            words("from", "from", (JudgedLimit j) -> j.limit().from().word()),
            words("over", "over", (JudgedLimit j) -> j.limit().over().word()),
            of("limit_mSv", "limit", Unit.MSV, (JudgedLimit j) -> j.limit().limit()),
            words("unit", "unit", JudgedLimit::unit), words("source", "source", (JudgedLimit j) -> j.limit().source()),
            said("confirm", "to confirm", (JudgedLimit j) -> j.limit().published().map(p -> DoseLimit.CONFIRM)),
            flag("judged", "judged", JudgedLimit::isJudged),
            words("verdict", "verdict", (JudgedLimit j) -> j.verdict().word()),
            said("reason", "reason", (JudgedLimit j) -> Optional.of(j.why()).filter(w -> !j.isJudged())))).with(List.of(
            Part.all("calculated_by", BY, JudgedLimit::by), Part.all("doses", HELD, JudgedLimit::held)));
    /** Doses held against limits, line by line. */
    public static final AnswerTable<HeldLine> LIMIT_LINES = within("Doses held against limits.", List.of(
            words("limit", "limit on", (HeldLine h) -> limitWords(h.judged.limit())),
            of("limit_mSv", "limit", Unit.MSV, (HeldLine h) -> h.judged.limit().limit()),
            words("who", "who", HeldLine::who),
            of("best_mSv", "best", Unit.MSV, (HeldLine h) -> h.dose().best()),
            of("low_mSv", "low, 16th percentile", Unit.MSV, (HeldLine h) -> h.dose().low()),
            of("high_mSv", "high, 84th percentile", Unit.MSV, (HeldLine h) -> h.dose().high()),
            words("verdict", "verdict", HeldLine::outcome),
            words("source", "source of the limit", (HeldLine h) -> h.judged.limit().source()).filesOnly(),
            words("calculated_by", "dose by", (HeldLine h) -> h.held.isPresent() ? h.judged.calculation() : "")
                    .filesOnly()));
    /** Limits of published standards. */
    public static final AnswerTable<DoseLimit> PUBLISHED_LIMITS = new AnswerTable<>("published_limits[]",
            "Limits of published standards.", "", List.of(
            words("name", "protects", DoseLimit::name), words("quantity", "quantity", DoseLimit::quantity),
            words("from", "from", DoseLimit::from).filesOnly(), words("over", "over", DoseLimit::over),
            of("limit", "limit", Unit.BESIDE, (DoseLimit l) -> 1000 * l.limit()).digits(1),
            words("unit", "unit", (DoseLimit l) -> "m" + l.unit()), words("source", "source", DoseLimit::source),
            words("confirm", "to confirm", (DoseLimit l) -> DoseLimit.CONFIRM).filesOnly()));
    /** The crew's dose by where and from what it is got. */
    public static final AnswerTable<CrewPart> CREW_PARTS = within("Dose of the crew, sharing its time as planned.",
            List.of(
            words("part", "part of the dose", CrewPart::part),
            of("best_mSv", "best", Unit.MSV, (CrewPart p) -> p.dose.best()),
            of("low_mSv", "low, 16th percentile", Unit.MSV, (CrewPart p) -> p.dose.low()),
            of("high_mSv", "high, 84th percentile", Unit.MSV, (CrewPart p) -> p.dose.high())));
    /** The crew's dose, the hours outside on a line of their own. */
    public static final AnswerTable<Crew> CREW = new AnswerTable<>("crew", "The crew's dose.", "", List.of(
            words("quantity", "quantity", (Crew c) -> StationDose.QUANTITY),
            of("hours_outside_a_day", "outside a day", Unit.HOURS, (Crew c) -> c.exposure.hoursOutsideADay()),
            of("inside_mSv", "cosmic rays inside", Unit.MSV, (Crew c) -> c.dose.inside().best()),
            of("outside_mSv", "cosmic rays outside", Unit.MSV, (Crew c) -> c.dose.outside().best()),
            of("event_before_shelter", "event before shelter", Unit.PERCENT, (Crew c) -> CrewDose.onTheWay(c.exposure))
                    .digits(1),
            of("event_mSv", "the event", Unit.MSV, (Crew c) -> c.hasEvent ? c.dose.event().best() : Double.NaN)))
            .with(List.of(Part.one("", SPREAD, c -> c.dose.all())));
    /** Effective dose of a named person, by the hours that the plan gives. */
    public static final AnswerTable<PersonDose> PEOPLE = new AnswerTable<>("people[]",
            "Effective dose of a named person, by the hours that the plan gives.", PersonDose.MODEL, List.of(
            words("id", "person", (PersonDose p) -> p.person().id()),
            words("shelter", "shelter", PersonDose::shelter),
            of("event_before_shelter", "event before shelter", Unit.PERCENT, PersonDose::onTheWay).digits(1),
            of("inside_mSv", "cosmic rays inside", Unit.MSV, (PersonDose p) -> known(p, p.dose().inside().best())),
            of("outside_mSv", "cosmic rays outside", Unit.MSV, (PersonDose p) -> known(p, p.dose().outside().best())),
            of("event_mSv", "the event", Unit.MSV, (PersonDose p) -> known(p, p.dose().event().best())),
            of("best_mSv", "together, best", Unit.MSV, (PersonDose p) -> known(p, p.dose().all().best())),
            of("low_mSv", "low, 16th percentile", Unit.MSV, (PersonDose p) -> known(p, p.dose().all().low())),
            of("high_mSv", "high, 84th percentile", Unit.MSV, (PersonDose p) -> known(p, p.dose().all().high())),
            of("received_before_mSv", "received before", Unit.MSV, (PersonDose p) ->
                    p.person().before(StationDose.QUANTITY).orElse(Double.NaN)),
            said("reason", "not known", (PersonDose p) -> some(p.why()))));
    /** The dose on open ground. */
    public static final AnswerTable<SiteDose> OPEN_GROUND = new AnswerTable<>("open_ground", "The dose on open ground.",
            "", List.of(
            of("cosmic_mSv", "cosmic rays over the stay", Unit.MSV, (SiteDose d) -> d.outside().cosmic().best()),
            of("event_mSv", "event", Unit.MSV, (SiteDose d) -> d.hasEvent() ? d.outside().event().best()
                    : Double.NaN)));
    /** Published doses beside ours. */
    public static final AnswerTable<PublishedDose> PUBLISHED = new AnswerTable<>("published[]",
            "Published doses of cosmic rays as under a dome, beside ours for the same quantity, depth and sun.", "",
            List.of(
            of("areal_density_g_cm2", "areal density", Unit.G_CM2, PublishedDose::arealDensity),
            of("modulation_W", "W", Unit.ONE, PublishedDose::modulationW).digits(0),
            of("published_year_mSv", "published, a year", Unit.MSV, (PublishedDose p) -> p.dome() * YEAR_DAYS)
                    .digits(1),
            of("ours_year_mSv", "ours, a year", Unit.MSV, (PublishedDose p) -> p.ours() * YEAR_DAYS).digits(1),
            of("ours_less_share", "ours less by", Unit.PERCENT, (PublishedDose p) -> 1 - p.ours() / p.dome())
                    .digits(0),
            words("quantity", "quantity", (PublishedDose p) -> p.work().quantity()),
            words("source", "source", (PublishedDose p) -> p.work().source()),
            flag("counts_for_band", "counts for the band", (PublishedDose p) -> p.work().counts())));
    /** Dose by particle. */
    public static final AnswerTable<Particles> PARTICLES = within("Dose by particle.", List.of(
            of("total_mSv", "all", Unit.MSV, Particles::total),
            of("fast_neutrons_mSv", "neutrons > 20 MeV", Unit.MSV, Particles::fastNeutrons),
            of("slow_neutrons_mSv", "neutrons below", Unit.MSV, Particles::slowNeutrons),
            of("protons_mSv", "protons", Unit.MSV, Particles::protons),
            of("helium_mSv", "helium", Unit.MSV, Particles::helium),
            of("heavy_mSv", "heavier ions", Unit.MSV, Particles::heavy),
            of("pions_mSv", "pions, muons", Unit.MSV, Particles::pions),
            of("gammas_mSv", "electrons, gammas", Unit.MSV, Particles::gammas)));
    /** Which particles make a dose. */
    public static final AnswerTable<MadeOf> SHARES = within("Particles that make the dose.", List.of(
            words("at", "at", MadeOf::at), words("from", "from", MadeOf::from),
            of("total_mSv", "all", Unit.MSV, (MadeOf m) -> m.dose.total()),
            of("fast_neutrons", "neutrons > 20 MeV", Unit.PERCENT, (MadeOf m) -> m.share(m.dose.fastNeutrons())),
            of("slow_neutrons", "neutrons below", Unit.PERCENT, (MadeOf m) -> m.share(m.dose.slowNeutrons())),
            of("protons", "protons", Unit.PERCENT, (MadeOf m) -> m.share(m.dose.protons())),
            of("helium", "helium", Unit.PERCENT, (MadeOf m) -> m.share(m.dose.helium())),
            of("heavy", "heavier ions", Unit.PERCENT, (MadeOf m) -> m.share(m.dose.heavy())),
            of("pions", "pions, muons", Unit.PERCENT, (MadeOf m) -> m.share(m.dose.pions())),
            of("gammas", "electrons, gammas", Unit.PERCENT, (MadeOf m) -> m.share(m.dose.gammas()))));
    /** Dose against cover. */
    public static final AnswerTable<AtDepth> CURVE = within("Dose under a dome of equal thickness.", List.of(
            of("areal_density_g_cm2", "soil and skin", Unit.G_CM2, (AtDepth d) -> d.cosmic.point.arealDensity()),
            of("cosmic_year_mSv", "cosmic rays, a year", Unit.MSV, (AtDepth d) -> d.cosmic.dose()).digits(1),
            of("cosmic_year_low_mSv", "low, 16th percentile", Unit.MSV, (AtDepth d) -> d.cosmic.low()).digits(1),
            of("cosmic_year_high_mSv", "high, 84th percentile", Unit.MSV, (AtDepth d) -> d.cosmic.high()).digits(1),
            words("cosmic_mostly_by", "mostly by", (AtDepth d) -> d.cosmic.mostly()),
            of("event_mSv", "event", Unit.MSV, (AtDepth d) -> d.event(OnCurve::dose)),
            of("event_low_mSv", "event, low", Unit.MSV, (AtDepth d) -> d.event(OnCurve::low)),
            of("event_high_mSv", "event, high", Unit.MSV, (AtDepth d) -> d.event(OnCurve::high)),
            words("event_mostly_by", "event, mostly by", (AtDepth d) -> d.event.map(OnCurve::mostly).orElse(""))));
    /** A point of a curve of dose against cover. */
    public static final AnswerTable<OnCurve> POINTS = within("Dose against areal density.", List.of(
            of("areal_density_g_cm2", "areal density", Unit.G_CM2, (OnCurve c) -> c.point.arealDensity()),
            of("dose_mSv", "dose", Unit.MSV, OnCurve::dose),
            of("low_mSv", "low, 16th percentile", Unit.MSV, OnCurve::low),
            of("high_mSv", "high, 84th percentile", Unit.MSV, OnCurve::high))).with(List.of(
            Part.one("", UNCERTAINTY, OnCurve::uncertainty)));

    private DoseAnswers() {
    }

    private static double known(PersonDose person, double value) {
        return person.why().isEmpty() ? value : Double.NaN;
    }

    private record Term(DoseUncertainty.Term term, Band band) {
    }

    private record Spread(StationDose.Spread dose, DoseUncertainty uncertainty) {
    }

    private static AnswerTable<Spread> spread() {
        return within("A dose and what makes it uncertain.", List.<Figure<Spread>>of()).with(List.of(
                Part.one("", SPREAD, Spread::dose), Part.one("", UNCERTAINTY, Spread::uncertainty)));
    }

    /**
     * A dose and the particles that make it.
     *
     * @param at   where, in words
     * @param from from what, in words
     * @param dose the dose by particle (Sv)
     */
    public record MadeOf(String at, String from, Particles dose) {
        double share(double part) {
            return dose.total() > 0 ? part / dose.total() : 0;
        }
    }

    /**
     * A point of a curve.
     *
     * @param curves the curves it is one of
     * @param curve  the curve
     * @param point  the point
     * @param days   days that are counted; one for an event
     */
    public record OnCurve(DoseAgainstCover curves, DoseCurve curve, DoseCurve.Point point, double days) {
        /**
         * Every point of a curve.
         *
         * @param curves the curves it is one of
         * @param curve  the curve
         * @param days   days that are counted; one for an event
         * @return its points, in order of areal density
         */
        public static List<OnCurve> of(DoseAgainstCover curves, DoseCurve curve, double days) {
            return curve.points().stream().map(p -> new OnCurve(curves, curve, p, days)).toList();
        }

        DoseUncertainty uncertainty() {
            return curves.uncertainty(curve, point);
        }

        double dose() {
            return point.dome() * days;
        }

        double low() {
            return dose() * uncertainty().together().low();
        }

        double high() {
            return dose() * uncertainty().together().high();
        }

        String mostly() {
            return uncertainty().greatest().word();
        }
    }

    /**
     * Doses under one areal density.
     *
     * @param cosmic that of cosmic rays in a year
     * @param event  that of the event
     */
    public record AtDepth(OnCurve cosmic, Optional<OnCurve> event) {
        /**
         * Every areal density of some curves.
         *
         * @param curves the curves
         * @return one for each point
         */
        public static List<AtDepth> of(DoseAgainstCover curves) {
            List<OnCurve> cosmic = OnCurve.of(curves, curves.cosmic(), YEAR_DAYS);
            Optional<List<OnCurve>> event = curves.event().map(e -> OnCurve.of(curves, e.curve(), 1));
            return IntStream.range(0, cosmic.size()).mapToObj(i -> new AtDepth(cosmic.get(i), event.map(e -> e.get(i))))
                    .toList();
        }

        double event(ToDoubleFunction<OnCurve> figure) {
            return event.map(figure::applyAsDouble).orElse(Double.NaN);
        }
    }

    /**
     * A station's dose from one source.
     *
     * @param station     the station
     * @param from        the source, in words
     * @param uncertainty what makes it uncertain
     */
    public record FromSource(StationDose station, String from, DoseUncertainty uncertainty) {
        /**
         * Every source of every station.
         *
         * @param stations the stations
         * @return cosmic rays and, where it is known, the event
         */
        public static List<FromSource> of(List<StationDose> stations) {
            List<FromSource> all = new ArrayList<>();
            stations.forEach(s -> {
                all.add(new FromSource(s, "cosmic rays", s.parts().uncertainties().cosmic()));
                s.parts().uncertainties().event().ifPresent(u -> all.add(new FromSource(s, "event", u)));
            });
            return all;
        }
    }

    private static List<Figure<FromSource>> uncertainties() {
        List<Figure<FromSource>> figures = new ArrayList<>(List.of(
                words("station", "station", (FromSource f) -> f.station.name()),
                words("from", "from", FromSource::from)));
        for (DoseUncertainty.Term term : DoseUncertainty.Term.values()) {
            figures.add(words(term.name().toLowerCase(Locale.ROOT) + "_percent", term.word() + " (%)",
                    (FromSource f) -> percent(f.uncertainty.of(term))));
        }
        figures.add(words("together_percent", "together (%)", (FromSource f) -> percent(f.uncertainty.together())));
        figures.add(words("mostly_by", "mostly by", (FromSource f) -> f.uncertainty.greatest().word()));
        return figures;
    }

    private static String percent(Band band) {
        return String.format(Locale.ROOT, "%.0f to +%.0f", 100 * (band.low() - 1), 100 * (band.high() - 1));
    }

    /**
     * A limit and one dose held against it.
     *
     * @param judged the limit
     * @param held   the dose; empty where there is none for the crew
     */
    public record HeldLine(JudgedLimit judged, Optional<JudgedLimit.Held> held) {
        /** Whose dose; of a limit over a career what is counted of it, where that is not all that a person received. */
        private String who() {
            boolean isAll = judged.limit().over() != ExposurePlan.Over.CAREER
                    || held.filter(h -> h.whose() == JudgedLimit.Whose.PERSON).isPresent();
            return held.map(JudgedLimit.Held::words).orElse(JudgedLimit.CREW) + (isAll ? "" : ", this stay alone");
        }

        /**
         * Limits line by line, first one for the crew where its dose is not known.
         *
         * @param limits the limits
         * @return the lines
         */
        public static List<HeldLine> of(List<JudgedLimit> limits) {
            List<HeldLine> lines = new ArrayList<>();
            for (JudgedLimit judged : limits) {
                if (judged.held().stream().noneMatch(JudgedLimit.Held::isCrew)) {
                    lines.add(new HeldLine(judged, Optional.empty()));
                }
                judged.held().forEach(h -> lines.add(new HeldLine(judged, Optional.of(h))));
            }
            return lines;
        }

        /**
         * Limits with the doses of crew and named persons and the worst station's alone.
         *
         * @param limits the limits
         * @return the lines
         */
        public static List<HeldLine> worst(List<JudgedLimit> limits) {
            return limits.stream().flatMap(j -> j.held().isEmpty() ? Stream.of(new HeldLine(j, Optional.empty()))
                    : j.decidingAndWorst().stream().map(h -> new HeldLine(j, Optional.of(h)))).toList();
        }

        StationDose.Spread dose() {
            return held.map(JudgedLimit.Held::dose).orElse(new StationDose.Spread(Double.NaN, Double.NaN, Double.NaN));
        }

        String outcome() {
            return held.map(JudgedLimit.Held::outcome).orElse(judged.verdict().word() + ": " + judged.why());
        }
    }

    /**
     * A part of the crew's dose.
     *
     * @param part what it is got from
     * @param dose the dose
     */
    public record CrewPart(String part, StationDose.Spread dose) {
        /**
         * The parts of the crew's dose.
         *
         * @param exposure how the crew is exposed
         * @param dose     doses on the site
         * @return the parts and their sum; empty where the crew's dose is not known
         */
        public static List<CrewPart> of(ExposurePlan exposure, SiteDose dose) {
            List<CrewPart> parts = new ArrayList<>();
            dose.crew(exposure).ifPresent(crew -> {
                parts.add(new CrewPart("cosmic rays inside, by occupancy", crew.inside()));
                parts.add(new CrewPart(String.format(Locale.ROOT, "cosmic rays outside, %.1f h a day in the open",
                        exposure.hoursOutsideADay()), crew.outside()));
                if (dose.hasEvent()) {
                    double late = CrewDose.onTheWay(exposure);
                    parts.add(new CrewPart("the event, at the storm shelter where it is worst" + (late > 0
                            ? String.format(Locale.ROOT,
                            ", %.1f %% of it before that", 100 * late) : ""), crew.event()));
                }
                parts.add(new CrewPart(dose.hasEvent() ? "together" : "together, " + dose.event(), crew.all()));
            });
            return parts;
        }
    }

    /**
     * The crew's dose.
     *
     * @param exposure how the crew is exposed
     * @param dose     its dose
     * @param hasEvent whether the dose of the event is known
     */
    public record Crew(ExposurePlan exposure, CrewDose dose, boolean hasEvent) {
    }

    /**
     * What a limit counts and in which unit.
     *
     * @param limit the limit
     * @return what it counts; for an organ's limit that mSv are gray equivalents
     */
    public static String limitWords(LimitInForce limit) {
        return limit.words() + (StationDose.organ(limit.quantity()).isPresent() ? ", mSv read as mGy-Eq" : "");
    }

    private static Optional<String> some(String words) {
        return Optional.of(words).filter(w -> !w.isEmpty());
    }
}
