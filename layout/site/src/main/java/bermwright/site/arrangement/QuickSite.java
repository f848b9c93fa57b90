// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.finding.Finding;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.site.clearance.Clearance;
import bermwright.site.clearance.QuickClearance;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.exposure.CoverForm;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.haulage.HaulFields;
import bermwright.site.haulage.Ramp;
import bermwright.site.laydown.LaydownOfHull;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Seat;
import bermwright.site.stages.PreparedGround;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The quick engines over one plan: slope under each hull, clearance by stiff outlines, covers laid over each other and
 * haul looked up in fields. A whole arrangement takes well under a millisecond; see {@link Estimate} for what it says.
 */
final class QuickSite {
    /** What a degree of slope too much counts (m), and a hull on unknown ground. */
    private static final double A_DEGREE = 3;
    private static final double UNKNOWN = 200;
    /** What a metre of ground in the way of the falling hull counts (m). */
    private static final double A_METRE_HIGH = 8;
    /** Slopes are kept this far under their limit (rad), since the full assessment asks on the ground as prepared. */
    private static final double SLOPE_IN_HAND = Math.toRadians(0.05);
    /** A tunnel leads no farther aslant out of its hatch (rad): our own planning figure. */
    private static final double MOST_ASLANT = Math.toRadians(60);
    private static final double SPREADS = 2;
    private static final double FAR = 1e6;
    /** What the outlines of bodies are widened by for their few corners (m), with room. */
    private static final double BODY_WIDER = 0.2;
    /** A tunnel may become as long as in the plan, and this long (m) in any case: our own planning figure. */
    static final double TUNNEL_ALWAYS = 30;
    /** Hulls whose hatches are farther apart (m) are not set out yet. */
    static final double FAR_APART = 100;

    private final Plan plan;
    private final ElevationGrid ground;
    private final Optional<Ring> area;
    private final QuickClearance clearance;
    private final HaulFields hauls;
    private final List<Optional<CoverForm>> forms;
    private final Map<String, Double> tunnelReach = new HashMap<>();
    private final MovedPlan moves;
    private final Set<Integer> movable;
    private final double scale;
    private final double unavoidable;
    private final double[] ramps;
    private final SampledSweep sweep;

    private QuickSite(Plan plan, ElevationGrid ground, Set<Integer> movable, Progress progress) {
        this.plan = plan;
        this.ground = ground;
        this.movable = Set.copyOf(movable);
        this.scale = ground.metreScale();
        this.sweep = new SampledSweep(ground, plan.rules().greatestSlopeUnderHull());
        this.area = plan.arrangeWithin();
        this.moves = new MovedPlan(plan, ground);
        progress.report(0, "covers on level ground");
        this.forms = plan.hulls().parallelStream().map(h -> CoverForm.of(plan, h)).toList();
        progress.check();
        Map<String, List<Ring>> toes = new HashMap<>();
        this.ramps = new double[forms.size()];
        for (int i = 0; i < forms.size(); i++) {
            Hull hull = plan.hulls().get(i);
            ramps[i] = forms.get(i).flatMap(f -> Ramp.on(plan, hull.id(), f.top())).map(Ramp::volume).orElse(0.0);
            forms.get(i).ifPresent(f -> toes.put(hull.id(), List.of(new Ring(toe(f, Pose.of(hull))))));
        }
        this.clearance = QuickClearance.of(SiteShapes.of(plan, Optional.of(ground), toes), moves.owners());
        progress.report(0.3, "ways over the ground");
        this.hauls = HaulFields.of(plan, ground, SiteShapes.of(standing(), Optional.of(ground), toes), progress);
        List<Pose> planned = planned();
        clearance.tunnelStates(planned).forEach(t -> tunnelReach.put(t.id(), t.length() <= FAR_APART
                ? Math.max(TUNNEL_ALWAYS, t.length()) : TUNNEL_ALWAYS));
        this.unavoidable = clearance.check(away(planned), new double[planned.size()]).shortfall();
        progress.report(1, "ways over the ground");
    }

    /** The hulls that move far off, so that only what does not move is compared. */
    private List<Pose> away(List<Pose> poses) {
        List<Pose> far = new ArrayList<>();
        for (int i = 0; i < poses.size(); i++) {
            far.add(movable.contains(i) ? away(poses.get(i), i) : poses.get(i));
        }
        return far;
    }

    /** A pose where a hull meets nothing. */
    static Pose away(Pose pose, int hull) {
        return new Pose(pose.east() + FAR * (hull + 1), pose.north() + FAR, pose.azimuth(), pose.sine(),
                pose.cosine());
    }

    static QuickSite of(Plan plan, ElevationGrid ground, Set<Integer> movable, Progress progress) {
        return new QuickSite(plan, ground, movable, progress);
    }

    /** The plan with only what does not move. */
    private Plan standing() {
        Set<String> gone = new HashSet<>();
        moves.owners().forEach((id, hull) -> {
            if (movable.contains(hull)) {
                gone.add(id);
            }
        });
        List<Hull> held = new ArrayList<>();
        for (int i = 0; i < plan.hulls().size(); i++) {
            if (!movable.contains(i)) {
                held.add(plan.hulls().get(i));
            }
        }
        return new Plan(plan.title(), plan.ground(), held, plan.walls().stream().filter(w -> !gone.contains(w.id()))
                .toList(), plan.tunnels(), plan.keepOuts(), plan.corridors(), plan.landingPads(),
                plan.preparations().stream().filter(p -> !gone.contains(p.id())).toList(), plan.borrowGrounds(),
                plan.stockpiles(), plan.machines(), plan.exposure(), plan.rules(), plan.orderOfWork(),
                plan.arrangeWithin(), plan.annotations());
    }

    Plan plan() {
        return plan;
    }

    ElevationGrid ground() {
        return ground;
    }

    Set<Integer> movable() {
        return movable;
    }

    MovedPlan moves() {
        return moves;
    }

    QuickClearance clearance() {
        return clearance;
    }

    double scale() {
        return scale;
    }

    TrueMetres metres() {
        return new TrueMetres(scale);
    }

    /** Soil of a hull's cover alone on level ground (m3). */
    double coverAlone(int hull) {
        return forms.get(hull).map(CoverForm::volume).orElse(0.0);
    }

    List<Pose> planned() {
        return plan.hulls().stream().map(Pose::of).toList();
    }

    private List<Point> toe(CoverForm form, Pose pose) {
        return form.toe().stream().map(p -> pose.place(p.east() / scale, p.north() / scale)).toList();
    }

    private List<Point> corners(CoverForm form, Pose pose) {
        return form.corners().stream().map(p -> pose.place(p.east() / scale, p.north() / scale)).toList();
    }

    /** How a hull stands on its ground. */
    private record Stand(double shortfall, double slope, double cut, int warnings) {
    }

    private Stand stand(int at, Pose pose) {
        Hull hull = plan.hulls().get(at);
        boolean upright = hull.arrival() == Hull.Arrival.STAYS_UPRIGHT;
        double length = upright ? hull.diameter() : hull.length();
        double from = upright ? -hull.radius() : hull.pivotAhead();
        double outside = outside(at, pose);
        SampledBed bed = SampledBed.of(ground, pose, new SampledBed.Size(from, length, hull.diameter()));
        if (!bed.isKnown()) {
            return new Stand(outside + UNKNOWN, 0, 0, 0);
        }
        double along = Math.atan(Math.abs(upright ? Math.hypot(bed.along(), bed.across()) : bed.along()));
        double across = upright ? 0 : Math.atan(Math.abs(bed.across()));
        double limit = plan.rules().greatestSlopeUnderHull() - SLOPE_IN_HAND;
        double over = Math.max(0, along - limit) + Math.max(0, across - limit);
        boolean bench = hull.seat().kind() == Seat.Kind.BENCH;
        double nodes = Math.max(1, length * hull.diameter() / Math.pow(ground.surveyedSpacing(), 2));
        double noise = SPREADS * plan.ground().elevationSpread() * Math.sqrt(12 / nodes);
        int warned = (along + noise / length > limit ? 1 : 0) + (across + noise / hull.diameter() > limit ? 1 : 0);
        double cut = bench ? length * hull.diameter() * (length * Math.tan(along)
                + hull.diameter() * Math.tan(across)) / 8 : 0;
        double inTheWay = bench || !movable.contains(at) ? 0 : A_METRE_HIGH * sweep.inTheWay(hull, pose, bed);
        return new Stand(outside + inTheWay + (bench ? 0 : A_DEGREE * Math.toDegrees(over)), Math.max(along, across),
                cut, warned);
    }

    /** How far its body reaches out of where it may be moved to (m). */
    private double outside(int at, Pose pose) {
        if (area.isEmpty() || !movable.contains(at)) {
            return 0;
        }
        double far = 0;
        for (Point corner : clearance.body(at, pose)) {
            far = Math.max(far, outside(area.get(), corner));
        }
        return far * scale;
    }

    /** Whether the body of a hull stays where it may be moved to. */
    boolean isWithin(int at, Pose pose) {
        return outside(at, pose) <= 2 * BODY_WIDER;
    }

    private static double outside(Ring ring, Point place) {
        if (ring.contains(place)) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.corners().size(); i++) {
            least = Math.min(least, place.distance(ring.corners().get(i),
                    ring.corners().get((i + 1) % ring.corners().size())));
        }
        return least;
    }

    /** What the toe is wider by than on level ground, on the side where the ground falls. */
    private double wider(int at, double slope) {
        double k = Math.tan(slope) / Math.tan(plan.ground().regolith().stableSlope());
        return forms.get(at).map(f -> plan.hulls().get(at).diameter() * 2 * k / Math.max(0.2, 1 - k)).orElse(0.0);
    }

    /** How far its cover reaches beyond the elevation file (m). */
    private double offGround(List<Point> toe, double wider) {
        GridFrame f = ground.frame();
        double far = Double.NEGATIVE_INFINITY;
        for (Point p : toe) {
            far = Math.max(far, Math.max(Math.max(f.west() - p.east(), p.east() - f.eastEdge()),
                    Math.max(f.south() - p.north(), p.north() - f.northEdge())));
        }
        return Math.max(0, far + wider);
    }

    /** One hull alone: what it lacks, and the hours of its own cover. */
    Estimate alone(int at, Pose pose) {
        Stand stand = stand(at, pose);
        if (stand.shortfall > 0) {
            return new Estimate(stand.shortfall, 0, 0, 0, stand.cut, stand.warnings);
        }
        double wider = wider(at, stand.slope);
        QuickClearance.Outcome clear = clearance.check(at, pose, wider);
        double shortfall = stand.shortfall + clear.shortfall();
        if (forms.get(at).isEmpty()) {
            return new Estimate(shortfall, 0, 0, 0, stand.cut, clear.warnings() + stand.warnings);
        }
        CoverForm form = forms.get(at).get();
        HaulFields.Work work = hauls.work(List.of(wanted(at, pose, form.volume())));
        return new Estimate(shortfall + offGround(corners(form, pose), wider), work.hours(), form.volume(), 0,
                stand.cut, clear.warnings() + stand.warnings);
    }

    /** The whole arrangement. */
    Estimate of(List<Pose> poses) {
        double shortfall = 0;
        double cut = 0;
        int warnings = 0;
        double[] wider = new double[poses.size()];
        List<CoverForm.Placed> covers = new ArrayList<>();
        List<Integer> covered = new ArrayList<>();
        for (int i = 0; i < poses.size(); i++) {
            Pose pose = poses.get(i);
            Stand stand = stand(i, pose);
            shortfall += movable.contains(i) ? stand.shortfall : 0;
            cut += stand.cut;
            warnings += stand.warnings;
            wider[i] = wider(i, stand.slope);
            if (forms.get(i).isPresent()) {
                shortfall += offGround(corners(forms.get(i).get(), pose), wider[i]);
                covers.add(new CoverForm.Placed(forms.get(i).get(), new Point(pose.east(), pose.north()),
                        new Azimuth(pose.azimuth())));
                covered.add(i);
            }
        }
        QuickClearance.Outcome clear = clearance.check(poses, wider);
        double[] volumes = CoverForm.volumes(covers, scale);
        List<HaulFields.Wanted> needs = new ArrayList<>();
        double soil = 0;
        for (int k = 0; k < volumes.length; k++) {
            needs.add(wanted(covered.get(k), poses.get(covered.get(k)), volumes[k]));
            soil += volumes[k];
        }
        HaulFields.Work work = hauls.work(needs);
        double tunnels = 0;
        for (QuickClearance.TunnelState state : clearance.tunnelStates(poses)) {
            tunnels += state.length();
            shortfall += Math.max(0, state.length() - tunnelReach.getOrDefault(state.id(), TUNNEL_ALWAYS))
                    + A_DEGREE * Math.toDegrees(Math.max(0, state.aslant() - MOST_ASLANT));
        }
        return new Estimate(shortfall + Math.max(0, clear.shortfall() - unavoidable)
                + work.shortage() / 1e5, work.hours(), soil, tunnels, cut,
                warnings + clear.warnings());
    }

    /** What refuses an arrangement by the rules of clearance in space and of lowering, without soil and dose. */
    List<Finding> screened(List<Pose> poses) {
        return refusals(moves.at(poses), plan.hulls().stream().map(Hull::id).toList());
    }

    /** What refuses one hull by the same rules, among what does not move. */
    List<Finding> screenedAlone(int at, Pose pose) {
        List<Pose> poses = new ArrayList<>(planned());
        poses.set(at, pose);
        Hull hull = plan.hulls().get(at);
        Plan alone = moves.at(poses);
        Plan others = standing();
        Set<String> kept = new HashSet<>();
        others.walls().forEach(w -> kept.add(w.id()));
        others.preparations().forEach(p -> kept.add(p.id()));
        moves.owners().forEach((id, owner) -> {
            if (owner == at) {
                kept.add(id);
            }
        });
        List<Hull> hulls = new ArrayList<>(others.hulls());
        hulls.add(alone.hulls().get(at));
        Plan asked = new Plan(plan.title(), plan.ground(), hulls, alone.walls().stream()
                .filter(w -> kept.contains(w.id())).toList(), List.of(), plan.keepOuts(), plan.corridors(),
                plan.landingPads(), alone.preparations().stream().filter(p -> kept.contains(p.id())).toList(),
                plan.borrowGrounds(), plan.stockpiles(), plan.machines(), plan.exposure(), plan.rules(), List.of(),
                plan.arrangeWithin(), plan.annotations());
        return refusals(asked, List.of(hull.id()));
    }

    private List<Finding> refusals(Plan moved, List<String> ids) {
        ElevationGrid bed = PreparedGround.of(moved, ground).surface();
        List<Finding> found = new ArrayList<>(Clearance.of(SiteShapes.of(moved, Optional.of(bed), Map.of()),
                Optional.of(bed)).findings());
        movable.stream().sorted().map(h -> plan.hulls().get(h).id()).filter(ids::contains).toList().parallelStream()
                .map(id -> LaydownOfHull.asPlanned(moved, moved.hull(id).orElseThrow(), bed))
                .forEachOrdered(l -> found.addAll(l.findings()));
        return found.stream().filter(f -> f.level() == Finding.Level.REFUSE).filter(f -> ids.size() == plan.hulls()
                .size() || ids.stream().anyMatch(id -> names(f, id))).toList();
    }

    /** Whether a finding names a hull, by itself, by something of it, or among what else it concerns. */
    static boolean names(Finding finding, String hull) {
        return finding.subject().equals(hull) || finding.subject().startsWith(hull + "/")
                || finding.parts().contains(hull);
    }

    private HaulFields.Wanted wanted(int at, Pose pose, double volume) {
        Hull hull = plan.hulls().get(at);
        CoverForm form = forms.get(at).orElseThrow();
        boolean upright = hull.arrival() == Hull.Arrival.STAYS_UPRIGHT;
        Point middle = pose.place(upright ? 0 : (hull.pivotAhead() + hull.length() / 2) / scale, 0);
        double ramp = ramps[at];
        return new HaulFields.Wanted(hull.id(), volume * form.density(), ramp * form.density(), corners(form, pose),
                middle);
    }
}
