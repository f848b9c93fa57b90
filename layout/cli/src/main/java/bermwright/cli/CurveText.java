// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.sheet.CurveSheets;
import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.DoseCurve;
import bermwright.shielding.dose.Particles;
import bermwright.shielding.dose.PublishedDose;
import bermwright.shielding.fold.DoseUncertainty;
import bermwright.site.exposure.DoseAgainstCover;
import bermwright.site.exposure.StationDose;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;

/** Dose against cover and the particles that make it, for people. */
final class CurveText {
    private static final double KG_M2 = 10;

    private CurveText() {
    }

    static void curve(DoseAgainstCover curves, PrintStream out) {
        CommonText.heading("Dose under a dome of equal thickness, mSv: " + curves.materials() + " (hulls "
                + String.join(", ", curves.hulls()) + ")", out);
        String year = "W " + TextTable.words(curves.modulationW(), 0) + " a year";
        TextTable table = new TextTable("g/cm2", year, "low 16 %", "high 84 %", "mostly by",
                curves.event().map(DoseAgainstCover.Event::name).orElse("no event"), "low 16 %", "high 84 %",
                "mostly by");
        for (int i = 0; i < curves.cosmic().points().size(); i++) {
            int at = i;
            DoseCurve.Point point = curves.cosmic().points().get(i);
            List<Object> row = new ArrayList<>(List.of(TextTable.number(
                    InUnits.gramsASquareCentimetre(point.arealDensity()), 1)));
            spread(row, curves.uncertainty(curves.cosmic(), point), point.dome() * CurveSheets.YEAR_DAYS, 1);
            curves.event().ifPresent(e -> {
                DoseCurve.Point same = e.curve().points().get(at);
                spread(row, curves.uncertainty(e.curve(), same), same.dome(), 2);
            });
            table.row(row.toArray());
        }
        out.println(table);
        CommonText.wrapped("Without the ground's return. What is deeper than 1500 g/cm2 is counted as 1500."
                + " Low and high join model, solar activity, soil density and cover thickness as the plan has them."
                + (curves.reviewed().isPresent() ? " The plan's own table stands in place of one of these curves in the"
                + " doses above." : ""), 2, out);
        out.println();
    }

    private static void spread(List<Object> row, DoseUncertainty uncertainty, double sieverts, int digits) {
        double dose = InUnits.millisieverts(sieverts);
        Band band = uncertainty.together();
        row.add(TextTable.number(dose, digits));
        row.add(TextTable.number(dose * band.low(), digits));
        row.add(TextTable.number(dose * band.high(), digits));
        row.add(uncertainty.greatest().word());
    }

    static void published(List<PublishedDose> figures, PrintStream out) {
        CommonText.heading("Published doses of cosmic rays as under a dome, mSv a year, beside ours without skin for"
                + " the same quantity, depth and sun", out);
        TextTable table = new TextTable("g/cm2", "W", "published", "ours", "ours less by %", "source");
        for (PublishedDose figure : figures) {
            table.row(TextTable.number(InUnits.gramsASquareCentimetre(figure.arealDensity()), 0),
                    TextTable.number(figure.modulationW(), 0),
                    TextTable.number(InUnits.millisieverts(figure.dome() * CurveSheets.YEAR_DAYS), 1),
                    TextTable.number(InUnits.millisieverts(figure.ours() * CurveSheets.YEAR_DAYS), 1),
                    TextTable.number(100 * (1 - figure.ours() / figure.dome()), 0),
                    figure.work().source() + " (" + figure.work().quantity()
                            + (figure.work().counts() ? ")" : "; superseded, not counted)"));
        }
        out.println(table);
    }

    static void composition(CurveSheets sheets, List<Double> depths, PrintStream out) {
        DoseAgainstCover curves = sheets.curves();
        CommonText.heading("Particles that make the dose, %: " + curves.materials(), out);
        TextTable table = new TextTable("at", "from", "mSv", "neutrons > 20 MeV", "neutrons below", "protons", "helium",
                "heavier ions", "pions, muons", "electrons, gammas");
        for (StationDose station : sheets.stations()) {
            String at = station.hull() + "/" + station.station();
            row(table, at, curves, c -> CurveSheets.atStation(c, station));
            double median = station.seen().medianArealDensity();
            row(table, "  dome of its median, " + TextTable.words(InUnits.gramsASquareCentimetre(median), 0) + " g/cm2",
                    curves, c -> c.at(median).underDome());
        }
        for (double depth : depths) {
            row(table, "dome of " + TextTable.words(depth, 0) + " g/cm2", curves,
                    c -> c.at(depth * KG_M2).underDome());
        }
        out.println(table);
        CommonText.wrapped("Cosmic rays a year, the event as a whole. At a station, neutrons below 20 MeV come"
                + " through each piece of its cover and from the floor; what else the ground sends back comes on"
                + " top.", 2, out);
        out.println();
    }

    /** The dose of one curve by particle. */
    private interface Taken {
        Particles of(DoseCurve curve);
    }

    private static void row(TextTable table, String at, DoseAgainstCover curves, Taken taken) {
        row(table, at, "cosmic rays", taken.of(curves.cosmic()).times(CurveSheets.YEAR_DAYS));
        curves.event().ifPresent(e -> row(table, at, e.name(), taken.of(e.curve())));
    }

    private static void row(TextTable table, String at, String from, Particles dose) {
        Particles share = dose.total() > 0 ? dose.times(100 / dose.total()) : dose;
        table.row(at, from, TextTable.number(InUnits.millisieverts(dose.total()), 2),
                TextTable.number(share.fastNeutrons(), 1), TextTable.number(share.slowNeutrons(), 1),
                TextTable.number(share.protons(), 1), TextTable.number(share.helium(), 1),
                TextTable.number(share.heavy(), 1), TextTable.number(share.pions(), 1),
                TextTable.number(share.gammas(), 1));
    }
}
