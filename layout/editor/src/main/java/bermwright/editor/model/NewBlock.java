// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.site.plan.Anchor;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.EventFit;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.PassThrough;
import bermwright.site.plan.Person;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Station;
import bermwright.site.plan.Stowage;
import bermwright.site.plan.WorkStep;
import java.util.Map;

/** What a new block or list item in a form begins with: the figures a plan cannot do without. */
final class NewBlock {
    private static final String PLATE = "{\"kind\":\"plate\",\"width_m\":2,\"height_m\":1,\"depth_m\":1.5}";
    private static final String LINES = "{\"lug_from_base_m\":28,\"winch\":{\"behind_pivot_m\":45,\"anchor\":" + PLATE
            + "}}";
    private static final Map<Class<? extends Record>, String> STARTS = Map.ofEntries(
            Map.entry(Hull.SkinLayer.class, "{\"material\":\"steel\",\"areal_density_g_cm2\":3}"),
            Map.entry(Stowage.class, "{\"id\":\"water\",\"material\":\"water\",\"areal_density_g_cm2\":20,"
                    + "\"from_along_m\":0,\"to_along_m\":10}"),
            Map.entry(Hull.Shell.class, "{\"thickness_mm\":5,\"modulus_GPa\":200,\"yield_MPa\":350}"),
            Map.entry(LoweringGear.class, "{\"means\":\"lines\",\"lines\":" + LINES + "}"),
            Map.entry(LoweringGear.Lines.class, LINES),
            Map.entry(LoweringGear.Winch.class, "{\"behind_pivot_m\":45}"),
            Map.entry(LoweringGear.Poles.class, "{\"height_m\":24,\"behind_pivot_m\":9,\"half_spread_m\":5}"),
            Map.entry(LoweringGear.Stay.class, "{\"behind_pole_m\":24,\"half_spread_m\":5,\"anchor\":" + PLATE + "}"),
            Map.entry(LoweringGear.PullOver.class, "{\"lug_from_base_m\":28,\"anchor_ahead_m\":55,\"anchor\":" + PLATE
                    + "}"),
            Map.entry(LoweringGear.PivotHold.class,
                    "{\"anchor\":{\"kind\":\"screw\",\"count\":4,\"diameter_m\":0.4,\"depth_m\":2}}"),
            Map.entry(LoweringGear.SideThrusters.class,
                    "{\"count\":4,\"thrust_each_kN\":30,\"from_base_m\":34,\"specific_impulse_s\":320}"),
            Map.entry(LoweringGear.Light.class, "{\"from_h\":0,\"to_h\":336,\"in\":\"sun\"}"),
            Map.entry(Anchor.class, PLATE),
            Map.entry(Hatch.class, "{\"id\":\"hatch\",\"end\":\"base\",\"width_m\":1.2,\"height_m\":2}"),
            Map.entry(Station.class, "{\"id\":\"station\",\"along_m\":18}"),
            Map.entry(CoverPlan.class, "{\"thickness_m\":2.5}"),
            Map.entry(PassThrough.class, "{\"id\":\"feed-through\",\"kind\":\"feed-through\",\"along_m\":18,"
                    + "\"width_m\":0.4,\"length_m\":0.4}"),
            Map.entry(GroundPlan.DensityAtDepth.class, "{\"depth_m\":0,\"density_kg_m3\":1300}"),
            Map.entry(GroundPlan.StrengthAtDepth.class,
                    "{\"depth_m\":0,\"friction_angle_deg\":42,\"cohesion_Pa\":500}"),
            Map.entry(WorkStep.SurveyedEnd.class, "{\"east_m\":0,\"north_m\":0}"),
            Map.entry(WorkStep.AsBuilt.class, "{\"elevation_file\":\"survey.tif\"}"),
            Map.entry(EventFit.class, "{\"name\":\"event\",\"fluence_per_cm2\":1e9,\"soft_index\":1,\"fold_GV\":0.1,"
                    + "\"steep_index\":5,\"source\":\"to be stated\"}"),
            Map.entry(Person.class, "{\"id\":\"person\",\"to_shelter_min\":30}"),
            Map.entry(Person.Before.class, "{\"dose_mSv\":0,\"source\":\"to be stated\"}"),
            Map.entry(ExposurePlan.Limit.class, "{\"limit_mSv\":150,\"source\":\"set in this plan\"}"));

    private NewBlock() {
    }

    /** JSON of a new block; no keys where all may be left out or what they name is not in the plan. */
    static String json(Class<? extends Record> type, Plan plan) {
        if (type == Person.Hours.class) {
            return plan.hulls().stream().flatMap(h -> h.stations().stream().map(s -> h.named(s.id()))).findFirst()
                    .map(at -> "{\"at\":\"" + at + "\",\"hours_a_day\":8}").orElse("{}");
        }
        return STARTS.getOrDefault(type, "{}");
    }
}
