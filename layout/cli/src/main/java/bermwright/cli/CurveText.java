// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.sheet.CurveSheets;
import bermwright.shielding.dose.PublishedDose;
import bermwright.site.answer.DoseAnswers;
import bermwright.site.answer.Unit;
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
        out.println(TextTable.of(DoseAnswers.CURVE, DoseAnswers.AtDepth.of(curves)));
        CommonText.wrapped("Without the ground's return. What is deeper than 1500 g/cm2 is counted as 1500."
                + " Low and high join model, solar activity, soil density and cover thickness as the plan has them."
                + (curves.reviewed().isPresent() ? " The plan's own table stands in place of one of these curves in the"
                + " doses above." : ""), 2, out);
        out.println();
    }

    static void published(List<PublishedDose> figures, PrintStream out) {
        CommonText.heading("Published doses of cosmic rays as under a dome, mSv a year, beside ours without skin for"
                + " the same quantity, depth and sun", out);
        out.println(TextTable.of(DoseAnswers.PUBLISHED, figures));
    }

    static void composition(CurveSheets sheets, List<Double> depths, PrintStream out) {
        DoseAgainstCover curves = sheets.curves();
        CommonText.heading("Particles that make the dose, %: " + curves.materials(), out);
        List<DoseAnswers.MadeOf> rows = new ArrayList<>();
        for (StationDose station : sheets.stations()) {
            rows.addAll(sheets.madeOf(station.name(), c -> CurveSheets.atStation(c,
                    station)));
            double median = station.seen().medianArealDensity();
            rows.addAll(sheets.madeOf("  dome of its median, " + TextTable.words(Unit.G_CM2.of(median), 0) + " g/cm2",
                    c -> c.at(median).underDome()));
        }
        for (double depth : depths) {
            rows.addAll(sheets.madeOf("dome of " + TextTable.words(depth, 0) + " g/cm2",
                    c -> c.at(depth * KG_M2).underDome()));
        }
        out.println(TextTable.of(DoseAnswers.SHARES, rows));
        CommonText.wrapped("Cosmic rays a year, the event as a whole. At a station, neutrons below 20 MeV come"
                + " through each piece of its cover and from the floor; what else the ground sends back comes on"
                + " top.", 2, out);
        out.println();
    }
}
