// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.lowering.body.Outline;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.SweptProfile;
import bermwright.lowering.rig.Lug;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Reeving;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds what is wrong with a case and with what its scan shows. */
final class CaseTroubles {
    private static final String STATICS = "statics, closed form";
    private final LoweringCase what;
    private boolean hopeless;

    CaseTroubles(LoweringCase what) {
        this.what = what;
    }

    /** True once a trouble was found that leaves nothing to work out. */
    boolean isHopeless() {
        return hopeless;
    }

    List<Trouble> beforeScan(SweptProfile sweep) {
        List<Trouble> troubles = new ArrayList<>();
        lug("lug of the lowering lines", what.rig().lines().lug(), troubles);
        what.rig().pullOver().ifPresent(p -> lug("lug of the pull-over line", p.lug(), troubles));
        pivotInsideRim(troubles);
        double alpha = what.tipping().centreAngle();
        double slope = what.tipping().ground().slopeAlong();
        if (!(slope < alpha)) {
            hopeless = true;
            troubles.add(Trouble.of("lowering-falls-while-standing", Trouble.Level.REFUSE,
                    new Trouble.Figures(deg(slope), deg(alpha), "deg"), STATICS,
                    text("The ground falls %.1f deg along the lay-down azimuth, the centre of mass stands only %.1f deg"
                            + " behind the pivot line: the hull falls while standing. Turn the azimuth or level the"
                            + " ground.", deg(slope), deg(alpha))));
        } else if (what.rig().pullOver().isEmpty()) {
            troubles.add(Trouble.plain("lowering-no-pull-over", Trouble.Level.REFUSE,
                    text("Nothing pulls the hull over its balance at %.1f deg. Give a pull-over line.",
                            deg(alpha - slope))));
        }
        what.rig().poles().ifPresent(p -> poleInSweep(p, sweep, troubles));
        reeving(troubles);
        return troubles;
    }

    /** Lines that cannot be shared evenly over the poles pull the hull out of its plane. */
    private void reeving(List<Trouble> troubles) {
        Reeving reeving = what.rig().reeving();
        if (!reeving.isEven()) {
            troubles.add(Trouble.of("lowering-uneven-reeving", Trouble.Level.REFUSE,
                    new Trouble.Figures(reeving.lines(), reeving.poles(), "1"), STATICS,
                    text("%d lowering lines cannot be shared evenly over %d poles: one side pulls harder and turns the"
                            + " hull out of its plane. Give as many lines to each pole, or another number of poles.",
                            reeving.lines(), reeving.poles())));
        }
    }

    private void lug(String name, Lug lug, List<Trouble> troubles) {
        Outline outline = what.tipping().body().outline();
        if (lug.along() > outline.length()) {
            hopeless = true;
            troubles.add(Trouble.of("lowering-lug-beyond-hull", Trouble.Level.REFUSE,
                    new Trouble.Figures(lug.along(), outline.length(), "m"), "size of the hull",
                    text("The %s is %.2f m from the base of a hull %.2f m long.", name, lug.along(),
                            outline.length())));
        }
        double off = Math.max(Math.abs(lug.offAxis()), lug.halfSpread());
        if (off > 1.5 * outline.radius()) {
            troubles.add(Trouble.of("lowering-lug-beside-hull", Trouble.Level.WARN,
                    new Trouble.Figures(off, outline.radius(), "m"), "size of the hull",
                    text("The %s is %.2f m off the axis of a hull of %.2f m radius: it needs an outrigger that is not"
                            + " checked here.", name, off, outline.radius())));
        }
    }

    private void pivotInsideRim(List<Trouble> troubles) {
        double ahead = what.tipping().pivotAhead();
        double radius = what.tipping().body().outline().radius();
        if (ahead < radius - 1e-9) {
            troubles.add(Trouble.of("lowering-pivot-inside-rim", Trouble.Level.REFUSE,
                    new Trouble.Figures(ahead, radius, "m"), "size of the hull",
                    text("The pivot line stands %.2f m ahead of the axis, inside the hull's radius of %.2f m: the rim"
                            + " would come down first and the hull turn about it.", ahead, radius)));
        }
    }

    private void poleInSweep(Poles poles, SweptProfile sweep, List<Trouble> troubles) {
        Outline outline = what.tipping().body().outline();
        if (poles.halfSpread() > outline.radius() && poles.count() % 2 == 0) {
            return;
        }
        for (int i = 0; i <= 20; i++) {
            double share = i / 20.0;
            PlanePoint p = new PlanePoint(poles.foot().x() + share * (poles.head().x() - poles.foot().x()),
                    Math.max(0.01, poles.foot().z() + share * (poles.head().z() - poles.foot().z())));
            if (sweep.covers(p)) {
                troubles.add(Trouble.of("lowering-pole-in-sweep", Trouble.Level.REFUSE,
                        new Trouble.Figures(p.x(), sweep.least(), "m"), "swept profile of the hull",
                        text("A pole stands inside the space the hull passes through, %.2f m along and %.2f m up from"
                                + " the pivot line.", p.x(), p.z())));
                return;
            }
        }
    }

    List<Trouble> afterScan(TiltScan scan, RigChecks checks) {
        List<Trouble> troubles = new ArrayList<>();
        for (DeadPoint dead : scan.deadPoints()) {
            troubles.add(Trouble.of("lowering-dead-point", Trouble.Level.REFUSE,
                    new Trouble.Figures(dead.worstLever(), dead.limit(), "m"),
                    "least lever a tenth of the lug's distance from the pivot, common practice, no source",
                    text("From %.1f to %.1f deg %s: lever down to %.2f m, least accepted %.2f m. Raise the pole heads"
                            + " or set them further behind the pivot.", deg(dead.from()), deg(dead.to()),
                            dead.kind().words(), dead.worstLever(), dead.limit())));
        }
        uplift(scan, troubles);
        HandOver band = HandOver.of(what.tipping());
        if (band.to() >= what.tipping().restTilt()) {
            troubles.add(Trouble.of("lowering-no-hand-over", Trouble.Level.REFUSE,
                    new Trouble.Figures(deg(band.to()), deg(what.tipping().restTilt()), "deg"), STATICS,
                    "The balance is so uncertain that the lowering lines cannot be trusted before the hull lies."));
        }
        unheldHead(scan, troubles);
        sideways(troubles);
        headSideways(scan, troubles);
        for (PartCheck check : checks.checks()) {
            if (!check.holds()) {
                troubles.add(tooWeak(check));
            }
        }
        for (String rating : checks.missing().stream().distinct().toList()) {
            troubles.add(Trouble.plain("lowering-rating-missing", Trouble.Level.WARN,
                    "Not given, so not checked: " + rating + "."));
        }
        return troubles;
    }

    private static Trouble tooWeak(PartCheck check) {
        return Trouble.of("lowering-factor-" + check.part().split(",")[0].toLowerCase(Locale.ROOT).replace(' ', '-'),
                Trouble.Level.REFUSE, new Trouble.Figures(check.factor(), check.required(), "1"), check.source(),
                text("The %s (%s) bears %.1f kN and is asked %.1f kN at %.1f deg: factor %.2f, asked %.2f.",
                        check.part(), check.load(), check.capacity() / 1000, check.demand() / 1000,
                        deg(check.tilt()), check.factor(), check.required()));
    }

    private void uplift(TiltScan scan, List<Trouble> troubles) {
        Optional<TiltState> least = scan.greatest(s -> -s.pivotUp());
        if (least.isPresent() && !(least.get().pivotUp() > 0)) {
            troubles.add(Trouble.of("lowering-uplift", Trouble.Level.REFUSE,
                    new Trouble.Figures(least.get().pivotUp() / 1000, 0, "kN"), STATICS,
                    text("At %.1f deg the lines lift the base off the ground: %.1f kN on the pivot.",
                            deg(least.get().tilt()), least.get().pivotUp() / 1000)));
        }
    }

    private void unheldHead(TiltScan scan, List<Trouble> troubles) {
        Optional<TiltState> back = scan.greatest(s -> -s.head().leftOver());
        if (back.isPresent() && back.get().head().leftOver() < -1e-3 * what.tipping().weight()) {
            troubles.add(Trouble.of("lowering-pole-pulled-back", Trouble.Level.WARN,
                    new Trouble.Figures(-back.get().head().leftOver() / 1000, 0, "kN"), STATICS,
                    text("At %.1f deg the lines to the winches pull each pole head %.1f kN away from the hull and no"
                            + " fore stay holds it. Set the winches nearer to the poles or give fore stays.",
                            deg(back.get().tilt()), -back.get().head().leftOver() / 1000)));
        }
        Optional<TiltState> worst = scan.greatest(s -> s.head().leftOver());
        if (worst.isPresent() && worst.get().head().leftOver() > 1e-6 * what.tipping().weight()) {
            troubles.add(Trouble.of("lowering-pole-not-stayed", Trouble.Level.REFUSE,
                    new Trouble.Figures(worst.get().head().leftOver() / 1000, 0, "kN"), STATICS,
                    text("At %.1f deg %.1f kN pull each pole head towards the hull and no stay holds it back.",
                            deg(worst.get().tilt()), worst.get().head().leftOver() / 1000)));
        }
    }

    private void headSideways(TiltScan scan, List<Trouble> troubles) {
        Optional<TiltState> worst = scan.greatest(s -> Math.abs(s.head().lateral()));
        if (worst.isPresent() && Math.abs(worst.get().head().lateral()) > 0.02 * worst.get().lineEach()) {
            double lateral = worst.get().head().lateral();
            troubles.add(Trouble.of("lowering-head-sideways", Trouble.Level.NOTE,
                    new Trouble.Figures(Math.abs(lateral) / 1000, 0, "kN"), STATICS,
                    text("At %.1f deg the line pulls its pole head %.1f kN %s across the lay-down plane: a %s between"
                            + " the heads or side stays must take it.", deg(worst.get().tilt()),
                            Math.abs(lateral) / 1000, lateral < 0 ? "inwards" : "outwards",
                            lateral < 0 ? "strut" : "tie")));
        }
    }

    private void sideways(List<Trouble> troubles) {
        double across = Math.abs(what.tipping().ground().slopeAcross());
        double half = what.tipping().pivot().halfWidth();
        if (half == 0) {
            troubles.add(Trouble.of("lowering-rim-rolls", Trouble.Level.NOTE,
                    new Trouble.Figures(deg(across), 0, "deg"),
                    STATICS, text("The bare rim touches the ground in a point: nothing holds the hull against rolling"
                            + " sideways but its lines, and the ground falls %.1f deg across. Give shoes or side"
                            + " lines.", deg(across))));
            return;
        }
        double margin = Math.atan(half / what.tipping().centreRadius());
        if (across >= margin) {
            troubles.add(Trouble.of("lowering-tips-sideways", Trouble.Level.REFUSE,
                    new Trouble.Figures(deg(across), deg(margin), "deg"), STATICS,
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
