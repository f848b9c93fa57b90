// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.sheet.CurveSheets;
import bermwright.shielding.dose.Particles;
import bermwright.site.answer.DoseAnswers;
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
        JsonObjects.putAll(page, "published", DoseAnswers.PUBLISHED, sheets.stream().findFirst()
                .map(s -> s.curves().cosmic().published()).orElse(List.of()));
    }

    private static void put(ObjectNode entry, DoseAgainstCover curves) {
        curves.hulls().forEach(entry.putArray("hulls")::add);
        entry.put("materials", curves.materials());
        JsonObjects.put(entry, "modulation_W", curves.modulationW());
        entry.put("under", "dome of equal thickness, without the ground's return");
        JsonObjects.putAll(entry, "cosmic_year", DoseAnswers.POINTS, DoseAnswers.OnCurve.of(curves, curves.cosmic(),
                DoseAnswers.YEAR_DAYS));
        curves.event().ifPresent(event -> {
            entry.put("event", event.name());
            JsonObjects.putAll(entry, "event_whole", DoseAnswers.POINTS, DoseAnswers.OnCurve.of(curves, event.curve(),
                    1));
        });
    }

    static void putComposition(ObjectNode page, List<CurveSheets> sheets, List<Double> depths) {
        ArrayNode all = page.putArray("composition");
        for (CurveSheets sheet : sheets) {
            DoseAgainstCover curves = sheet.curves();
            for (StationDose station : sheet.stations()) {
                ObjectNode entry = all.addObject().put("station", station.name());
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
        JsonObjects.put(entry, DoseAnswers.PARTICLES, dose);
    }
}
