// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.Ring;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.haulage.EarthworksInput;
import bermwright.site.haulage.Ramp;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.haulage.SoilOffer;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.site.stages.GearDigging;
import bermwright.site.stages.LiftedCover;
import bermwright.site.stages.PlacedCover;
import bermwright.site.stages.PreparedGround;
import bermwright.site.stages.StagesInput;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Gathers what soil a plan wants and what soil its own cuts give: covers, ramps up to them, and preparations. */
final class SoilBalance {
    /** Less soil than this is not worth a haul (m3). */
    private static final double LEAST = 0.5;

    private final Plan plan;
    private final SiteCover cover;
    private final Map<String, List<Ring>> toes;

    SoilBalance(Plan plan, SiteCover cover, Map<String, List<Ring>> toes) {
        this.plan = plan;
        this.cover = cover;
        this.toes = toes;
    }

    EarthworksInput input(PreparedGround prepared, GearDigging digging) {
        List<SoilNeed> needs = new ArrayList<>(covers());
        List<SoilOffer> offers = new ArrayList<>();
        PlanSoil soil = PlanSoil.of(plan.ground());
        TrueMetres metres = prepared.surface().metres();
        for (PreparedGround.Moved moved : prepared.moved()) {
            String id = moved.id();
            if (moved.volumes().fill() > LEAST) {
                needs.add(new SoilNeed(id, SoilNeed.Kind.FILL, moved.volumes().fill(),
                        soil.states().placed(),
                        List.of(moved.area())));
            }
            if (moved.volumes().cut() > LEAST) {
                double depth = moved.volumes().cut() / metres.area(moved.area().area());
                offers.add(new SoilOffer(id, moved.volumes().cut(), soil.bankDensity(depth), moved.area()));
            }
        }
        offers.addAll(digging.leftOver(plan));
        return new EarthworksInput(plan, prepared.surface(), needs, offers, EarthworksInput.Objective.MACHINE_HOURS);
    }

    private List<SoilNeed> covers() {
        List<SoilNeed> needs = new ArrayList<>();
        List<PlacedCover> placed = StagesInput.under(plan, cover, Optional.empty()).covers();
        for (HullCover one : cover.hulls()) {
            Optional<Hull> hull = plan.hull(one.id());
            if (hull.isPresent() && one.volume() > LEAST) {
                double density = one.placedMass() / one.volume();
                List<Ring> outlines = toes.getOrDefault(one.id(),
                        List.of(hull.get().bed(cover.natural().metres())));
                SoilNeed need = new SoilNeed(one.id(), SoilNeed.Kind.COVER, one.volume(), density, outlines);
                needs.add(need);
                ramp(hull.get(), placed).filter(r -> r.volume() > LEAST)
                        .ifPresent(r -> needs.add(need.forRamp(r)));
            }
        }
        return needs;
    }

    /** The ramp to the crown, where the plan's machine needs one. */
    private Optional<Ramp> ramp(Hull hull, List<PlacedCover> placed) {
        return placed.stream().filter(p -> p.hull().equals(hull.id())).findFirst()
                .flatMap(p -> LiftedCover.of(hull, cover.prepared(), p))
                .flatMap(l -> Ramp.on(plan, hull.id(), l.top()));
    }
}
