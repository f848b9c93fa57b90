// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.Finding;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.clearance.Clearance;
import bermwright.site.footprint.HatchPlace;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.laydown.Laydown;
import bermwright.site.laydown.LaydownOfHull;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The quick part of an assessment, fast enough to follow a hand: outlines and clearance of the whole site, and lowering
 * hull by hull. A changed plan on the same ground costs only what changed.
 */
public final class LiveSite {
    private final SiteShapes shapes;
    private final Clearance clearance;
    private final Map<String, List<Ring>> toes;
    private final Map<String, ElevationGrid> mounds;

    private LiveSite(SiteShapes shapes, Clearance clearance, Map<String, List<Ring>> toes,
            Map<String, ElevationGrid> mounds) {
        this.mounds = Map.copyOf(mounds);
        this.shapes = shapes;
        this.clearance = clearance;
        this.toes = Map.copyOf(toes);
    }

    /**
     * Outlines and clearance of a plan.
     *
     * @param plan   the plan
     * @param ground the ground; without it nothing about the ground is said
     * @param toes   toes of the covers by hull id, from an earlier assessment; may be empty
     * @return the quick part
     */
    public static LiveSite of(Plan plan, Optional<ElevationGrid> ground, Map<String, List<Ring>> toes) {
        SiteShapes shapes = SiteShapes.of(plan, ground, toes);
        return new LiveSite(shapes, Clearance.of(shapes, ground), toes, Map.of());
    }

    /**
     * The quick part of an assessment, with the toes of its covers.
     *
     * @param assessment the assessment
     * @return the quick part of the same plan
     */
    public static LiveSite of(Assessment assessment) {
        Map<String, List<Ring>> toes = assessment.cover()
                .map(cover -> Assessments.toes(assessment.plan(), cover)).orElse(Map.of());
        Map<String, ElevationGrid> mounds = assessment.cover()
                .map(cover -> Assessments.mounds(assessment.plan(), cover)).orElse(Map.of());
        Optional<ElevationGrid> ground = Optional.of(assessment.ground().grid());
        SiteShapes shapes = SiteShapes.of(assessment.plan(), ground, toes);
        return new LiveSite(shapes, Clearance.of(shapes, ground, mounds), toes, mounds);
    }

    /**
     * The same for a changed plan on the same ground; the toe of a hull that changed is not known until it is worked
     * out again, and is left out.
     *
     * @param changed  the changed plan
     * @param assessed the assessment whose toes are to be kept where they still hold
     * @return the quick part of the changed plan
     */
    public LiveSite with(Plan changed, Assessment assessed) {
        Map<String, List<Ring>> known = new HashMap<>();
        assessed.cover().ifPresent(cover -> known.putAll(Assessments.toes(assessed.plan(), cover)));
        known.keySet().removeIf(id -> !changed.hull(id).equals(assessed.plan().hull(id)));
        return with(changed, known);
    }

    /**
     * The same for a changed plan on the same ground.
     *
     * @param changed the changed plan
     * @return the quick part of the changed plan
     */
    public LiveSite with(Plan changed) {
        return with(changed, toes);
    }

    /**
     * The same for a plan whose hulls stand or turn elsewhere: each toe goes with its hull, as it would on level
     * ground, so that what a cover touches is not forgotten before it is worked out again.
     *
     * @param changed the changed plan
     * @return the quick part of the changed plan
     */
    public LiveSite carried(Plan changed) {
        Map<String, List<Ring>> carried = new HashMap<>(toes);
        carried.replaceAll((id, rings) -> {
            Optional<Hull> from = plan().hull(id);
            Optional<Hull> to = changed.hull(id);
            return from.isEmpty() || to.isEmpty() || from.equals(to) ? rings
                    : rings.stream().map(ring -> carried(ring, from.get(), to.get())).toList();
        });
        return with(changed, carried);
    }

    private static Ring carried(Ring ring, Hull from, Hull to) {
        double turn = to.layDownAzimuth().radians() - from.layDownAzimuth().radians();
        return new Ring(ring.corners().stream().map(p -> {
            double distance = from.baseCentre().distance(p);
            return distance == 0 ? to.baseCentre() : to.baseCentre().moved(
                    Azimuth.from(from.baseCentre(), p).turned(turn), distance, 0);
        }).toList());
    }

    /**
     * The same for a changed plan with other toes on the same ground.
     *
     * @param changed the changed plan
     * @param others  toes of the covers by hull id
     * @return the quick part of the changed plan
     */
    public LiveSite with(Plan changed, Map<String, List<Ring>> others) {
        SiteShapes drawn = shapes.withPlan(changed, others);
        Map<String, ElevationGrid> known = new HashMap<>(mounds);
        known.keySet().retainAll(others.keySet());
        return new LiveSite(drawn, clearance.with(drawn, known), others, known);
    }

    /**
     * The plan.
     *
     * @return the plan
     */
    public Plan plan() {
        return shapes.plan();
    }

    /**
     * Everything on the site as outlines; what stayed the same through {@link #with} is the same object.
     *
     * @return the outlines
     */
    public List<Shape> shapes() {
        return shapes.all();
    }

    /**
     * What was found about clearance and ground.
     *
     * @return the findings, the worst first
     */
    public List<Finding> findings() {
        return clearance.findings();
    }

    /**
     * True metres against those of the plan.
     *
     * @return those of the ground; the same where there is none
     */
    public TrueMetres metres() {
        return shapes.metres();
    }

    /**
     * Where a hatch is once its hull lies.
     *
     * @param name {@code hull/hatch}
     * @return its place, empty where there is no such hatch
     */
    public Optional<Point> hatch(String name) {
        return HatchPlace.of(plan(), name, metres());
    }

    /**
     * How one hull comes to lie.
     *
     * @param plan   the plan, for its ground and rules
     * @param hull   the hull
     * @param ground the ground
     * @return the answer; bad arrangements are findings in it
     */
    public static Laydown laydown(Plan plan, Hull hull, ElevationGrid ground) {
        return LaydownOfHull.of(plan, hull, ground);
    }

    /**
     * How one hull comes to lie where it lands as planned, quick enough to follow a hand.
     *
     * @param plan   the plan, for its ground and rules
     * @param hull   the hull
     * @param ground the ground
     * @return the answer without what other landings inside the dispersion would find
     */
    public static Laydown laydownAsPlanned(Plan plan, Hull hull, ElevationGrid ground) {
        return LaydownOfHull.asPlanned(plan, hull, ground);
    }
}
