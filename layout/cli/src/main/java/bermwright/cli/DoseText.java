// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.DoseLimit;
import bermwright.shielding.fold.DoseUncertainty;
import bermwright.site.answer.Answers;
import bermwright.site.assessment.Assessment;
import bermwright.site.exposure.CrewDose;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.LimitInForce;
import java.io.PrintStream;
import java.util.List;

/** The dose at each station, for people. */
final class DoseText {
    private DoseText() {
    }

    static void write(Assessment assessment, PrintStream out) {
        CommonText.heading("Dose, " + StationDose.QUANTITY + " in mSv over a stay of "
                + TextTable.words(assessment.plan().exposure().stayDays(), 0) + " days with "
                + assessment.dose().map(SiteDose::event).orElse("no event"), out);
        out.println(TextTable.of(Answers.STATIONS, assessment.hulls().stream().flatMap(h -> h.stations().stream())
                .toList()));
        assessment.dose().filter(dose -> !dose.stations().isEmpty()).ifPresent(dose -> CommonText.wrapped(
                "Somebody at a station all the time. On open ground: cosmic rays %s mSv, %s.".formatted(
                        TextTable.words(InUnits.millisieverts(dose.outside().cosmic().best()), 0),
                        dose.hasEvent() ? "the event " + TextTable.words(InUnits.millisieverts(
                                dose.outside().event().best()), 0) + " mSv" : dose.event()), 2, out));
        out.println();
        assessment.dose().ifPresent(dose -> dose.crew(assessment.plan().exposure())
                .ifPresent(crew -> crew(assessment, dose, crew, out)));
    }

    /** The crew's dose by where and from what it is got. */
    private static void crew(Assessment assessment, SiteDose dose, CrewDose crew, PrintStream out) {
        CommonText.heading("The crew's dose, " + StationDose.QUANTITY + " in mSv, sharing time as planned", out);
        TextTable table = new TextTable("part", "best", "low 16 %", "high 84 %");
        part(table, "cosmic rays inside, by occupancy", crew.inside());
        part(table, "cosmic rays outside, " + TextTable.words(assessment.plan().exposure().hoursOutsideADay(), 1)
                + " h a day in the open", crew.outside());
        if (dose.hasEvent()) {
            part(table, "the event, at the storm shelter where it is worst", crew.event());
        }
        part(table, dose.hasEvent() ? "together" : "together, " + dose.event(), crew.all());
        out.println(table);
    }

    private static void part(TextTable table, String part, StationDose.Spread dose) {
        table.row(part, milli(dose.best()), milli(dose.low()), milli(dose.high()));
    }

    /** What low and high are made of. */
    static void uncertainties(Assessment assessment, PrintStream out) {
        CommonText.heading("What makes the doses uncertain, down and up in %, one standard deviation each", out);
        TextTable table = new TextTable("station", "source", "model", "solar activity", "soil density",
                "cover thickness", "together", "most");
        assessment.hulls().forEach(hull -> hull.stations().forEach(dose -> {
            uncertainty(table, dose, "cosmic rays", dose.parts().uncertainties().cosmic());
            dose.parts().uncertainties().event().ifPresent(d -> uncertainty(table, dose, "event", d));
        }));
        out.println(table);
    }

    private static void uncertainty(TextTable table, StationDose dose, String source, DoseUncertainty uncertainty) {
        table.row(dose.hull() + "/" + dose.station(), source, percent(uncertainty.model()), percent(uncertainty.sun()),
                percent(uncertainty.density()), percent(uncertainty.thickness()), percent(uncertainty.together()),
                uncertainty.greatest().word());
    }

    private static String percent(Band band) {
        return TextTable.words(100 * (band.low() - 1), 0) + " to +" + TextTable.words(100 * (band.high() - 1), 0);
    }

    /** The plan's limits, the crew's doses and those at the worst station held against them. */
    static void judged(Assessment assessment, PrintStream out) {
        List<JudgedLimit> limits = assessment.dose().map(SiteDose::limits).orElse(List.of());
        if (limits.isEmpty()) {
            return;
        }
        CommonText.heading("The plan's dose limits", out);
        TextTable table = new TextTable("limit on", "from", "over", "limit", "unit", "who", "best", "low 16 %",
                "high 84 %", "");
        for (JudgedLimit judged : limits) {
            LimitInForce limit = judged.limit();
            if (judged.held().isEmpty()) {
                table.row(limit.quantity(), limit.from().word(), limit.over().word(), milli(limit.limit()),
                        judged.unit(), "", "", "", "", judged.verdict().word());
            }
            for (JudgedLimit.Held held : judged.crewAndWorst()) {
                table.row(limit.quantity(), limit.from().word(), limit.over().word(), milli(limit.limit()),
                        judged.unit(), held.words(), milli(held.dose().best()),
                        milli(held.dose().low()), milli(held.dose().high()), held.outcome());
            }
        }
        out.println(table);
        for (JudgedLimit judged : limits) {
            LimitInForce limit = judged.limit();
            CommonText.wrapped("%s%s over %s, %s %s. Limit from: %s. %s".formatted(
                    limit.published().map(p -> p.name() + ": ").orElse(""), limit.quantity(), limit.over().word(),
                    TextTable.words(InUnits.millisieverts(limit.limit()), 1), judged.unit(),
                    limit.source(), judged.isJudged() ? "Judged by: " + judged.calculation() + "."
                            : "Not judged: " + judged.why() + "."), 2, out);
        }
        out.println();
    }

    /** Limits of published standards. */
    static void limits(Assessment assessment, PrintStream out) {
        CommonText.heading("Limits of published standards, which a plan may name; " + DoseLimit.CONFIRM, out);
        TextTable table = new TextTable("protects", "quantity", "over", "limit", "unit", "source");
        assessment.dose().ifPresent(dose -> dose.publishedLimits().forEach(limit -> table.row(limit.name(),
                limit.quantity(), limit.over(), TextTable.number(1000 * limit.limit(), 1), "m" + limit.unit(),
                limit.source())));
        out.println(table);
    }

    /** Where the sky is seen through least. */
    static void directions(Assessment assessment, PrintStream out) {
        CommonText.heading("Thinnest direction of each station", out);
        TextTable table = new TextTable("station", "azimuth deg", "elevation deg", "g/cm2", "directions looked along",
                "dose open by %");
        assessment.hulls().forEach(hull -> hull.stations().forEach(dose -> table.row(
                dose.hull() + "/" + dose.station(),
                TextTable.number(InUnits.degrees(dose.seen().worst().azimuth()), 0),
                TextTable.number(InUnits.degrees(Math.asin(dose.seen().worst().sine())), 0),
                TextTable.number(InUnits.gramsASquareCentimetre(dose.seen().leastArealDensity()), 0),
                TextTable.number(dose.seen().directions(), 0), TextTable.number(100 * dose.seen().openShare(), 2))));
        out.println(table);
    }

    private static TextTable.Cell milli(double sieverts) {
        return TextTable.number(InUnits.millisieverts(sieverts), 1);
    }
}
