// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.sheet.CurveSheets;
import bermwright.shielding.dose.DoseCurve;
import bermwright.shielding.dose.Particles;
import bermwright.shielding.dose.PublishedDose;
import bermwright.shielding.fold.DoseUncertainty;
import bermwright.site.exposure.DoseAgainstCover;
import bermwright.site.exposure.StationDose;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Dose against cover and the particles that make it, for programs. */
final class CurveJson {
    private static final double KG_M2 = 10;

    private CurveJson() {
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
        JsonObjects.put(entry, "modulation_W", curves.modulationW());
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
            JsonObjects.put(entry, "areal_density_g_cm2", InUnits.gramsASquareCentimetre(point.arealDensity()));
            JsonObjects.put(entry, "dose_mSv", dose);
            DoseUncertainty uncertainty = curves.uncertainty(curve, point);
            JsonObjects.put(entry, "low_mSv", dose * uncertainty.together().low());
            JsonObjects.put(entry, "high_mSv", dose * uncertainty.together().high());
            DoseJson.put(entry, uncertainty);
        }
    }

    private static void put(ObjectNode entry, PublishedDose figure) {
        JsonObjects.put(entry, "areal_density_g_cm2", InUnits.gramsASquareCentimetre(figure.arealDensity()));
        JsonObjects.put(entry, "modulation_W", figure.modulationW());
        JsonObjects.put(entry, "published_year_mSv", InUnits.millisieverts(figure.dome() * CurveSheets.YEAR_DAYS));
        JsonObjects.put(entry, "ours_year_mSv", InUnits.millisieverts(figure.ours() * CurveSheets.YEAR_DAYS));
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
                JsonObjects.put(entry, "dome_g_cm2", depth);
                put(entry.putObject("cosmic_year"),
                        curves.cosmic().at(depth * KG_M2).underDome().times(CurveSheets.YEAR_DAYS));
                curves.event().ifPresent(e -> put(entry.putObject("event_whole"),
                        e.curve().at(depth * KG_M2).underDome()));
            }
        }
    }

    private static void put(ObjectNode entry, Particles dose) {
        JsonObjects.put(entry, "total_mSv", InUnits.millisieverts(dose.total()));
        JsonObjects.put(entry, "fast_neutrons_mSv", InUnits.millisieverts(dose.fastNeutrons()));
        JsonObjects.put(entry, "slow_neutrons_mSv", InUnits.millisieverts(dose.slowNeutrons()));
        JsonObjects.put(entry, "protons_mSv", InUnits.millisieverts(dose.protons()));
        JsonObjects.put(entry, "helium_mSv", InUnits.millisieverts(dose.helium()));
        JsonObjects.put(entry, "heavy_mSv", InUnits.millisieverts(dose.heavy()));
        JsonObjects.put(entry, "pions_mSv", InUnits.millisieverts(dose.pions()));
        JsonObjects.put(entry, "gammas_mSv", InUnits.millisieverts(dose.gammas()));
    }
}
