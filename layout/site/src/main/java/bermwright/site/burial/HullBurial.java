// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.finding.CoverRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.Rule;
import bermwright.lowering.strength.BeamLoad;
import bermwright.regolith.EarthPressure;
import bermwright.regolith.Settlement;
import bermwright.shielding.cover.DepthMap;
import bermwright.site.burial.ShellBuckling.ThinShell;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What its cover does to a hull, lift by lift.
 *
 * <p>The soil over a point of skin presses down with its weight and sideways with 1 - sin(friction angle) of it; the
 * part square to the skin counts. Arching, frames and the stiffness of soil around the shell are left out, so real
 * shells with frames stand more. With no shell stated the inner pressure alone is counted.
 *
 * @param id           the hull
 * @param lifts        every lift, from the ground up
 * @param shellFactor  the least of the lifts' pressurised factors (1); endless without soil
 * @param longTube     outer pressure that buckles the empty shell as a long tube (Pa); empty without a shell
 * @param heldEnds     the same with its ends held round (Pa); empty without a shell
 * @param bendingOff   greatest bending stress in the empty shell over its yield stress, were it to stay round (1);
 *                     empty without a shell
 * @param seat         what it presses on its seat, soil on it included
 * @param supports     what carries it, and how it bends between
 * @param findings     what is wrong
 */
public record HullBurial(String id, List<LiftLoad> lifts, double shellFactor, Optional<Double> longTube,
        Optional<Double> heldEnds, Optional<Double> bendingOff, SeatLoad seat, HullSupports supports,
        List<Finding> findings) {
    /** Below this the shell is not safe under pressure; our own planning figure. */
    public static final double WANTED_FACTOR = 2;
    /** Below this a lift on one side moves the hull; our own planning figure. */
    public static final double WANTED_SLIDE = 1.5;

    /** Copies the lists. */
    public HullBurial {
        lifts = List.copyOf(lifts);
        findings = List.copyOf(findings);
    }

    /**
     * All covered hulls of a plan.
     *
     * @param plan  the plan
     * @param cover its cover
     * @return one for each hull with a cover on known ground
     */
    public static List<HullBurial> of(Plan plan, SiteCover cover) {
        List<HullBurial> all = new ArrayList<>();
        for (HullCover one : cover.hulls()) {
            plan.hull(one.id()).filter(h -> h.arrival() != Hull.Arrival.STAYS_UPRIGHT)
                    .ifPresent(hull -> all.add(new Reckoning(plan, hull, one).made()));
        }
        return all;
    }

    /**
     * Covered hulls that are not reckoned with.
     *
     * @param plan  the plan
     * @param cover its cover
     * @return a note on each covered hull that stays upright
     */
    public static List<Finding> notReckoned(Plan plan, SiteCover cover) {
        return cover.hulls().stream().map(c -> plan.hull(c.id())).flatMap(Optional::stream)
                .filter(h -> h.arrival() == Hull.Arrival.STAYS_UPRIGHT)
                .map(h -> Finding.of(CoverRule.BURIAL_UPRIGHT, Level.NOTE, h.id(), Figures.NONE,
                "What soil does to the wall"
                        + " and the top of a hull that is buried upright is not worked out here, nor the load on"
                        + " its feet.").at(h.baseCentre())).toList();
    }

    /** One hull's sums. */
    private static final int MOST_LIFTS = 1000;
    private static final class Reckoning {
        private final Plan plan;
        private final Hull hull;
        private final HullCover cover;
        private final double gravity;
        private final GroundPlan.Regolith soil;
        private final double density;
        private final double friction;
        private final Optional<ThinShell> shell;
        private final double stiffness;

        Reckoning(Plan plan, Hull hull, HullCover cover) {
            this.plan = plan;
            this.hull = hull;
            this.cover = cover;
            gravity = plan.ground().gravity();
            friction = plan.ground().pivotFriction();
            soil = plan.ground().regolith();
            density = SiteCover.density(plan, hull);
            shell = hull.shell().map(s -> new ThinShell(s.thickness(), s.modulus(), s.yield(), s.poisson()));
            stiffness = shell.map(s -> ShellBuckling.heldEnds(s, hull.radius(), hull.length())).orElse(0.0);
        }

        HullBurial made() {
            double top = topOfSoil();
            double step = Math.max(hull.cover().orElseThrow().lift(), top / MOST_LIFTS);
            List<LiftLoad> lifts = new ArrayList<>();
            int count = (int) Math.max(1, Math.ceil(top / step - 1e-9));
            for (int i = 1; i <= count; i++) {
                lifts.add(lift(Math.min(top, i * step), step));
            }
            double factor = lifts.stream().mapToDouble(LiftLoad::pressurised).min().orElse(Double.POSITIVE_INFINITY);
            LiftLoad last = lifts.get(lifts.size() - 1);
            BeamLoad borne = BeamLoad.weight(hull.mass() * gravity, hull.length(), hull.centreOfMassFromBase())
                    .with(soilOver());
            SeatLoad seat = SeatLoad.on(borne.total() / hull.length(), hull.radius(), Settlement.LUNAR_STIFFNESS);
            HullSupports supports = new SupportReckoning(plan, hull, borne, shell).made(seat);
            Optional<Double> bending = shell.map(s -> bending(s, last.greatest()));
            HullBurial made = new HullBurial(hull.id(), lifts, factor, shell.map(s ->
                    ShellBuckling.longTube(s, hull.radius())), shell.map(s -> stiffness), bending, seat, supports,
                    List.of());
            return new HullBurial(made.id, lifts, factor, made.longTube, made.heldEnds, bending, seat, supports,
                    findings(made));
        }

        private double radiusUp(int j) {
            return hull.radius() * (1 + Math.cos(cover.depth().aroundAt(j)));
        }

        private boolean isUpper(int j) {
            return Math.abs(cover.depth().aroundAt(j)) <= Math.PI / 2;
        }

        /** Height of the soil's highest point over the lay-down side of the hull (m). */
        private double topOfSoil() {
            double top = 0;
            DepthMap depth = cover.depth();
            for (int i = 0; i < depth.rows(); i++) {
                for (int j = 0; j < depth.columns(); j++) {
                    double up = depth.uprightDepth(i, j);
                    top = isUpper(j) && up > 0 ? Math.max(top, radiusUp(j) + up) : top;
                }
            }
            return top;
        }

        private LiftLoad lift(double height, double step) {
            DepthMap depth = cover.depth();
            double rest = EarthPressure.atRest(soil.frictionAngle());
            double greatest = 0;
            double along = 0;
            double around = 0;
            for (int i = 0; i < depth.rows(); i++) {
                for (int j = 0; j < depth.columns(); j++) {
                    if (!isUpper(j)) {
                        continue;
                    }
                    double over = Math.min(depth.uprightDepth(i, j), height - radiusUp(j));
                    double angle = depth.aroundAt(j);
                    double down = Math.cos(angle) * Math.cos(angle);
                    double pressure = density * gravity * over * (down + rest * (1 - down));
                    if (pressure > greatest) {
                        greatest = pressure;
                        along = depth.alongAt(i);
                        around = Math.toDegrees(angle);
                    }
                }
            }
            double push = sidePush(Math.min(height, hull.diameter()), step);
            double hold = friction * (hull.mass() * gravity / hull.length());
            return new LiftLoad(height, greatest, along, around,
                    greatest > 0 ? (hull.innerPressure() + stiffness) / greatest : Double.POSITIVE_INFINITY,
                    shell.isEmpty() ? Double.NaN : greatest > 0 ? stiffness / greatest : Double.POSITIVE_INFINITY,
                    push, push > 0 ? hold / push : Double.POSITIVE_INFINITY);
        }

        /** Active push of one lift that the other side lacks: half Ka g rho (high^2 - low^2). */
        private double sidePush(double height, double step) {
            double active = EarthPressure.active(soil.frictionAngle());
            double low = Math.max(0, height - step);
            return 0.5 * active * density * gravity * (height * height - low * low);
        }

        /** The soil straight over the hull, row by row of the depth map. */
        private List<BeamLoad.Stretch> soilOver() {
            DepthMap depth = cover.depth();
            double step = hull.length() / depth.rows();
            List<BeamLoad.Stretch> soilOver = new ArrayList<>();
            for (int i = 0; i < depth.rows(); i++) {
                double radius = BodyProfile.radiusAt(hull, depth.alongAt(i));
                double over = 0;
                for (int j = 0; j < depth.columns(); j++) {
                    double up = depth.uprightDepth(i, j);
                    over += isUpper(j) && up > 0 ? up * radius * Math.cos(depth.aroundAt(j)) : 0;
                }
                double perLength = over * 2 * Math.PI / depth.columns() * density * gravity;
                soilOver.add(new BeamLoad.Stretch(i * step, (i + 1) * step, perLength, perLength));
            }
            return soilOver;
        }

        /** A round ring between even loads down and less even loads sideways: M = q r^2 (1 - K) / 4. */
        private double bending(ThinShell thin, double greatest) {
            double rest = EarthPressure.atRest(soil.frictionAngle());
            double moment = greatest * hull.radius() * hull.radius() * (1 - rest) / 4;
            return 6 * moment / (thin.thickness() * thin.thickness()) / thin.yield();
        }

        private List<Finding> findings(HullBurial made) {
            List<Finding> findings = new ArrayList<>();
            // Of lifts that are borne equally badly, as where nothing bears any, the one that presses most.
            LiftLoad worst = made.lifts.stream().min(Comparator.comparingDouble(LiftLoad::pressurised)
                    .thenComparing(Comparator.comparingDouble(LiftLoad::greatest).reversed())).orElseThrow();
            if (!(made.shellFactor >= WANTED_FACTOR)) {
                findings.add(finding(CoverRule.BURIAL_CRUSHED, made.shellFactor < 1 ? Level.REFUSE : Level.WARN,
                        Figures.of(made.shellFactor, WANTED_FACTOR, "1"), text("Soil up to %.1f m loads the shell"
                                + " with %.1f kPa; factor of safety with pressure and stiffness %.2f, %.2f"
                                + " required.", worst.height(),
                                worst.greatest() / 1000, made.shellFactor, WANTED_FACTOR)));
            }
            double off = made.lifts.stream().mapToDouble(LiftLoad::unpressurised).min().orElse(Double.NaN);
            if (shell.isEmpty()) {
                findings.add(finding(CoverRule.BURIAL_SHELL_UNKNOWN, Level.NOTE, Figures.NONE,
                        "No shell is stated, so only"
                        + " the inner pressure is held against the soil, and what happens without it is not known."));
            } else if (off < 1 && made.shellFactor >= 1) {
                findings.add(finding(CoverRule.BURIAL_NEEDS_PRESSURE, Level.WARN, Figures.of(off, 1, "1"),
                        text("Pressure off, the shell buckles at %.2f kPa (ends held) or %.2f kPa (long); soil"
                                + " demand %.1f kPa. From the lift that covers the crown on, it stands only under"
                                + " pressure.", stiffness / 1000,
                        made.longTube.orElse(0.0) / 1000, worst.greatest() / 1000)));
            }
            LiftLoad pushed = made.lifts.stream().min((a, b) -> Double.compare(a.slideResistance(),
                    b.slideResistance())).orElseThrow();
            if (pushed.slideResistance() < WANTED_SLIDE) {
                findings.add(finding(CoverRule.BURIAL_ONE_SIDED, Level.WARN,
                        Figures.of(pushed.slideResistance(), WANTED_SLIDE, "1"), text("A lift to %.1f m on one side"
                                + " only pushes the hull with %.1f kN/m; factor of safety against sliding %.2f,"
                                + " %.2f required.", pushed.height(),
                                pushed.sidePush() / 1000, pushed.slideResistance(), WANTED_SLIDE)));
            }
            findings.addAll(made.supports.findings());
            return findings;
        }

        private Finding finding(Rule rule, Level level, Figures figures, String words) {
            return Finding.of(rule, level, hull.id(), figures, words).at(hull.baseCentre())
                    .from("our own planning figure");
        }

        private static String text(String form, Object... parts) {
            return String.format(Locale.ROOT, form, parts);
        }
    }
}
