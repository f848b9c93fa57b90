// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.Azimuth;
import bermwright.report.drawing.Bars;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Classes;
import bermwright.report.drawing.Drawing;
import bermwright.report.page.Table;
import bermwright.report.section.SkyPictures;
import bermwright.shielding.fold.SkyPicture;
import bermwright.site.answer.Answers;
import bermwright.site.answer.DoseAnswers;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.LimitFindings;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The drawings and tables of the dose at the stations, also for the editor.
 *
 * @param exposure the stay and its limits
 * @param dose     the doses
 */
public record DoseSheets(ExposurePlan exposure, SiteDose dose) {
    private static final double MILLI = 1000;
    private static final Classes SKY = new Classes(List.of(50.0, 100.0, 200.0, 400.0, 700.0, 1000.0), "g/cm²");

    /**
     * Dose by station and source for somebody who spends the whole stay and the event there, with the crew's own above.
     *
     * @return the drawing
     */
    public Drawing stations() {
        List<Bars.Bar> bars = new ArrayList<>();
        for (StationDose station : dose.stations()) {
            StationDose.Spread all = station.covered();
            bars.add(new Bars.Bar(name(station), List.of(station.parts().cosmic() * MILLI,
                    station.parts().event() * MILLI, station.parts().groundReturn() * MILLI), all.low() * MILLI,
                    all.high() * MILLI, figures(all) + (Double.isNaN(station.upright()) ? ""
                    : "; upright, bare: " + Drawing.figure(station.upright() * MILLI, 3))));
        }
        return new Bars("dose-by-station", "Dose at each station alone, " + stay() + mark(), StationDose.QUANTITY
                + " (mSv)",
                List.of("cosmic rays from the sky", "solar particle event from the sky", "ground return"), bars,
                List.of()).drawing();
    }

    /**
     * The crew and each station alone against one limit.
     *
     * @param number number of the limit in the plan (1), 0 for the first
     * @return the drawing
     */
    public Drawing against(int number) {
        JudgedLimit judged = dose.limits().get(number);
        LimitInForce limit = judged.limit();
        String unit = judged.unit();
        List<Bars.Bar> bars = judged.held().stream().map(h -> bar(name(h), h.dose(), unit)).toList();
        return new Bars("dose-limit-" + (number + 1), "Against the limit on " + limit.words()
                + (judged.isJudged() ? "" : ": NOT JUDGED") + mark(limit),
                limit.quantity() + " (" + unit + ")", List.of("dose that this limit counts"), bars,
                List.of(new Chart.Mark("limit", limit.limit() * MILLI, unit))).drawing();
    }

    /**
     * The sky as the stations of a hull see it through skin and soil.
     *
     * @param hull      the hull's id
     * @param trueNorth azimuth of true north, clockwise from grid north; empty where it is not known
     * @return the drawing; empty where the hull has no station with a dose
     */
    public Optional<Drawing> sky(String hull, Optional<Azimuth> trueNorth) {
        List<SkyPictures.View> views = dose.stations().stream().filter(s -> s.hull().equals(hull))
                .map(DoseSheets::view).toList();
        return views.isEmpty() ? Optional.empty() : Optional.of(new SkyPictures(Drawing.name("sky", hull), "Hull "
                + hull + ": areal density between each station and the sky, skin counted as soil", views, SKY,
                trueNorth).drawing());
    }

    /**
     * The weakest direction that each station of a hull sees, in words for those who cannot see the picture.
     *
     * @param hull the hull's id
     * @return a sentence
     */
    public String weakest(String hull) {
        return "Weakest direction, azimuth from grid north: " + dose.stations().stream()
                .filter(s -> s.hull().equals(hull)).map(DoseSheets::view).map(v -> String.format(Locale.ROOT,
                "%s %.0f g/cm\u00b2 towards %.0f\u00b0 at %.0f\u00b0 of elevation", v.label(), v.least(),
                v.weakest().degrees(), Math.toDegrees(v.elevation()))).collect(Collectors.joining("; ")) + ".";
    }

    private static SkyPictures.View view(StationDose station) {
        StationDose.Seen seen = station.seen();
        SkyPicture picture = seen.picture();
        return new SkyPictures.View(station.station(), (azimuth, elevation) -> {
            int sector = (int) Math.min(picture.sectors() - 1, azimuth / (2 * Math.PI) * picture.sectors());
            int band = (int) Math.min(picture.bands() - 1, Math.sin(elevation) * picture.bands());
            return picture.arealDensity(sector, band) / 10;
        }, new Azimuth(seen.worst().azimuth()), Math.asin(seen.worst().sine()), seen.leastArealDensity() / 10);
    }

    /** The crew's dose by where and from what it is got. */
    public Table crewTable() {
        return AnswerSheets.table("dose-crew", "Dose of the crew, sharing its time as planned, " + stay() + mark(),
                DoseAnswers.CREW_PARTS, DoseAnswers.CrewPart.of(exposure, dose));
    }

    /** The doses of the plan's named persons. */
    public Table people() {
        return AnswerSheets.table("dose-people", "Dose of each named person, by own hours" + mark(), DoseAnswers.PEOPLE,
                dose.people());
    }

    /** What low and high of each station's dose are made of, by source, and which of it is the greatest. */
    public Table uncertainties() {
        return AnswerSheets.table("dose-doubts", "What makes the doses uncertain, one standard deviation down and up",
                DoseAnswers.UNCERTAINTIES, DoseAnswers.FromSource.of(dose.stations()));
    }

    /** Dose by station, as in the file. */
    public Table table() {
        return AnswerSheets.table("dose-by-station", "Dose at each station alone, " + stay() + mark(),
                Answers.STATIONS, dose.stations());
    }

    /** Each limit against the crew and each station; a limit that is not judged has a row that says why. */
    public Table limits() {
        return AnswerSheets.table("dose-limits", "Every limit, for crew, named persons and each station alone"
                + Marks.of(dose.models()), DoseAnswers.LIMIT_LINES, DoseAnswers.HeldLine.of(dose.limits()));
    }

    private String name(JudgedLimit.Held held) {
        return held.decides() ? held.words() : dose.stations().stream()
                .filter(s -> held.who().equals(s.name())).findFirst().orElseThrow().stormShelter()
                ? held.who() + " (storm shelter) alone" : held.words();
    }

    /** Where a limit is from, and by which calculation the dose, or why none is held against it. */
    public static String origin(JudgedLimit judged) {
        return "Source of the limit: " + judged.limit().source() + ". " + (judged.isJudged()
                ? "Dose by: " + judged.calculation() + "." : "NOT JUDGED: " + judged.why() + ".");
    }

    private String mark() {
        return Marks.of(dose.models().stream().filter(m -> !m.id().equals(LimitFindings.CAREER_MODEL)).toList());
    }

    private String mark(LimitInForce limit) {
        return limit.over() == ExposurePlan.Over.CAREER ? Marks.of(dose.models()) : mark();
    }

    private String stay() {
        return Drawing.figure(exposure.stayDays(), 4) + " days with " + dose.event();
    }

    private static String name(StationDose station) {
        return station.name() + (station.stormShelter() ? " (storm shelter)" : "");
    }

    private static Bars.Bar bar(String name, StationDose.Spread spread, String unit) {
        return new Bars.Bar(name, List.of(spread.best() * MILLI), spread.low() * MILLI, spread.high() * MILLI,
                figures(spread, unit));
    }

    private static String figures(StationDose.Spread spread) {
        return figures(spread, "mSv");
    }

    private static String figures(StationDose.Spread spread, String unit) {
        return Drawing.figure(spread.best() * MILLI, 3) + " (" + Drawing.figure(spread.low() * MILLI, 3) + " to "
                + Drawing.figure(spread.high() * MILLI, 3) + ") " + unit;
    }
}
