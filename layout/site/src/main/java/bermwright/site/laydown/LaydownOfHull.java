// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.sequence.Lowered;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringCase;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.sequence.Trouble;
import bermwright.site.finding.Finding;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works out how a hull of a plan comes to lie on its ground. */
public final class LaydownOfHull {
    private final Plan plan;
    private final Hull hull;
    private final ElevationGrid ground;
    private final List<Finding> findings = new ArrayList<>();
    private final List<ModelNote> notes = new ArrayList<>();

    private LaydownOfHull(Plan plan, Hull hull, ElevationGrid ground) {
        this.plan = plan;
        this.hull = hull;
        this.ground = ground;
    }

    /**
     * How each hull of a plan comes to lie.
     *
     * @param plan   the plan
     * @param ground the ground as it is when the hulls are laid down
     * @return one answer for each hull, in the plan's order
     */
    public static List<Laydown> all(Plan plan, ElevationGrid ground) {
        return plan.hulls().stream().map(h -> of(plan, h, ground)).toList();
    }

    /**
     * How one hull comes to lie.
     *
     * @param plan   the plan, for its ground and rules
     * @param hull   the hull
     * @param ground the ground as it is when it is laid down
     * @return the answer; bad arrangements are findings in it
     */
    public static Laydown of(Plan plan, Hull hull, ElevationGrid ground) {
        return new LaydownOfHull(plan, hull, ground).laydown();
    }

    private Laydown laydown() {
        if (hull.arrival() == Hull.Arrival.STAYS_UPRIGHT) {
            return answer(Optional.empty(), Optional.empty());
        }
        if (!usable()) {
            return answer(Optional.empty(), Optional.empty());
        }
        Optional<LyingPose> pose = LyingPose.of(hull, ground);
        if (pose.isEmpty()) {
            find(Trouble.plain("lowering-no-ground", Trouble.Level.REFUSE,
                    "There is no ground under the lying hull: off the grid or no data. Lowering is not worked out."));
            return answer(Optional.empty(), Optional.empty());
        }
        LayPlane plane = LayPlane.of(hull, pose.get().bed(), ground);
        if (hull.arrival() == Hull.Arrival.LANDS_LYING) {
            return answer(Optional.of(plane), Optional.empty());
        }
        try {
            return lowered(plane, pose.get());
        } catch (IllegalArgumentException unusable) {
            find(Trouble.plain("lowering-unusable", Trouble.Level.REFUSE,
                    "Lowering is not worked out, for a size cannot be used: " + unusable.getMessage()));
            return answer(Optional.of(plane), Optional.empty());
        }
    }

    private Laydown lowered(LayPlane plane, LyingPose pose) {
        GroundPlan site = plan.ground();
        TippingBody tipping = new TippingBody(GearFromPlan.body(hull),
                GearFromPlan.pivot(hull.pivot(), hull.radius()),
                new Ground(site.gravity(), pose.slopeAlong(), pose.slopeAcross(), site.pivotFriction()));
        Optional<LoweringGear> gear = hull.lowering();
        if (gear.isEmpty()) {
            find(Trouble.plain("lowering-no-gear", Trouble.Level.REFUSE,
                    "The hull is to be lowered and no gear for it is given."));
            return answer(Optional.of(plane), Optional.empty());
        }
        Optional<Rig> rig = new GearFromPlan(hull, plane, ground).rig(gear.get(),
                GearFromPlan.factors(plan.rules()));
        if (rig.isEmpty()) {
            if (gear.get().means() == LoweringGear.Means.LINES) {
                find(Trouble.plain("lowering-no-lines", Trouble.Level.REFUSE,
                        "The hull is to be lowered by lines and none are given."));
            }
            return answer(Optional.of(plane), Optional.empty());
        }
        Lowered lowered = Lowering.of(new LoweringCase(tipping, rig.get(), GearFromPlan.soil(site),
                gear.get().rate()));
        if (gear.get().means() == LoweringGear.Means.LINES) {
            lowered.troubles().forEach(this::find);
        }
        lowered.result().ifPresent(r -> notes.addAll(r.notes()));
        return answer(Optional.of(plane), lowered.result());
    }

    /** Refuses what no mechanics can be made of. */
    private boolean usable() {
        if (!(plan.ground().gravity() > 0)) {
            find(Trouble.of("lowering-no-gravity", Trouble.Level.REFUSE,
                    new Trouble.Figures(plan.ground().gravity(), 0, "m/s2"), "statics",
                    "Without gravity nothing can be laid down."));
            return false;
        }
        double centre = hull.centreOfMassFromBase();
        if (!(centre > 0 && centre < hull.length())) {
            find(Trouble.of("lowering-centre-of-mass-outside", Trouble.Level.REFUSE,
                    new Trouble.Figures(centre, hull.length(), "m"), "size of the hull",
                    "The centre of mass is not between the ends of the hull."));
            return false;
        }
        return true;
    }

    private void find(Trouble trouble) {
        findings.add(new Finding(trouble.rule(), Finding.Level.valueOf(trouble.level().name()), hull.id(),
                trouble.measured(), trouble.limit(), trouble.unit(), Optional.of(place()), trouble.source(),
                trouble.text()));
    }

    private Point place() {
        return hull.baseCentre();
    }

    private Laydown answer(Optional<LayPlane> plane, Optional<LoweringResult> lowering) {
        return new Laydown(hull.id(), plane, lowering, findings, notes);
    }
}
