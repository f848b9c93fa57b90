// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.lowering.body.Ground;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.Tube;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.thrust.Thrusters;
import bermwright.regolith.Regolith;
import bermwright.site.gear.GearPlaces;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import java.util.Optional;

/**
 * A hull of a plan as mechanics sees it.
 *
 * @param plane   the plane it is laid down in
 * @param tipping the body on its pivot and ground
 * @param soil    the soil
 */
record HullCase(LayPlane plane, TippingBody tipping, Regolith soil) {
    /** The case of a hull on its ground, with sizes that mechanics can use. */
    static HullCase of(Plan plan, Hull hull, LyingPose pose, ElevationGrid ground) {
        GroundPlan site = plan.ground();
        TippingBody tipping = new TippingBody(GearFromPlan.body(hull),
                GearFromPlan.pivot(hull.pivot(), hull.radius()),
                new Ground(site.gravity(), pose.slopeAlong(), pose.slopeAcross(), site.pivotFriction()));
        return new HullCase(LayPlane.of(hull, pose.bed(), ground), tipping, PlanSoil.of(site).inPlace());
    }

    /** The lowering by lines, absent where no lines are given. */
    Optional<LoweringCase> byLines(Plan plan, Hull hull, ElevationGrid ground) {
        return byLines(plan, hull, ground, GearFromPlan.Landed.AS_PLANNED);
    }

    /** The lowering by lines of a hull that landed off its place, absent where no lines are given. */
    Optional<LoweringCase> byLines(Plan plan, Hull hull, ElevationGrid ground, GearFromPlan.Landed landed) {
        return hull.lowering().flatMap(gear -> new GearFromPlan(GearPlaces.of(gear), landed, plane, ground)
                .rig(gear, GearFromPlan.factors(plan.rules()))
                .map(rig -> new LoweringCase(tipping, rig, soil, gear.rate(), shell(hull))));
    }

    /** The bare shell, where it is thin enough to be one. */
    private static Optional<Tube> shell(Hull hull) {
        return hull.shell().filter(s -> s.thickness() < hull.radius())
                .map(s -> new Tube(2 * hull.radius(), s.thickness(), s.yield(), s.modulus()));
    }

    /** The side thrusters, absent where none are given. */
    static Optional<Thrusters> thrusters(Hull hull) {
        return hull.lowering().flatMap(LoweringGear::sideThrusters).map(t -> new Thrusters(t.count(), t.thrustEach(),
                t.fromBase(), t.cant(), t.specificImpulse()));
    }
}
