// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import bermwright.editor.edit.Move;
import bermwright.editor.edit.Part;
import bermwright.editor.edit.PlanEdit;
import bermwright.editor.edit.SetValue;
import bermwright.editor.edit.Turn;
import bermwright.finding.CoverRule;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.PairingRule;
import bermwright.finding.Rule;
import bermwright.finding.SiteRule;
import bermwright.finding.WorkRule;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.LiveSite;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Looks for edits that mend a finding: each is tried on the plan with the quick checks, and only what takes the finding
 * away without a new refusal is offered.
 */
public final class Remedies {
    private static final int GROWTHS = 14;
    private static final double GROWTH = 1.25;
    private static final int HALVINGS = 5;
    /** Soil asked of a borrow ground over what is missing, for its sides slope (1). */
    private static final double MARGIN = 1.3;
    private static final int DIRECTIONS = 16;
    private static final double[] WAYS = {1, 2, 3, 5, 8, 12, 18, 27, 40, 60};
    private static final double[] TURNS = {2, 5, 10, 15, 20, 30, 45, 60, 90, 120, 150, 180};
    private static final String[] COMPASS = {"north", "north-north-east", "north-east", "east-north-east", "east",
        "east-south-east", "south-east", "south-south-east", "south", "south-south-west", "south-west",
        "west-south-west", "west", "west-north-west", "north-west", "north-north-west"};
    /** Findings that go when the hull lies elsewhere or another way. */
    private static final Set<Rule> BY_PLACE = Set.of(SiteRule.SLOPE_UNDER_HULL, SiteRule.HULL_OFF_GRID,
            SiteRule.SWEEP_OFF_GRID, SiteRule.GROUND_UNKNOWN, SiteRule.SWEEP_GROUND_UNKNOWN,
            SiteRule.BELLY_HIGH_SPOT, PairingRule.HULL_SPACING, PairingRule.HULLS_IN_ONE_PLACE,
            PairingRule.SWEEP_OVER_HULL, PairingRule.GROUND_IN_SWEEP, PairingRule.LINE_MEETS_GROUND,
            PairingRule.LINE_NEAR_GROUND, PairingRule.LINE_OVER_HULL, PairingRule.GEAR_UNDER_HULL,
            PairingRule.KEEP_OUT, PairingRule.CORRIDOR_BLOCKED, PairingRule.CORRIDOR_CLOSED,
            PairingRule.PAD_STAND_OFF, PairingRule.PAD_BUILT_OVER, PairingRule.LANDING_DISPERSION);

    private final Plan plan;
    private final ElevationGrid grid;
    private final Optional<Assessment> known;
    private final Progress progress;
    private OptionalLong refusedNow = OptionalLong.empty();
    private OptionalLong refusedLowering = OptionalLong.empty();
    private Optional<LiveSite> site = Optional.empty();

    private Remedies(Plan plan, ElevationGrid grid, Optional<Assessment> known, Progress progress) {
        this.plan = plan;
        this.grid = grid;
        this.known = known;
        this.progress = progress;
    }

    private LiveSite site() {
        LiveSite there = site.orElseGet(() -> known.filter(a -> a.plan().equals(plan)).map(LiveSite::of)
                .orElseGet(() -> LiveSite.of(plan, Optional.of(grid), Map.of())));
        site = Optional.of(there);
        return there;
    }

    /**
     * Edits that mend a finding.
     *
     * @param plan     the plan
     * @param grid     its ground
     * @param known    an assessment of the same plan, for the toes of its covers; empty where there is none yet
     * @param finding  the finding
     * @param progress may cancel the search
     * @return the offers, the least change first; none where none was found
     */
    public static List<Offer> of(Plan plan, ElevationGrid grid, Optional<Assessment> known, Finding finding,
            Progress progress) {
        return new Remedies(plan, grid, known, progress).search(finding);
    }

    private List<Offer> search(Finding finding) {
        if (finding.rule() == CoverRule.SADDLE_BEARING) {
            return foot(finding);
        } else if (finding.rule() == SiteRule.LANDING_OFF_PAD) {
            return pad(finding);
        } else if (finding.rule() == CoverRule.COVER_WALL_LOW) {
            return wall(finding);
        } else if (finding.rule() == WorkRule.BORROW_SHORTAGE) {
            return borrowed(finding);
        } else if (finding.rule() instanceof LoweringRule || finding.rule() == PairingRule.GEAR_IN_OWN_SWEEP) {
            return byFigure(finding);
        } else if (BY_PLACE.contains(finding.rule())) {
            return byPlace(finding);
        }
        return List.of();
    }

    /** A foot on soil bears in proportion to its area, at the bearing capacity that was found. */
    private List<Offer> foot(Finding finding) {
        Optional<Part> part = Part.bySubject(plan, finding.subject());
        if (part.isEmpty() || finding.measured().isEmpty() || !finding.parts().contains("two shoes")) {
            return List.of();
        }
        String path = part.get().path(plan) + ".pivot.foot_area_m2";
        double now = plan.hull(part.get().id()).map(h -> h.pivot().footArea()
                .orElse(Pivot.USUAL_FOOT_AREA)).orElse(Double.NaN);
        return offer(new Lever(path, true, "Widen each pivot foot to"), now * finding.limit().orElse(0)
                / finding.measured().getAsDouble());
    }

    private List<Offer> pad(Finding finding) {
        Optional<String> named = plan.hull(finding.subject()).flatMap(Hull::lowering).flatMap(g -> g.landing())
                .flatMap(l -> l.pad());
        Optional<Part> pad = named.map(id -> new Part(Part.Kind.LANDING_PAD, id)).filter(p -> p.isIn(plan));
        return pad.map(p -> offer(new Lever(p.path(plan) + ".radius_m", true, "Widen pad " + p.id()
                + " to a radius of"), finding.measured().orElse(0))).orElse(List.of());
    }

    private List<Offer> wall(Finding finding) {
        Optional<Part> wall = finding.parts().stream().map(id -> new Part(Part.Kind.WALL, id))
                .filter(p -> p.isIn(plan)).findFirst();
        return wall.map(w -> offer(new Lever(w.path(plan) + ".height_m", true, "Raise wall " + w.id() + " to"),
                finding.limit().orElse(0))).orElse(List.of());
    }

    /** A borrow ground widened about its middle by what is missing, at the depth and yield that it has. */
    private List<Offer> borrowed(Finding finding) {
        Optional<BorrowGround> ground = plan.borrowGrounds().stream().max(Comparator.comparingDouble(b -> b.area()
                .area()));
        if (ground.isEmpty() || !(finding.measured().orElse(0) > 0)) {
            return List.of();
        }
        double gives = ground.get().greatestDepth() * ground.get().yieldShare();
        double area = ground.get().area().area();
        double wanted = area + MARGIN * finding.measured().getAsDouble() / gives;
        double by = Math.sqrt(wanted / area);
        Point middle = ground.get().area().centre();
        String corners = ground.get().area().corners().stream().map(c -> "[" + Figure.number(tenth(middle.east() + by
                * (c.east() - middle.east()))) + "," + Figure.number(tenth(middle.north() + by * (c.north()
                - middle.north()))) + "]").collect(Collectors.joining(",", "[", "]"));
        Part part = new Part(Part.Kind.BORROW_GROUND, ground.get().id());
        String words = "Widen " + part.words().toLowerCase(Locale.ROOT) + " to " + Math.round(wanted) + " m\u00b2";
        return List.of(new Offer(words, new SetValue(part.path(plan) + ".area", corners, words), false));
    }

    private static double tenth(double metres) {
        return Math.rint(metres * 10) / 10;
    }

    private List<Offer> offer(Lever lever, double value) {
        Figure figure = new Figure(plan, lever);
        return value > 0 && Double.isFinite(value) ? List.of(figure.offer(figure.round(value), false)) : List.of();
    }

    private List<Offer> byFigure(Finding finding) {
        List<Offer> offers = new ArrayList<>();
        for (Lever lever : Levers.of(plan, finding)) {
            progress.check();
            Figure figure = new Figure(plan, lever);
            figure.value().ifPresent(now -> tried(figure, now, finding).ifPresent(offers::add));
        }
        return offers;
    }

    /** The least change of a figure that mends: grown until it does, then halved back. */
    private Optional<Offer> tried(Figure figure, double now, Finding finding) {
        double measured = finding.measured().orElse(0);
        double first = measured > 0 && finding.limit().orElse(0) > 0
                ? Math.max(finding.limit().getAsDouble(), measured) / Math.min(finding.limit().getAsDouble(), measured)
                : GROWTH;
        double by = Math.min(Math.max(first, 1.01), 4);
        for (int i = 0; i < GROWTHS; i++) {
            progress.check();
            double value = figure.round(figure.isUp() ? now * by : now / by);
            if (mends(figure.edit(value), finding)) {
                return Optional.of(figure.offer(least(figure, now, value, finding), true));
            }
            by *= GROWTH;
        }
        return Optional.empty();
    }

    private double least(Figure figure, double now, double mending, Finding finding) {
        double bad = now;
        double good = mending;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = figure.round((bad + good) / 2);
            if (middle == good || middle == bad) {
                return good;
            }
            if (mends(figure.edit(middle), finding)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }

    private boolean mends(PlanEdit edit, Finding finding) {
        try {
            Plan changed = edit.applied(plan);
            List<Finding> after = findings(changed, finding);
            return after.stream().noneMatch(f -> isSame(f, finding))
                    && refusals(after, finding) <= refusedNow(finding);
        } catch (InputException notAccepted) {
            return false;
        }
    }

    /** How many other findings refuse the plan as it is; every trial is held against that. */
    private long refusedNow(Finding finding) {
        if (refusedNow.isEmpty()) {
            refusedNow = OptionalLong.of(refusals(findings(plan, finding), finding));
        }
        return refusedNow.getAsLong();
    }

    /** How many other findings refuse. */
    private static long refusals(List<Finding> findings, Finding but) {
        return findings.stream().filter(f -> f.level() == Finding.Level.REFUSE && !isSame(f, but)).count();
    }

    /** Of one rule, about one thing and, where a part of the gear is named, about that part, under whatever load. */
    private static boolean isSame(Finding one, Finding other) {
        return one.rule() == other.rule() && one.subject().equals(other.subject())
                && (one.parts().isEmpty() || other.parts().isEmpty()
                || one.parts().get(0).equals(other.parts().get(0)))
                && one.level().compareTo(other.level()) <= 0;
    }

    private List<Finding> findings(Plan of, Finding about) {
        if (!(about.rule() instanceof LoweringRule)) {
            return of.equals(plan) ? site().findings() : site().carried(of).findings();
        }
        Optional<Hull> hull = Part.bySubject(of, about.subject()).flatMap(p -> of.hull(p.id()));
        boolean isOfLandings = about.rule().id().startsWith("lowering-dispersion");
        return hull.map(h -> (isOfLandings ? LiveSite.laydown(of, h, grid) : LiveSite.laydownAsPlanned(of, h, grid))
                .findings()).orElse(List.of());
    }

    private List<Offer> byPlace(Finding finding) {
        Optional<Hull> hull = Part.bySubject(plan, finding.subject()).filter(p -> p.kind() == Part.Kind.HULL)
                .flatMap(p -> plan.hull(p.id()));
        List<Offer> offers = new ArrayList<>();
        if (hull.isPresent() && !hull.get().held()) {
            moved(hull.get(), finding).ifPresent(offers::add);
            turned(hull.get(), finding).ifPresent(offers::add);
        }
        return offers;
    }

    private Optional<Offer> moved(Hull hull, Finding finding) {
        for (double way : WAYS) {
            for (int i = 0; i < DIRECTIONS; i++) {
                progress.check();
                double azimuth = 2 * Math.PI * i / DIRECTIONS;
                Move move = new Move(Part.hull(hull.id()), way * Math.sin(azimuth), way * Math.cos(azimuth));
                if (mends(move, finding) && isLaid(move, hull)) {
                    return Optional.of(new Offer("Move hull " + hull.id() + " by " + Figure.number(way) + " m to the "
                            + COMPASS[i], move, true));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Offer> turned(Hull hull, Finding finding) {
        for (double degrees : TURNS) {
            for (int side : new int[] {1, -1}) {
                progress.check();
                Turn turn = new Turn(hull.id(), hull.layDownAzimuth().turned(Math.toRadians(side * degrees)));
                if (mends(turn, finding) && isLaid(turn, hull)) {
                    return Optional.of(new Offer("Turn hull " + hull.id() + " by " + Figure.number(degrees) + "\u00b0"
                            + (side > 0 ? " clockwise" : " anticlockwise"), turn, true));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether lowering there refuses no more than here. */
    private boolean isLaid(PlanEdit edit, Hull hull) {
        Plan changed = edit.applied(plan);
        if (refusedLowering.isEmpty()) {
            refusedLowering = OptionalLong.of(refused(plan, hull.id()));
        }
        return refused(changed, hull.id()) <= refusedLowering.getAsLong();
    }

    private long refused(Plan of, String hull) {
        return LiveSite.laydownAsPlanned(of, of.hull(hull).orElseThrow(), grid).findings().stream()
                .filter(f -> f.level() == Finding.Level.REFUSE).count();
    }
}
