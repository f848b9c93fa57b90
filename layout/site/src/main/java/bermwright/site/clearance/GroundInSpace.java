// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.finding.Sentence;
import bermwright.foundation.Vec3;
import bermwright.numeric.Bracket;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.space.GroundBelow;
import bermwright.site.space.HullInSpace;
import bermwright.site.space.LineOverGround;
import bermwright.site.space.LinePath;
import bermwright.site.space.SweptGround;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** One falling hull and its lines against the ground, or against a mound on it. */
final class GroundInSpace {
    /** Air wanted around a line (m). */
    static final double LINE_AIR = 1;
    private static final double SPREADS = 2;
    private static final double HIGHEST_RAISE = 40;
    private static final int BISECTIONS = 12;
    private final Plan plan;
    private final HullInSpace space;
    private final Hull hull;
    private final GroundBelow surface;
    private final List<Finding> findings = new ArrayList<>();

    private GroundInSpace(Plan plan, HullInSpace space, GroundBelow surface) {
        this.plan = plan;
        this.space = space;
        this.hull = space.hull();
        this.surface = surface;
    }

    /** What is wrong with the natural or prepared ground. */
    static List<Finding> ground(Plan plan, HullInSpace space, GroundBelow ground) {
        GroundInSpace check = new GroundInSpace(plan, space, ground);
        if (space.hull().arrival() == Hull.Arrival.LOWERED) {
            check.sweep(p -> true, Obstacle.GROUND);
            check.lines(Obstacle.GROUND);
        }
        return check.findings;
    }

    /** What is wrong with a mound of soil that stands there; ground bare of it does not count. */
    static List<Finding> mound(Plan plan, HullInSpace space, Mound mound) {
        GroundInSpace check = new GroundInSpace(plan, space, mound.surface);
        if (space.hull().arrival() == Hull.Arrival.LOWERED) {
            Obstacle obstacle = new Obstacle(PairingRule.SWEEP_OVER_COVER, PairingRule.LINE_THROUGH_COVER,
                    "the cover of hull " + mound.hull, Optional.of(mound.hull), mound.level);
            check.sweep(mound::stands, obstacle);
            check.lines(obstacle, mound::stands);
        }
        return check.findings;
    }

    /**
     * A mound over a hull, or what of it is placed.
     *
     * @param hull    the hull under it; nothing where several are
     * @param surface the ground with it
     * @param bare    the ground without it
     * @param level   how bad it is to meet it
     */
    record Mound(String hull, GroundBelow surface, GroundBelow bare, Finding.Level level) {
        private static final double THIN = 0.02;

        boolean stands(Vec3 place) {
            return surface.height(place) - bare.height(place) > THIN;
        }
    }

    private record Obstacle(PairingRule sweepRule, PairingRule lineRule, String name, Optional<String> hull,
            Finding.Level level) {
        static final Obstacle GROUND = new Obstacle(PairingRule.GROUND_IN_SWEEP, PairingRule.LINE_MEETS_GROUND,
                "the ground", Optional.empty(), Finding.Level.REFUSE);

        boolean isGround() {
            return hull.isEmpty();
        }

        /** A finding about it, with its own remedy where it is the ground. */
        Finding finding(Finding found, String remedy) {
            return isGround() ? found.todo(remedy) : found.with(hull.get());
        }
    }

    private void sweep(Predicate<Vec3> counts, Obstacle obstacle) {
        double allowance = Clearance.BELLY_ALLOWANCE + hull.seat().sunk() + hull.seat().cradleHeight();
        Optional<SweptGround.InTheWay> found = new SweptGround(space.falling(), allowance,
                plan.rules().greatestSlopeUnderHull()).worst(surface, counts);
        if (found.isEmpty()) {
            return;
        }
        SweptGround.InTheWay worst = found.get();
        double margin = space.falling().margin();
        double rest = space.falling().restTilt();
        String name = Sentence.begin(obstacle.name);
        String text;
        String remedy;
        if (worst.distance() > 0) {
            Vec3 side = space.falling().seen(worst.place());
            Vec3 from = space.falling().body(rest, 0).onAxis(Math.max(0, Math.min(hull.length(), side.x())));
            text = ("%s stands %s m over the bed, %s m beside what hull %s passes over; %s m required, measured"
                    + " level.").formatted(name, SitePairs.number(worst.over()), SitePairs.number(worst.distance()),
                    hull.id(), SitePairs.number(margin));
            remedy = "Shift the hull %s m %s, or clear the ground to %s m over the bed.".formatted(
                    SitePairs.number(margin - worst.distance()),
                    SpaceWords.compass(from.x() - worst.place().x(), from.y() - worst.place().y()),
                    SitePairs.number(allowance));
        } else {
            String when = Double.isNaN(worst.tilt()) ? ""
                    : String.format(Locale.ROOT, ", which meets it at %s, %.0f deg before it lies",
                            SpaceWords.tilt(worst.tilt()), Math.toDegrees(rest - worst.tilt()));
            text = "%s stands %s m over the bed in the way of hull %s%s.".formatted(name,
                    SitePairs.number(worst.over()), hull.id(), when);
            remedy = "Clear the ground to %s m over the bed, or turn or move the hull."
                    .formatted(SitePairs.number(allowance));
        }
        findings.add(obstacle.finding(Finding.of(obstacle.sweepRule, obstacle.level, hull.id(),
                Finding.Figures.of(worst.distance(), margin, "m"), text), remedy)
                .at(surface.metres().plan(worst.place())));
    }

    private void lines(Obstacle obstacle) {
        lines(obstacle, p -> true);
        Set<String> said = new HashSet<>();
        for (LinePath line : space.rig().lines()) {
            new LineOverGround(line, surface, LINE_AIR, space.falling().wander()).unknown()
                    .filter(place -> said.add("unknown")).ifPresent(place -> findings.add(Finding.of(
                            PairingRule.LINE_GROUND_UNKNOWN, Finding.Level.WARN, hull.id(), Finding.Figures.NONE,
                            ("The ground under the %s of hull %s is not in the elevation file: whether the line hangs"
                            + " clear of it is not known.").formatted(line.part(), hull.id()))
                            .at(surface.metres().plan(place))));
        }
    }

    private void lines(Obstacle obstacle, Predicate<Vec3> counts) {
        double air = LINE_AIR + SPREADS * plan.ground().elevationSpread();
        for (LinePath.Kind kind : LinePath.Kind.values()) {
            LinePath worstLine = null;
            LineOverGround.Spot worst = null;
            for (LinePath line : space.rig().lines()) {
                Optional<LineOverGround.Spot> spot = line.kind() != kind ? Optional.empty()
                        : over(line, air).worst(counts);
                if (spot.isPresent() && (worst == null || spot.get().shortBy() > worst.shortBy())) {
                    worst = spot.get();
                    worstLine = line;
                }
            }
            if (worst != null) {
                line(obstacle, worstLine, worst, air);
            }
        }
    }

    private LineOverGround over(LinePath line, double air) {
        return new LineOverGround(line, surface, air, space.falling().wander());
    }

    private void line(Obstacle obstacle, LinePath line, LineOverGround.Spot spot, double air) {
        boolean struck = spot.clear() < 0;
        double chord = line.chord(spot.tilt(), spot.swing());
        String where = String.format(Locale.ROOT, "%s, %.0f m from its %s", SpaceWords.tilt(spot.tilt()),
                (1 - spot.share()) * chord, line.fixed().isGrounded() ? "anchor" : "pole head");
        String how = struck ? "The %s of hull %s runs %s m deep in %s".formatted(line.part(), hull.id(),
                SitePairs.number(-spot.clear()), obstacle.name) : "The %s of hull %s hangs %s m clear of %s".formatted(
                line.part(), hull.id(), SitePairs.number(spot.clear()), obstacle.name);
        String text = "%s at %s; %s m required.".formatted(how, where, SitePairs.number(spot.wanted()));
        boolean near = obstacle.isGround() && !struck;
        Finding found = Finding.of(near ? PairingRule.LINE_NEAR_GROUND : obstacle.lineRule,
                near ? Finding.Level.WARN : obstacle.level, hull.id(),
                Finding.Figures.of(spot.clear(), spot.wanted(), "m"), text)
                .at(surface.metres().plan(spot.place()));
        findings.add(obstacle.isGround() ? found.with(line.part()).todo(help(line, spot, air))
                : found.with(obstacle.hull.get(), line.part()));
    }

    /** How much higher the upper end must be, tried on the whole line, and how much lower the ground. */
    private String help(LinePath line, LineOverGround.Spot spot, double air) {
        double dug = Math.max(spot.shortBy(), spot.wanted() - spot.place().z() + surface.height(spot.place()));
        String cut = "the ground there down by %s m, or lead the line another way.".formatted(SitePairs.number(dug));
        double most = line.hasHead() ? HIGHEST_RAISE : hull.length() - lug(line);
        if (!(most > 0) || isShort(line.raised(most), air)) {
            return "Cut " + cut;
        }
        double raise = Bracket.halved(0, most, BISECTIONS, by -> isShort(line.raised(by), air)).high();
        return String.format(Locale.ROOT, "%s by %.1f m, cut %s", line.hasHead() ? "Raise the pole head"
                : "Move its lug up the hull", Math.ceil(raise * 10) / 10, cut);
    }

    private boolean isShort(LinePath line, double air) {
        return over(line, air).worst(p -> true).isPresent();
    }

    private static double lug(LinePath line) {
        return line.moving() instanceof LinePath.AtLug at ? at.lug().along() : Double.POSITIVE_INFINITY;
    }
}
