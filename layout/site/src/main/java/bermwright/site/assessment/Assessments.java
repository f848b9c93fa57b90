// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.shielding.cover.DepthMaps;
import bermwright.shielding.dose.Responses;
import bermwright.site.burial.HullBurial;
import bermwright.site.clearance.Clearance;
import bermwright.site.egress.WaysOut;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.ThinnerCover;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.haulage.Earthworks;
import bermwright.site.haulage.EarthworksInput;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.hazard.SiteHazards;
import bermwright.site.laydown.Laydown;
import bermwright.site.laydown.KnownLaydowns;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.pose.LyingPose;
import bermwright.site.stages.GearDigging;
import bermwright.site.stages.PreparedGround;
import bermwright.site.stages.SettingOut;
import bermwright.site.stages.SlopeChecks;
import bermwright.site.stages.Stages;
import bermwright.site.stages.StagesInput;
import bermwright.site.stages.StagesResult;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Runs all checks of a plan in order. Who keeps one and asks it again after a change gets the very same answers as from
 * a new one, sooner.
 */
public final class Assessments {
    private final Responses responses;
    private final DepthMaps depths = new DepthMaps();
    private final KnownLaydowns knownLaydowns = new KnownLaydowns();
    private Optional<DoseSources> sources = Optional.empty();

    /**
     * Checks that take their dose responses from a source.
     *
     * @param responses where built-in responses come from
     */
    public Assessments(Responses responses) {
        this.responses = responses;
    }

    /**
     * Checks that keep built responses in the user's cache.
     *
     * @return the checks
     */
    public static Assessments standard() {
        return new Assessments(Responses.standard());
    }

    /**
     * Everything about a plan.
     *
     * @param plan     the plan
     * @param planName name of its file, for pages and answers
     * @param ground   its ground
     * @param progress told how far the work has come; may cancel it
     * @return the assessment
     * @throws java.util.concurrent.CancellationException if the work was cancelled
     * @throws bermwright.foundation.InputException if a table or spectrum beside the plan cannot be used
     */
    public Assessment run(Plan plan, String planName, SiteGround ground, Progress progress) {
        return run(Asked.EVERYTHING, new Site(plan, planName, ground), progress);
    }

    /**
     * How much of a plan is worked out. Ground, laying down, clearances, covers and shells always are, for they are
     * quick and any of them may refuse the plan; what else is not asked for is absent from the assessment.
     */
    public enum Asked {
        /** All there is. */
        EVERYTHING,
        /** All there is of the finished site: nothing of covers that are only part-built. */
        FINISHED,
        /** Nothing more. */
        SHAPES,
        /** Dose under the finished covers. */
        DOSE,
        /** Soil and the order of work. */
        EARTHWORKS;

        private boolean isFor(Asked part) {
            return this == EVERYTHING || this == FINISHED || this == part;
        }
    }

    /**
     * A plan on its ground.
     *
     * @param plan   the plan
     * @param name   name of its file, for pages and answers
     * @param ground its ground
     */
    public record Site(Plan plan, String name, SiteGround ground) {
        /** Refuses surveys that are not there before any work is done. */
        public Site {
            Surveyed.check(plan, ground);
        }
    }

    /**
     * A part of what can be known about a plan.
     *
     * @param asked    how much
     * @param site     the plan on its ground
     * @param progress told how far the work has come; may cancel it
     * @return the assessment, without what was not asked for
     * @throws java.util.concurrent.CancellationException if the work was cancelled
     * @throws bermwright.foundation.InputException if a table or spectrum beside the plan cannot be used
     */
    public Assessment run(Asked asked, Site site, Progress progress) {
        return run(asked, site, progress, early -> { });
    }

    /**
     * Dose under the covers as designed, which is known before all else that is asked of a plan.
     *
     * @param plan the plan
     * @param dose the doses under its finished covers
     */
    public record Designed(Plan plan, SiteDose dose) {
    }

    /**
     * A part of what can be known about a plan, dose under the finished covers first.
     *
     * @param asked    how much
     * @param site     the plan on its ground
     * @param progress told how far the work has come; may cancel it
     * @param early    takes the dose as designed as soon as it is known, where dose is asked for
     * @return the assessment, without what was not asked for
     * @throws java.util.concurrent.CancellationException if the work was cancelled
     * @throws bermwright.foundation.InputException if a table or spectrum beside the plan cannot be used
     */
    public Assessment run(Asked asked, Site site, Progress progress, Consumer<Designed> early) {
        Plan plan = site.plan;
        SiteGround ground = site.ground;
        Designs design = designed(asked, site, progress, early);
        PreparedGround prepared = design.prepared;
        ElevationGrid bed = prepared.surface();
        SiteCover cover = design.cover;
        Optional<SiteDose> dose = design.dose;
        List<Finding> findings = new ArrayList<>(ground.findings());
        findings.addAll(prepared.findings());
        List<ModelNote> models = new ArrayList<>();
        progress.report(0.35, "laying down");
        List<Laydown> laydowns = knownLaydowns.all(plan, bed);
        laydowns.forEach(l -> findings.addAll(l.findings()));
        laydowns.forEach(l -> models.addAll(l.notes()));
        progress.check();
        models.add(SiteCover.note());
        progress.report(0.4, "measuring clearances");
        Map<String, List<Ring>> toes = toes(plan, cover);
        SiteShapes shapes = SiteShapes.of(plan, Optional.of(bed), toes);
        findings.addAll(Clearance.of(shapes, Optional.of(bed), mounds(plan, cover)).findings());
        findings.addAll(cover.findings());
        progress.check();
        progress.report(0.45, "trying thinner covers");
        dose.ifPresent(d -> noted(d, ThinnerCover.findings(plan, cover, design.sources, d), findings, models));
        progress.check();
        GearDigging digging = GearDigging.of(shapes, bed);
        Work work = asked.isFor(Asked.EARTHWORKS)
                ? work(plan, cover, new SoilBalance(plan, cover, toes).input(prepared, digging),
                        progress.part(0.6, 0.75))
                : Work.NONE;
        noted(work, findings, models);
        Optional<SlopeChecks> slopes = asked.isFor(Asked.EARTHWORKS) ? Optional.of(SlopeChecks.of(plan, cover))
                : Optional.empty();
        slopes.ifPresent(s -> findings.addAll(s.findings()));
        slopes.ifPresent(s -> models.addAll(List.of(SlopeChecks.note(), GearDigging.note())));
        List<PartBuilt> partBuilt = work.stages.isEmpty() || dose.isEmpty() || asked == Asked.FINISHED
                ? List.of()
                : PartBuilt.of(new PartBuilt.Finished(plan, cover, dose.get(), depths), work.stages.get(),
                        design.sources, progress.part(0.75, 0.98));
        Surveys surveys = surveys(Surveys.of(plan, ground, cover, work.stages, progress), findings);
        work.stages.ifPresent(s -> findings.addAll(PartBuilt.findings(plan, s.stages(), partBuilt)));
        WorkCalendar.lacking(plan, ground, work.stages).ifPresent(findings::add);
        List<HullBurial> burials = burials(HullBurial.of(plan, cover), findings, models);
        findings.addAll(HullBurial.notReckoned(plan, cover));
        WaysOut waysOut = waysOut(WaysOut.of(shapes, cover), findings);
        SiteHazards hazards = hazards(SiteHazards.of(plan, cover, dose), findings, models);
        progress.report(1, "done");
        return new Assessment(plan, site.name, Version.text(), ground, Cautions.of(ground), each(models),
                Numbered.worstFirst(FindingPlaces.moved(findings, plan, bed)),
                hulls(plan, bed, new Parts(laydowns, cover, dose, burials)), shapes, Optional.of(cover), dose,
                work.earthworks, work.stages, partBuilt, work.stages.map(StagesResult::settingOut).orElseGet(() ->
                        asked != Asked.EVERYTHING ? List.of()
                        : SettingOut.of(StagesInput.under(plan, cover, Optional.empty()))), waysOut, slopes,
                hazards, digging, surveys);
    }

    /** A plan as it is to be once all work is done, and the dose then. */
    private record Designs(PreparedGround prepared, SiteCover cover, DoseSources sources, Optional<SiteDose> dose) {
    }

    private Designs designed(Asked asked, Site site, Progress progress, Consumer<Designed> early) {
        progress.report(0.02, "preparing the ground");
        ElevationGrid natural = site.ground.grid();
        PreparedGround prepared = PreparedGround.of(site.plan, natural);
        progress.report(0.04, "raising the cover");
        SiteCover cover = SiteCover.raised(site.plan, natural, prepared.surface(), depths);
        progress.check();
        DoseSources from = sources(site.ground);
        Optional<SiteDose> dose = asked.isFor(Asked.DOSE)
                ? Optional.of(SiteDose.of(site.plan, cover, from, progress.part(0.1, 0.35))) : Optional.empty();
        dose.ifPresent(d -> early.accept(new Designed(site.plan, d)));
        progress.check();
        return new Designs(prepared, cover, from, dose);
    }

    private static void noted(SiteDose dose, List<Finding> thinner, List<Finding> findings, List<ModelNote> models) {
        findings.addAll(dose.findings());
        findings.addAll(thinner);
        models.addAll(dose.models());
    }

    /** Where responses come from: the same as before for a plan beside the same files, with what is known by then. */
    private synchronized DoseSources sources(SiteGround ground) {
        sources = sources.filter(s -> s.directory().equals(ground.directory()))
                .or(() -> Optional.of(new DoseSources(responses, ground.directory())));
        return sources.get();
    }

    private static WaysOut waysOut(WaysOut ways, List<Finding> findings) {
        findings.addAll(ways.findings());
        return ways;
    }

    private static Surveys surveys(Surveys surveys, List<Finding> findings) {
        findings.addAll(surveys.findings());
        return surveys;
    }

    private static List<HullBurial> burials(List<HullBurial> burials, List<Finding> findings, List<ModelNote> models) {
        burials.forEach(b -> findings.addAll(b.findings()));
        burials.forEach(b -> models.add(b.supports().note()));
        return burials;
    }

    private static SiteHazards hazards(SiteHazards hazards, List<Finding> findings, List<ModelNote> models) {
        findings.addAll(hazards.findings());
        models.addAll(hazards.notes());
        return hazards;
    }

    private static void noted(Work work, List<Finding> findings, List<ModelNote> models) {
        work.earthworks.ifPresent(e -> findings.addAll(e.findings()));
        work.earthworks.ifPresent(e -> models.addAll(e.notes()));
        work.stages.ifPresent(s -> findings.addAll(s.findings()));
        work.stages.ifPresent(s -> models.addAll(s.notes()));
    }

    private record Work(Optional<EarthworksResult> earthworks, Optional<StagesResult> stages) {
        static final Work NONE = new Work(Optional.empty(), Optional.empty());
    }

    private static Work work(Plan plan, SiteCover cover, EarthworksInput soil, Progress progress) {
        EarthworksResult earthworks = Earthworks.of(soil, progress.part(0, 0.7));
        progress.check();
        return new Work(Optional.of(earthworks), plan.orderOfWork().isEmpty() ? Optional.empty()
                : Optional.of(Stages.of(StagesInput.under(plan, cover, Optional.of(earthworks)),
                        progress.part(0.7, 1))));
    }

    private record Parts(List<Laydown> laydowns, SiteCover cover, Optional<SiteDose> dose,
            List<HullBurial> burials) {
    }

    private static List<HullAssessment> hulls(Plan plan, ElevationGrid ground, Parts parts) {
        List<HullAssessment> hulls = new ArrayList<>();
        for (Hull hull : plan.hulls()) {
            String id = hull.id();
            hulls.add(new HullAssessment(hull, LyingPose.of(hull, ground),
                    parts.laydowns.stream().filter(l -> l.hull().equals(id)).findFirst(), parts.cover.hull(id),
                    parts.dose.map(SiteDose::stations).orElse(List.of()).stream()
                            .filter(s -> s.hull().equals(id)).toList(),
                    parts.burials.stream().filter(b -> b.id().equals(id)).findFirst()));
        }
        return hulls;
    }

    /** The toes of the mound by hull: those around the middle of the lying hull. */
    static Map<String, List<Ring>> toes(Plan plan, SiteCover cover) {
        Map<String, List<Ring>> toes = new HashMap<>();
        for (Hull hull : plan.hulls()) {
            Point middle = hull.bed(cover.natural().metres()).centre();
            List<Ring> around = cover.toes().stream().filter(t -> t.contains(middle)).toList();
            if (!around.isEmpty() && hull.cover().isPresent()) {
                toes.put(hull.id(), around);
            }
        }
        return toes;
    }

    /** The ground with each hull's own soil on it; where covers run together, soil is the nearest hull's. */
    static Map<String, ElevationGrid> mounds(Plan plan, SiteCover cover) {
        Map<String, ElevationGrid> mounds = new HashMap<>();
        StagesInput.under(plan, cover, Optional.empty()).covers().forEach(c -> mounds.put(c.hull(), c.finished()));
        return mounds;
    }

    private static List<ModelNote> each(List<ModelNote> models) {
        Map<String, ModelNote> byId = new LinkedHashMap<>();
        models.forEach(m -> byId.merge(m.id(), m, Assessments::lessSure));
        return List.copyOf(byId.values());
    }

    /** Of two notes on one model the one that can be leaned on less. */
    private static ModelNote lessSure(ModelNote one, ModelNote other) {
        return other.status().ordinal() > one.status().ordinal() ? other : one;
    }
}
