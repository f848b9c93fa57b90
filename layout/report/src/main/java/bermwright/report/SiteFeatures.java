// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.report.drawing.Ink;
import bermwright.report.exchange.Feature;
import bermwright.report.exchange.LayerLook;
import bermwright.report.exchange.SiteFrame;
import bermwright.report.map.MapStyle;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.footprint.Shape;
import bermwright.site.stages.SettingOutPoint;
import bermwright.terrain.gridfile.ReferenceSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** An assessment as features for other programs, on the natural ground. */
final class SiteFeatures {
    private SiteFeatures() {
    }

    /** All features: outlines, axes, stations, hatches, floors, points to set out, findings with a place. */
    static List<Feature> of(Assessment assessment) {
        List<Feature> features = new ArrayList<>();
        for (Shape shape : assessment.shapes().all()) {
            features.add(new Feature(shape.kind().name().toLowerCase(Locale.ROOT), shape.title(), Feature.Shape.AREA,
                    shape.outline().corners().stream().map(p -> onGround(assessment, p)).toList(),
                    Map.of("subject", shape.subject(), "part", shape.part())));
        }
        assessment.hulls().forEach(hull -> axis(hull, features));
        assessment.earthworks().ifPresent(soil -> soil.hauls().stream().filter(haul -> haul.way().size() > 1)
                .forEach(haul -> features.add(new Feature("haul_ways", haul.from() + " to " + haul.to(),
                        Feature.Shape.LINE, haul.way().stream().map(p -> onGround(assessment, p)).toList(),
                        Map.of("bank_m3", haul.bank(), "distance_m", haul.distance())))));
        for (SettingOutPoint point : assessment.settingOut()) {
            features.add(new Feature("setting_out", point.id(), Feature.Shape.POINT,
                    List.of(point.place()),
                    Map.of("subject", point.subject(), "what", point.kind().word(), "height_of",
                            point.kind().heightOf())));
        }
        for (Numbered numbered : Numbered.of(assessment.findings())) {
            numbered.finding().place().ifPresent(place -> features.add(finding(assessment, numbered, place)));
        }
        features.addAll(PlacedFeatures.of(assessment));
        return Feature.withOwnIds(features);
    }

    /** How the layers look on the site plan, for other programs. */
    static Map<String, LayerLook> looks(Assessment assessment) {
        Map<String, LayerLook> looks = new LinkedHashMap<>();
        assessment.shapes().all().forEach(shape -> looks.putIfAbsent(shape.kind().name().toLowerCase(Locale.ROOT),
                MapStyle.of(shape).look()));
        looks.put("haul_ways", MapStyle.HAUL_WAY.look());
        looks.put("setting_out", MapStyle.SETTING_OUT.look());
        looks.put("hatches", MapStyle.HATCH.look());
        looks.put("stations", MapStyle.STATION.look());
        looks.put("hull_axis", MapStyle.LYING_HULL.look());
        looks.put("prepared_floors", MapStyle.PREPARATION.look());
        looks.put("ramps", MapStyle.PREPARATION.look());
        looks.put("pit_floors", MapStyle.BORROW.look());
        looks.put("findings", new LayerLook(Ink.RED, 2, "", LayerLook.Fill.NONE));
        return looks;
    }

    private static void axis(HullAssessment of, List<Feature> features) {
        of.lying().ifPresent(pose -> features.add(new Feature("hull_axis", of.hull().id(), Feature.Shape.LINE,
                List.of(pose.axisStart(), pose.axisEnd()), Map.of("length_m", of.hull().length(), "diameter_m",
                of.hull().diameter(), "mass_t", of.hull().mass() / 1000))));
    }

    private static Feature finding(Assessment assessment, Numbered numbered, Point place) {
        Finding f = numbered.finding();
        Map<String, Object> attributes = new LinkedHashMap<>();
        attributes.put("number", numbered.number());
        attributes.put("level", f.level().word());
        attributes.put("rule", f.rule().id());
        attributes.put("subject", f.subject());
        attributes.put("measured", f.measured().orElse(Double.NaN));
        attributes.put("limit", f.limit().orElse(Double.NaN));
        attributes.put("unit", f.unit());
        attributes.put("text", f.text());
        attributes.put("todo", f.todo());
        return new Feature("findings", f.id(), Feature.Shape.POINT,
                List.of(onGround(assessment, place)), attributes);
    }

    private static Vec3 onGround(Assessment assessment, Point place) {
        return place.at(assessment.ground().grid().height(place));
    }

    /** The reference system of the places. */
    static SiteFrame frame(Assessment assessment) {
        Optional<ReferenceSystem> system = assessment.ground().file().referenceSystem();
        String code = system.flatMap(ReferenceSystem::code).orElse("");
        int colon = code.lastIndexOf(':');
        return new SiteFrame(system.map(ReferenceSystem::name).orElse("not stated by the elevation file"),
                colon > 0 ? code.substring(0, colon) : "", code.substring(colon + 1),
                system.map(ReferenceSystem::wellKnownText).orElse(""), assessment.ground().grid().metreScale());
    }
}
