// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.shielding.dose.Responses;
import bermwright.site.exposure.CoverTrial;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.SiteCover;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.haulage.Earthworks;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.sizing.LimitUse;
import bermwright.site.sizing.SizedCover;
import bermwright.site.stages.GearDigging;
import bermwright.site.stages.PreparedGround;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What thinner and thicker covers than the planned ones would cost and save: all covers of the plan at one share of
 * their thickness, raised anew, dug for and hauled anew, and every station folded anew.
 *
 * <p>Doses of trials settle to 1 %, and ground further than 90 m from the hulls is taken as level for them; soil and
 * hours are worked out as for the plan itself.
 *
 * @param steps the covers, thin to thick; none where the plan has no cover on known ground
 */
public record CoverTrade(List<Step> steps) {
    /** Less soil short than this is rounding (m3). */
    private static final double LEAST = 0.5;
    private static final double[] SHARES = {0.4, 0.6, 0.8, 1, 1.25, 1.5, 2};

    /** Copies the list. */
    public CoverTrade {
        steps = List.copyOf(steps);
    }

    /**
     * One cover that was tried.
     *
     * @param share    share of the planned thickness (1), positive
     * @param volume   soil placed for covers (m3), zero or more
     * @param hours    machine hours of all hauls (h); empty without machines, and where there is not enough soil
     * @param shortage bank volume that no borrow ground gives (m3), zero or more
     * @param worst    the station that uses most of its limits; empty without stations
     */
    public record Step(double share, double volume, OptionalDouble hours, double shortage,
            Optional<SizedCover.StationShare> worst) {
        /**
         * Whether it is the planned cover.
         *
         * @return true for the whole thickness
         */
        public boolean isPlanned() {
            return share == 1;
        }
    }

    /**
     * Tries other covers than a plan's.
     *
     * @param assessment an assessment of the plan with its earthworks
     * @param progress   told how far the work has come; may cancel it
     * @return what they would give
     */
    public static CoverTrade of(Assessment assessment, Progress progress) {
        Plan plan = assessment.plan();
        if (assessment.cover().filter(c -> !c.hulls().isEmpty()).isEmpty() || assessment.earthworks().isEmpty()) {
            return new CoverTrade(List.of());
        }
        SiteGround ground = assessment.ground();
        PreparedGround prepared = PreparedGround.of(plan, ground.grid());
        CoverTrial trial = CoverTrial.of(plan, ground.grid(), prepared.surface(),
                new DoseSources(Responses.standard(), ground.directory()), Progress.NONE);
        LimitUse limits = new LimitUse(plan, trial.outside());
        List<Step> steps = new ArrayList<>();
        for (double share : SHARES) {
            progress.check();
            progress.report((double) steps.size() / SHARES.length, "trying other covers");
            Optional<SizedCover.StationShare> worst = limits.worst(trial.scaled(share));
            boolean planned = share == 1;
            Plan scaled = planned ? plan : scaled(plan, share);
            SiteCover cover = planned ? assessment.cover().get()
                    : SiteCover.raised(scaled, ground.grid(), prepared.surface());
            EarthworksResult works = planned ? assessment.earthworks().get() : works(scaled, cover, prepared);
            boolean enough = works.shortage() < LEAST;
            steps.add(new Step(share, cover.volume(), enough ? works.machineHours() : OptionalDouble.empty(),
                    enough ? 0 : works.shortage(), worst));
        }
        return new CoverTrade(steps);
    }

    private static Plan scaled(Plan plan, double share) {
        Plan scaled = plan;
        for (Hull hull : plan.hulls()) {
            scaled = scaled.withHull(hull.id(), h -> h.withCover(h.cover().map(c -> c.times(share))));
        }
        return scaled;
    }

    private static EarthworksResult works(Plan plan, SiteCover cover, PreparedGround prepared) {
        Map<String, List<Ring>> toes = Assessments.toes(plan, cover);
        GearDigging digging = GearDigging.of(SiteShapes.of(plan, Optional.of(prepared.surface()), toes),
                prepared.surface());
        return Earthworks.of(new SoilBalance(plan, cover, toes).input(prepared, digging), Progress.NONE);
    }
}
