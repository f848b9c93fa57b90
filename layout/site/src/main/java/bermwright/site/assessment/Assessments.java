// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.shielding.dose.Responses;
import bermwright.site.burial.HullBurial;
import bermwright.site.clearance.Clearance;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.finding.Finding;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.haulage.Earthworks;
import bermwright.site.haulage.EarthworksInput;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.laydown.Laydown;
import bermwright.site.laydown.LaydownOfHull;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Runs all checks of a plan in order. */
public final class Assessments {
    private final Responses responses;

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
        ElevationGrid natural = ground.grid();
        progress.report(0.02, "laying down");
        List<Laydown> laydowns = LaydownOfHull.all(plan, natural);
        progress.check();
        progress.report(0.1, "raising the cover");
        SiteCover cover = SiteCover.raised(plan, natural, natural);
        progress.check();
        progress.report(0.25, "measuring clearances");
        SiteShapes shapes = SiteShapes.of(plan, Optional.of(natural), toes(plan, cover));
        List<Finding> clearance = Clearance.check(shapes, Optional.of(natural));
        progress.check();
        progress.report(0.35, "counting the dose");
        SiteDose dose = SiteDose.of(plan, cover, new DoseSources(responses, ground.directory()),
                progress.part(0.35, 0.8));
        progress.check();
        progress.report(0.8, "feeding the covers with soil");
        EarthworksResult earthworks = Earthworks.of(new EarthworksInput(plan, natural, needs(plan, cover), List.of(),
                EarthworksInput.Objective.MACHINE_HOURS), progress.part(0.8, 0.98));
        List<HullBurial> burials = HullBurial.of(plan, cover);
        List<Finding> findings = new ArrayList<>();
        laydowns.forEach(l -> findings.addAll(l.findings()));
        findings.addAll(clearance);
        findings.addAll(cover.findings());
        findings.addAll(dose.findings());
        findings.addAll(earthworks.findings());
        burials.forEach(b -> findings.addAll(b.findings()));
        List<ModelNote> models = new ArrayList<>();
        laydowns.forEach(l -> models.addAll(l.notes()));
        models.addAll(dose.models());
        models.addAll(earthworks.notes());
        progress.report(1, "done");
        Parts parts = new Parts(laydowns, cover, dose, burials);
        return new Assessment(plan, planName, Version.text(), ground, Cautions.all(), each(models),
                worstFirst(findings), hulls(plan, natural, parts), shapes, Optional.of(cover), Optional.of(dose),
                Optional.of(earthworks));
    }

    private record Parts(List<Laydown> laydowns, SiteCover cover, SiteDose dose, List<HullBurial> burials) {
    }

    private static List<HullAssessment> hulls(Plan plan, ElevationGrid ground, Parts parts) {
        List<HullAssessment> hulls = new ArrayList<>();
        for (Hull hull : plan.hulls()) {
            String id = hull.id();
            hulls.add(new HullAssessment(hull, LyingPose.of(hull, ground),
                    parts.laydowns.stream().filter(l -> l.hull().equals(id)).findFirst(), parts.cover.hull(id),
                    parts.dose.stations().stream().filter(s -> s.hull().equals(id)).toList(),
                    parts.burials.stream().filter(b -> b.id().equals(id)).findFirst()));
        }
        return hulls;
    }

    /** The soil that the covers want. */
    static List<SoilNeed> needs(Plan plan, SiteCover cover) {
        Map<String, List<Ring>> toes = toes(plan, cover);
        List<SoilNeed> needs = new ArrayList<>();
        for (HullCover one : cover.hulls()) {
            Optional<Hull> hull = plan.hull(one.id());
            if (hull.isPresent() && one.volume() > 0) {
                List<Ring> outlines = toes.getOrDefault(one.id(),
                        List.of(LyingPose.footprint(hull.get(), cover.natural().metreScale())));
                needs.add(new SoilNeed(one.id(), SoilNeed.Kind.COVER, one.volume(), one.placedMass() / one.volume(),
                        outlines));
            }
        }
        return needs;
    }

    /** The toes of the mound by hull: those around the middle of the lying hull. */
    static Map<String, List<Ring>> toes(Plan plan, SiteCover cover) {
        Map<String, List<Ring>> toes = new HashMap<>();
        for (Hull hull : plan.hulls()) {
            Point middle = LyingPose.footprint(hull, cover.natural().metreScale()).centre();
            List<Ring> around = cover.toes().stream().filter(t -> t.contains(middle)).toList();
            if (!around.isEmpty() && hull.cover().isPresent()) {
                toes.put(hull.id(), around);
            }
        }
        return toes;
    }

    private static List<Finding> worstFirst(List<Finding> findings) {
        return findings.stream().distinct().sorted(Comparator.comparing(Finding::level)
                .thenComparing(Finding::subject).thenComparing(Finding::rule)).toList();
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
