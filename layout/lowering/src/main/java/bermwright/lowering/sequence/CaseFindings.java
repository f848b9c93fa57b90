// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.Verdict;
import bermwright.lowering.body.Outline;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.SweptProfile;
import bermwright.lowering.chain.Chain;
import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.chain.ChainUnits;
import bermwright.lowering.chain.Part;
import bermwright.lowering.rig.Lug;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Reeving;
import bermwright.lowering.statics.HandOver;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.TiltState;
import bermwright.regolith.Strength;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds what is wrong with a case and with what its scan shows. */
final class CaseFindings {
    private static final String STATICS = "statics, closed form";
    /** Parts that have findings of their own. */
    private static final Set<Part> SAID_ELSEWHERE = EnumSet.of(Part.PIVOT_GROUND, Part.HULL, Part.POLE_HEAD);
    private final LoweringCase setup;
    private boolean hopeless;

    CaseFindings(LoweringCase setup) {
        this.setup = setup;
    }

    /** True once something was found that leaves nothing to work out. */
    boolean isHopeless() {
        return hopeless;
    }

    List<Finding> beforeScan(SweptProfile sweep) {
        List<Finding> findings = new ArrayList<>();
        lug("lug of the lowering lines", setup.rig().lines().lug(), findings);
        setup.rig().pullOver().ifPresent(p -> lug("lug of the pull-over line", p.lug(), findings));
        pivotInsideRim(findings);
        double alpha = setup.tipping().centreAngle();
        double slope = setup.tipping().ground().slopeAlong();
        if (!(slope < alpha)) {
            hopeless = true;
            findings.add(Finding.of(LoweringRule.LOWERING_FALLS_WHILE_STANDING, Level.REFUSE,
                    Figures.of(deg(slope), deg(alpha), "deg"),
                    text("The ground falls %.1f deg along the lay-down azimuth, the centre of mass stands only %.1f deg"
                            + " behind the pivot line: the hull falls while standing.", deg(slope), deg(alpha))));
        } else if (setup.rig().pullOver().isEmpty()) {
            findings.add(Finding.of(LoweringRule.LOWERING_NO_PULL_OVER, Level.REFUSE, Figures.NONE,
                    text("Nothing pulls the hull over its balance at %.1f deg.",
                            deg(alpha - slope))));
        }
        setup.rig().poles().ifPresent(p -> poleInSweep(p, sweep, findings));
        reeving(findings);
        strength(findings);
        return findings;
    }

    /** Lines that cannot be shared evenly over the poles pull the hull out of its plane. */
    private void reeving(List<Finding> findings) {
        Reeving reeving = setup.rig().reeving();
        if (!reeving.isEven()) {
            findings.add(Finding.of(LoweringRule.LOWERING_UNEVEN_REEVING, Level.REFUSE,
                    Figures.of(reeving.lines(), reeving.poles(), "1"), text("%d lowering lines cannot be shared evenly"
                            + " over %d poles: one side pulls harder and turns the hull out of its plane.",
                            reeving.lines(), reeving.poles())));
        }
    }

    private void strength(List<Finding> findings) {
        Strength greatest = setup.soil().strength().greatest();
        if (greatest.isBeyondDesign()) {
            findings.add(Finding.of(LoweringRule.SOIL_STRENGTH_EXTRAPOLATED, Level.WARN,
                    Figures.of(deg(greatest.frictionAngle()), deg(Strength.GREATEST_FOR_DESIGN), "deg"),
                    text("Anchors, feet and pivot are worked out with a friction angle of up to %.1f deg, as stated."
                            + " Above %.0f deg their formulas are extrapolated: no factor that rests on the soil is"
                            + " sure there.", deg(greatest.frictionAngle()), deg(Strength.GREATEST_FOR_DESIGN))));
        }
    }

    private void lug(String name, Lug lug, List<Finding> findings) {
        Outline outline = setup.tipping().body().outline();
        if (lug.along() > outline.length()) {
            hopeless = true;
            findings.add(Finding.of(LoweringRule.LOWERING_LUG_BEYOND_HULL, Level.REFUSE,
                    Figures.of(lug.along(), outline.length(), "m"),
                    text("The %s is %.2f m from the base of a hull %.2f m long.", name, lug.along(),
                            outline.length())).with(name));
        }
        double off = Math.max(Math.abs(lug.offAxis()), lug.halfSpread());
        if (off > 1.5 * outline.radius()) {
            findings.add(Finding.of(LoweringRule.LOWERING_LUG_BESIDE_HULL, Level.WARN,
                    Figures.of(off, outline.radius(), "m"),
                    text("The %s is %.2f m off the axis of a hull of %.2f m radius: it needs an outrigger that is not"
                            + " checked here.", name, off, outline.radius())).with(name));
        }
    }

    private void pivotInsideRim(List<Finding> findings) {
        double ahead = setup.tipping().pivotAhead();
        double radius = setup.tipping().body().outline().radius();
        if (ahead < radius - 1e-9) {
            findings.add(Finding.of(LoweringRule.LOWERING_PIVOT_INSIDE_RIM, Level.REFUSE,
                    Figures.of(ahead, radius, "m"),
                    text("The pivot line stands %.2f m ahead of the axis, inside the hull's radius of %.2f m: the rim"
                            + " would come down first and the hull turn about it.", ahead, radius)));
        }
    }

    private void poleInSweep(Poles poles, SweptProfile sweep, List<Finding> findings) {
        Outline outline = setup.tipping().body().outline();
        if (poles.halfSpread() > outline.radius() && poles.count() % 2 == 0) {
            return;
        }
        for (int i = 0; i <= 20; i++) {
            double share = i / 20.0;
            PlanePoint p = new PlanePoint(poles.foot().x() + share * (poles.head().x() - poles.foot().x()),
                    Math.max(0.01, poles.foot().z() + share * (poles.head().z() - poles.foot().z())));
            if (sweep.covers(p)) {
                findings.add(Finding.of(LoweringRule.LOWERING_POLE_IN_SWEEP, Level.REFUSE,
                        Figures.of(p.x(), sweep.least(), "m"),
                        text("A pole stands inside the space the hull passes through, %.2f m along and %.2f m up from"
                                + " the pivot line.", p.x(), p.z())));
                return;
            }
        }
    }

    List<Finding> afterScan(TiltScan scan, Chain chain) {
        List<Finding> findings = new ArrayList<>();
        for (DeadPoint dead : scan.deadPoints()) {
            findings.add(Finding.of(LoweringRule.LOWERING_DEAD_POINT, Level.REFUSE,
                    Figures.of(dead.worstLever(), dead.limit(), "m"),
                    text("From %.1f to %.1f deg %s: lever down to %.2f m, %.2f m required.", deg(dead.from()),
                            deg(dead.to()), dead.kind().words(), dead.worstLever(), dead.limit()))
                    .with(dead.kind().words()));
        }
        uplift(scan, findings);
        HandOver band = HandOver.of(setup.tipping());
        if (band.to() >= setup.tipping().restTilt()) {
            findings.add(Finding.of(LoweringRule.LOWERING_NO_HAND_OVER, Level.REFUSE,
                    Figures.of(deg(band.to()), deg(setup.tipping().restTilt()), "deg"),
                    "The balance is so uncertain that the lowering lines cannot be trusted before the hull lies."));
        }
        unheldHead(scan, findings);
        sideways(findings);
        headSideways(scan, findings);
        parts(chain, findings);
        return findings;
    }

    /** Every part that does not bear an intact load case, and every part that cannot be judged. */
    private static void parts(Chain chain, List<Finding> findings) {
        Chain intact = new Chain(chain.intact(), java.util.Map.of());
        for (ChainRow row : intact.governing()) {
            if (row.verdict() == Verdict.NOT_MET && !SAID_ELSEWHERE.contains(row.part())) {
                findings.add(tooWeak(row));
            }
        }
        List<String> missing = intact.rows().stream().filter(r -> r.verdict() == Verdict.NOT_JUDGED)
                .map(r -> r.demand().isPresent() ? r.part().words()
                        : r.part().words() + " in a " + r.load().word() + ", for the " + r.source())
                .distinct().toList();
        if (!missing.isEmpty()) {
            findings.add(Finding.of(LoweringRule.LOWERING_RATING_MISSING, Level.WARN, Figures.NONE,
                    "Capacity not given, so not judged: " + String.join("; ", missing) + "."));
        }
    }

    private static Finding tooWeak(ChainRow row) {
        String unit = ChainUnits.shown(row.unit());
        double scale = ChainUnits.scale(row.unit());
        double demand = row.demand().orElseThrow() / scale;
        double capacity = row.capacity().orElseThrow() / scale;
        double factor = row.factor().orElseThrow();
        return Finding.of(LoweringRule.LOWERING_FACTOR, Level.REFUSE, Figures.of(factor, row.required(), "1"),
                text("The %s (%s): demand %.1f %s at %.1f deg, capacity %.1f %4$s; factor of safety %.2f, %.2f"
                        + " required.", row.part().words(), row.loadWords(), demand, unit, deg(row.tilt()), capacity,
                        factor, row.required()))
                .with(row.part().words(), row.load().word()).from(row.source())
                .todo(text("Give the %s a capacity of %.1f %s, or lower the demand to %.1f %3$s.", row.part().words(),
                        row.required() * demand, unit, capacity / row.required()));
    }

    private void uplift(TiltScan scan, List<Finding> findings) {
        Optional<TiltState> least = scan.greatest(s -> -s.pivotUp());
        if (least.isPresent() && !(least.get().pivotUp() > 0)) {
            findings.add(Finding.of(LoweringRule.LOWERING_UPLIFT, Level.REFUSE,
                    Figures.of(least.get().pivotUp() / 1000, 0, "kN"),
                    text("At %.1f deg the lines lift the base off the ground: %.1f kN on the pivot.",
                            deg(least.get().tilt()), least.get().pivotUp() / 1000)));
        }
    }

    private void unheldHead(TiltScan scan, List<Finding> findings) {
        Optional<TiltState> back = scan.greatest(s -> -s.head().leftOver());
        if (back.isPresent() && back.get().head().leftOver() < -1e-3 * setup.tipping().weight()) {
            findings.add(Finding.of(LoweringRule.LOWERING_POLE_PULLED_BACK, Level.WARN,
                    Figures.of(-back.get().head().leftOver() / 1000, 0, "kN"),
                    text("At %.1f deg the lines to the winches pull each pole head %.1f kN away from the hull and no"
                            + " fore stay holds it.",
                            deg(back.get().tilt()), -back.get().head().leftOver() / 1000)));
        }
        Optional<TiltState> worst = scan.greatest(s -> s.head().leftOver());
        if (worst.isPresent() && worst.get().head().leftOver() > 1e-6 * setup.tipping().weight()) {
            findings.add(Finding.of(LoweringRule.LOWERING_POLE_NOT_STAYED, Level.REFUSE,
                    Figures.of(worst.get().head().leftOver() / 1000, 0, "kN"),
                    text("At %.1f deg %.1f kN pull each pole head towards the hull and no stay holds it back.",
                            deg(worst.get().tilt()), worst.get().head().leftOver() / 1000)));
        }
    }

    private void headSideways(TiltScan scan, List<Finding> findings) {
        Optional<TiltState> worst = scan.greatest(s -> Math.abs(s.head().lateral()));
        if (worst.isPresent() && Math.abs(worst.get().head().lateral()) > 0.02 * worst.get().lineEach()) {
            double lateral = worst.get().head().lateral();
            findings.add(Finding.of(LoweringRule.LOWERING_HEAD_SIDEWAYS, Level.NOTE,
                    Figures.of(Math.abs(lateral) / 1000, 0, "kN"),
                    text("At %.1f deg the line pulls its pole head %.1f kN %s across the lay-down plane: a %s between"
                            + " the heads or side stays must take it.", deg(worst.get().tilt()),
                            Math.abs(lateral) / 1000, lateral < 0 ? "inwards" : "outwards",
                            lateral < 0 ? "strut" : "tie")));
        }
    }

    private void sideways(List<Finding> findings) {
        double across = Math.abs(setup.tipping().ground().slopeAcross());
        double half = setup.tipping().pivot().halfWidth();
        if (half == 0) {
            findings.add(Finding.of(LoweringRule.LOWERING_RIM_ROLLS, Level.NOTE,
                    Figures.of(deg(across), 0, "deg"),
                    text("The bare rim touches the ground in a point: nothing holds the hull against rolling"
                            + " sideways but its lines, and the ground falls %.1f deg across.", deg(across))));
            return;
        }
        double margin = Math.atan(half / setup.tipping().centreRadius());
        if (across >= margin) {
            findings.add(Finding.of(LoweringRule.LOWERING_TIPS_SIDEWAYS, Level.REFUSE,
                    Figures.of(deg(across), deg(margin), "deg"),
                    text("The ground falls %.1f deg across, and at balance the hull tips sideways over its pivot line"
                            + " from %.1f deg.", deg(across), deg(margin))));
        }
    }

    private static double deg(double angle) {
        return Math.toDegrees(angle);
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
