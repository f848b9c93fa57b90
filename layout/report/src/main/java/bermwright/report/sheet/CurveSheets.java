// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.page.Table;
import bermwright.shielding.dose.DoseCurve;
import bermwright.shielding.dose.Particles;
import bermwright.shielding.dose.PublishedDose;
import bermwright.site.answer.DoseAnswers;
import bermwright.site.exposure.DoseAgainstCover;
import bermwright.site.exposure.StationDose;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Dose against areal density for one kind of skin, beside published figures, and the particles that make it.
 *
 * @param curves   the curves
 * @param stations stations of the hulls with this skin
 */
public record CurveSheets(DoseAgainstCover curves, List<StationDose> stations) {
    /** Days of the year that cosmic-ray doses are shown for. */
    public static final double YEAR_DAYS = 365.25;
    private static final double MILLI = 1000;
    private static final double KG_M2 = 10;
    private static final double DEEPEST_SHOWN_GCM2 = 1000;
    private static final double LEAST_SHOWN_MSV = 0.1;
    /** Modulation up to which a published figure counts as one of solar minimum. */
    private static final double MINIMUM_TO_W = 25;

    /** Copies the list. */
    public CurveSheets {
        stations = List.copyOf(stations);
    }

    /**
     * The curves with their bands, the stations at their median areal density, and published figures.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        String sun = "cosmic rays, W " + Drawing.figure(curves.modulationW(), 3) + ", a year";
        List<Chart.Curve> drawn = new ArrayList<>();
        drawn.add(curve(sun, curves.cosmic(), DoseCurve.Point::dome, YEAR_DAYS, Ink.of(0)));
        drawn.add(curve("cosmic rays, low and high", curves.cosmic(), p -> high(curves.cosmic(), p), YEAR_DAYS,
                edge(Ink.BLUE)));
        drawn.add(curve("", curves.cosmic(), p -> low(curves.cosmic(), p), YEAR_DAYS, edge(Ink.BLUE)));
        curves.event().ifPresent(event -> {
            drawn.add(curve("event: " + event.name(), event.curve(), DoseCurve.Point::dome, 1, Ink.of(1)));
            drawn.add(curve("event, low and high", event.curve(), p -> high(event.curve(), p), 1, edge(Ink.RED)));
            drawn.add(curve("", event.curve(), p -> low(event.curve(), p), 1, edge(Ink.RED)));
        });
        curves.reviewed().ifPresent(table -> drawn.add(new Chart.Curve("the plan's own table", curves.cosmic().points()
                .stream().map(DoseCurve.Point::arealDensity).filter(x -> x <= table.deepest())
                .map(x -> new Dot(x / KG_M2, table.isotropicDose(x) / 2 * MILLI
                        * (table.per() == curves.cosmic().per() ? YEAR_DAYS : 1))).toList(), Ink.of(3))));
        List<PublishedDose> all = curves.cosmic().published();
        List<PublishedDose> published = all.stream().filter(p -> p.work().counts()).toList();
        drawn.add(points("published, cosmic rays at solar minimum", published.stream()
                .filter(p -> p.modulationW() <= MINIMUM_TO_W).toList(), Ink.scattered(Ink.BLACK, Ink.Marker.SQUARE)));
        drawn.add(points("published, other suns", published.stream().filter(p -> p.modulationW() > MINIMUM_TO_W)
                .toList(), Ink.scattered(Ink.DARK_GREY, Ink.Marker.CROSS)));
        drawn.add(points("published, superseded", all.stream().filter(p -> !p.work().counts()).toList(),
                Ink.scattered(Ink.DARK_GREY, Ink.Marker.TRIANGLE)));
        drawn.add(new Chart.Curve("stations at their median areal density", stations.stream()
                .map(s -> s.seen().medianArealDensity())
                .map(x -> new Dot(x / KG_M2, curves.cosmic().at(x).underDome().total() * MILLI * YEAR_DAYS)).toList(),
                Ink.scattered(Ink.BLUE, Ink.Marker.CIRCLE)));
        return new Chart(Drawing.name("dose-against-cover", String.join("-", curves.hulls())),
                "Dose under a dome of equal thickness: " + curves.materials(), "areal density of soil and skin (g/cm²)",
                "effective dose (mSv a year; of the event: mSv)", drawn, List.of(), List.of(),
                new Chart.Scale(true, OptionalDouble.of(LEAST_SHOWN_MSV), OptionalDouble.empty())).drawing();
    }

    private double low(DoseCurve curve, DoseCurve.Point point) {
        return point.dome() * curves.uncertainty(curve, point).together().low();
    }

    private double high(DoseCurve curve, DoseCurve.Point point) {
        return point.dome() * curves.uncertainty(curve, point).together().high();
    }

    private static Ink edge(String colour) {
        return new Ink(colour, "3 3", 1, Ink.Marker.NONE);
    }

    private static Chart.Curve curve(String name, DoseCurve curve, ToDoubleFunction<DoseCurve.Point> dose, double days,
            Ink ink) {
        return new Chart.Curve(name, curve.points().stream().filter(p -> p.arealDensity() / KG_M2 <= DEEPEST_SHOWN_GCM2)
                .map(p -> new Dot(p.arealDensity() / KG_M2, dose.applyAsDouble(p) * days * MILLI)).toList(), ink);
    }

    private static Chart.Curve points(String name, List<PublishedDose> figures, Ink ink) {
        return new Chart.Curve(name, figures.stream()
                .map(p -> new Dot(p.arealDensity() / KG_M2, p.dome() * YEAR_DAYS * MILLI)).toList(), ink);
    }

    /** The curves in figures. */
    public Table table() {
        return AnswerSheets.table(Drawing.name("dose-against-cover", String.join("-", curves.hulls())), "Dose under a"
                + " dome of equal thickness: " + curves.materials(), DoseAnswers.CURVE, DoseAnswers.AtDepth.of(curves));
    }

    private List<String> spread(DoseCurve curve, DoseCurve.Point point, double days) {
        return List.of(Words.millisieverts(point.dome() * days), Words.millisieverts(low(curve, point) * days),
                Words.millisieverts(high(curve, point) * days));
    }

    /** Published figures with their sources, beside ours for the same depth and sun. */
    public static Table published(List<PublishedDose> figures) {
        return AnswerSheets.table("published-doses", "Published doses of cosmic rays, as under a dome, beside ours for"
                + " the same quantity, depth and sun without skin", DoseAnswers.PUBLISHED,
                figures);
    }

    /** The particles that make the dose at each station, from the whole of its sky. */
    public Table composition() {
        List<DoseAnswers.MadeOf> rows = new ArrayList<>();
        stations.forEach(s -> rows.addAll(madeOf(s.name(), c -> atStation(c, s))));
        return AnswerSheets.table(Drawing.name("dose-particles", String.join("-", curves.hulls())), "Particles that"
                + " make the dose: " + curves.materials(), DoseAnswers.SHARES, rows);
    }

    /**
     * The particles that make the dose at one place.
     *
     * @param at    where, in words
     * @param taken the dose that a curve gives there
     * @return that of cosmic rays in a year, and that of the event where there is one
     */
    public List<DoseAnswers.MadeOf> madeOf(String at, Function<DoseCurve, Particles> taken) {
        List<DoseAnswers.MadeOf> rows = new ArrayList<>(List.of(new DoseAnswers.MadeOf(at, "cosmic rays",
                taken.apply(curves.cosmic()).times(DoseAnswers.YEAR_DAYS))));
        curves.event().ifPresent(e -> rows.add(new DoseAnswers.MadeOf(at, e.name(), taken.apply(e.curve()))));
        return rows;
    }

    /**
     * The particles that make the dose at a station: what flies straight from everything it sees of the sky, slow
     * neutrons through each piece of its cover.
     *
     * @param curve   the curve to fold
     * @param station the station
     * @return dose by particle (Sv a day or an event); the slow neutrons hold what the ground sends back under the
     *     cover
     */
    public static Particles atStation(DoseCurve curve, StationDose station) {
        Sum sum = new Sum();
        station.seen().distribution().forEach((arealDensity, slant, share) ->
                sum.dose = sum.dose.plus(curve.at(arealDensity)
                        .times(share / 2 * curve.slants().factor(arealDensity, slant))));
        Particles sky = sum.dose;
        double slow = curve.room().map(room -> station.seen().distribution().in(room, 1)).orElse(sky.slowNeutrons());
        return new Particles(sky.fastNeutrons(), slow,
                sky.protons(), sky.helium(), sky.heavy(), sky.pions(), sky.gammas());
    }

    /** A dose while it is summed. */
    private static final class Sum {
        private Particles dose = new Particles(0, 0, 0, 0, 0, 0, 0);
    }

    private static List<String> row(StationDose station, String from, Particles dose) {
        double percent = dose.total() > 0 ? 100 / dose.total() : 0;
        Particles share = dose.times(percent);
        return List.of(station.hull(), station.station(), from, Words.fixed(share.fastNeutrons(), 1),
                Words.fixed(share.slowNeutrons(), 1), Words.fixed(share.protons(), 1), Words.fixed(share.helium(), 1),
                Words.fixed(share.heavy(), 1), Words.fixed(share.pions(), 1), Words.fixed(share.gammas(), 1));
    }
}
