// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.sheet.CurveSheets;
import bermwright.shielding.dose.DoseCurve;
import bermwright.shielding.dose.Particles;
import bermwright.shielding.dose.PublishedDose;
import bermwright.shielding.fold.Doubt;
import bermwright.site.exposure.DoseAgainstCover;
import bermwright.site.exposure.StationDose;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Dose against cover and the particles that make it, for programs. */
final class CurvePage {
    private static final double KG_M2 = 10;

    private CurvePage() {
    }

    static void putCurves(ObjectNode page, List<CurveSheets> sheets) {
        ArrayNode curves = page.putArray("curves");
        sheets.forEach(s -> put(curves.addObject(), s.curves()));
        ArrayNode published = page.putArray("published");
        sheets.stream().findFirst().ifPresent(s -> s.curves().cosmic().published()
                .forEach(figure -> put(published.addObject(), figure)));
    }

    private static void put(ObjectNode entry, DoseAgainstCover curves) {
        curves.hulls().forEach(entry.putArray("hulls")::add);
        entry.put("materials", curves.materials());
        JsonPage.put(entry, "modulation_W", curves.modulationW());
        entry.put("under", "dome of equal thickness, without the ground's return");
        points(entry.putArray("cosmic_year"), curves, curves.cosmic(), CurveSheets.YEAR_DAYS);
        curves.event().ifPresent(event -> {
            entry.put("event", event.name());
            points(entry.putArray("event_whole"), curves, event.curve(), 1);
        });
    }

    private static void points(ArrayNode points, DoseAgainstCover curves, DoseCurve curve, double days) {
        for (DoseCurve.Point point : curve.points()) {
            ObjectNode entry = points.addObject();
            double dose = InUnits.millisieverts(point.dome() * days);
            JsonPage.put(entry, "areal_density_g_cm2", InUnits.gramsASquareCentimetre(point.arealDensity()));
            JsonPage.put(entry, "dose_mSv", dose);
            Doubt doubt = curves.doubt(curve, point);
            JsonPage.put(entry, "low_mSv", dose * doubt.together().low());
            JsonPage.put(entry, "high_mSv", dose * doubt.together().high());
            DosePage.put(entry, doubt);
        }
    }

    private static void put(ObjectNode entry, PublishedDose figure) {
        JsonPage.put(entry, "areal_density_g_cm2", InUnits.gramsASquareCentimetre(figure.arealDensity()));
        JsonPage.put(entry, "modulation_W", figure.modulationW());
        JsonPage.put(entry, "published_year_mSv", InUnits.millisieverts(figure.dome() * CurveSheets.YEAR_DAYS));
        JsonPage.put(entry, "ours_year_mSv", InUnits.millisieverts(figure.ours() * CurveSheets.YEAR_DAYS));
        entry.put("quantity", figure.work().quantity()).put("source", figure.work().source())
                .put("counts_for_band", figure.work().counts());
    }

    static void putComposition(ObjectNode page, List<CurveSheets> sheets, List<Double> depths) {
        ArrayNode all = page.putArray("composition");
        for (CurveSheets sheet : sheets) {
            DoseAgainstCover curves = sheet.curves();
            for (StationDose station : sheet.stations()) {
                ObjectNode entry = all.addObject().put("station", station.hull() + "/" + station.station());
                put(entry.putObject("cosmic_year"),
                        CurveSheets.atStation(curves.cosmic(), station).times(CurveSheets.YEAR_DAYS));
                curves.event().ifPresent(e -> put(entry.putObject("event_whole"),
                        CurveSheets.atStation(e.curve(), station)));
            }
            for (double depth : depths) {
                ObjectNode entry = all.addObject();
                curves.hulls().forEach(entry.putArray("hulls")::add);
                JsonPage.put(entry, "dome_g_cm2", depth);
                put(entry.putObject("cosmic_year"),
                        curves.cosmic().at(depth * KG_M2).underDome().times(CurveSheets.YEAR_DAYS));
                curves.event().ifPresent(e -> put(entry.putObject("event_whole"),
                        e.curve().at(depth * KG_M2).underDome()));
            }
        }
    }

    private static void put(ObjectNode entry, Particles dose) {
        JsonPage.put(entry, "total_mSv", InUnits.millisieverts(dose.total()));
        JsonPage.put(entry, "fast_neutrons_mSv", InUnits.millisieverts(dose.fastNeutrons()));
        JsonPage.put(entry, "slow_neutrons_mSv", InUnits.millisieverts(dose.slowNeutrons()));
        JsonPage.put(entry, "protons_mSv", InUnits.millisieverts(dose.protons()));
        JsonPage.put(entry, "helium_mSv", InUnits.millisieverts(dose.helium()));
        JsonPage.put(entry, "heavy_mSv", InUnits.millisieverts(dose.heavy()));
        JsonPage.put(entry, "pions_mSv", InUnits.millisieverts(dose.pions()));
        JsonPage.put(entry, "gammas_mSv", InUnits.millisieverts(dose.gammas()));
    }
}
