// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.report.exchange.Feature;
import bermwright.shielding.scene.HullSolid;
import bermwright.site.assessment.Assessment;
import bermwright.site.exposure.SiteScene;
import bermwright.site.haulage.DugGround;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Preparation;
import bermwright.site.plan.Station;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.relief.ContourLine;
import bermwright.terrain.relief.Contours;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Stations and hatches where the hulls come to lie, and the floors of what is dug, as features. */
final class PlacedFeatures {
    /** Where a pit is dug to within this of its depth, its floor is drawn (m); what machines can hold. */
    private static final double FLOOR_WITHIN = 0.01;

    private PlacedFeatures() {
    }

    static List<Feature> of(Assessment assessment) {
        List<Feature> features = new ArrayList<>();
        assessment.cover().ifPresent(cover -> {
            SiteScene scene = SiteScene.of(assessment.plan(), cover);
            for (Hull hull : assessment.plan().hulls()) {
                scene.hull(hull.id()).ifPresent(solid -> inside(hull, solid, scene, features));
            }
            for (Preparation preparation : assessment.plan().preparations()) {
                features.add(floor(preparation, cover.prepared()));
            }
        });
        ElevationGrid ground = assessment.ground().grid().withPatches(List.of());
        assessment.earthworks().ifPresent(soil -> soil.dug().forEach(dug -> pit(dug, ground, features)));
        return features;
    }

    private static void inside(Hull hull, HullSolid solid, SiteScene scene, List<Feature> features) {
        for (Station station : hull.stations()) {
            Map<String, Object> attributes = new LinkedHashMap<>();
            attributes.put("hull", hull.id());
            attributes.put("along_m", station.along());
            attributes.put("across_m", station.across());
            attributes.put("up_m", station.up());
            attributes.put("occupancy_share", station.occupancyShare());
            attributes.put("storm_shelter", station.stormShelter() ? "yes" : "no");
            features.add(new Feature("stations", hull.named(station.id()), Feature.Shape.POINT,
                    List.of(scene.projected(SiteScene.place(station, solid))), attributes));
        }
        for (Hatch hatch : hull.hatches()) {
            Map<String, Object> attributes = new LinkedHashMap<>();
            attributes.put("hull", hull.id());
            attributes.put("in_end", hatch.end().word());
            attributes.put("clear_width_m", hatch.width());
            attributes.put("clear_height_m", hatch.height());
            attributes.put("sill_m", hatch.sill());
            features.add(new Feature("hatches", hull.named(hatch.id()), Feature.Shape.POINT,
                    List.of(scene.projected(SiteScene.place(hatch, hull, solid))), attributes));
        }
    }

    /** The outline of what is prepared, on the ground as it is then. */
    private static Feature floor(Preparation preparation, ElevationGrid prepared) {
        return new Feature(preparation.kind() == Preparation.Kind.RAMP ? "ramps" : "prepared_floors", preparation.id(),
                Feature.Shape.AREA, preparation.area().corners().stream().map(p -> on(prepared, p)).toList(),
                Map.of("kind", preparation.kind().word(), "level_m", preparation.level().orElse(Double.NaN),
                        "greatest_grade_deg", Math.toDegrees(preparation.greatestGrade()), "side_slope_deg",
                        Math.toDegrees(preparation.sideSlope())));
    }

    /** The floor of a pit dug as deep as its soil is needed: inside its slopes, at the heights it is dug to. */
    private static void pit(DugGround dug, ElevationGrid ground, List<Feature> features) {
        double depth = dug.depth();
        if (!(depth > FLOOR_WITHIN)) {
            return;
        }
        ElevationGrid after = dug.dugIn(ground);
        double[] taken = ground.heights();
        double[] left = after.heights();
        for (int i = 0; i < taken.length; i++) {
            taken[i] -= left[i];
        }
        int number = 0;
        for (ContourLine line : Contours.at(ground.withHeights(taken), depth - FLOOR_WITHIN)) {
            if (line.isClosed() && line.points().size() > 2) {
                List<Vec3> places = line.points().stream().map(p -> on(after, p)).toList();
                number++;
                features.add(new Feature("pit_floors", number == 1 ? dug.from() : dug.from() + " " + number,
                        Feature.Shape.AREA, places, Map.of("depth_m", depth, "lowest_m",
                                places.stream().mapToDouble(Vec3::z).min().orElse(Double.NaN), "highest_m",
                                places.stream().mapToDouble(Vec3::z).max().orElse(Double.NaN), "used_bank_m3",
                                dug.used(), "usable_bank_m3", dug.usable())));
            }
        }
    }

    private static Vec3 on(ElevationGrid ground, Point place) {
        return place.at(ground.height(place));
    }
}
