// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.finding.CoverRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.Rule;
import bermwright.regolith.SoilSensitivity;
import bermwright.site.burial.HullSupports.Stresses;
import bermwright.site.burial.HullSupports.Support;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What is wrong with the way a hull is carried. */
public final class SupportFindings {
    /** Soil is to bear a support so often; common practice, no source. */
    public static final double WANTED_BEARING = 3;
    /** The shell is to bear its bending so often; our own planning figure. */
    static final double WANTED_BENDING = 2;
    private static final String OURS = "our own planning figure";
    private static final String ZICK = "Zick (1951), from memory; yield stress of the plan";

    private final Hull hull;

    SupportFindings(Hull hull) {
        this.hull = hull;
    }

    Finding saddlesPastMiddle() {
        double place = hull.seat().fromEnd(hull.length());
        return finding(CoverRule.SADDLE_PLACE, Level.REFUSE, Figures.of(place, hull.length() / 2, "m"), text("The outer"
                + " saddles stand %.1f m from the ends of a hull of %.1f m: they meet or pass each other.", place,
                hull.length())).from("the hull's length");
    }

    List<Finding> of(HullSupports made) {
        List<Finding> findings = new ArrayList<>();
        made.supports().stream().filter(s -> s.reaction() < 0).findFirst().ifPresent(s -> findings.add(finding(
                CoverRule.SADDLE_LIFTS, Level.REFUSE, Figures.of(s.reaction() / 1000, 0, "kN"),
                text("The hull lifts off %s and"
                        + " tips: nothing there holds it down.", s.name())).from("equilibrium")));
        List<String> idle = made.supports().stream().filter(s -> s.reaction() == 0).map(Support::name).toList();
        if (!idle.isEmpty()) {
            findings.add(finding(CoverRule.SADDLE_IDLE, Level.WARN, Figures.of(0, 0, "kN"),
                    text("The hull rises off %s, which carries nothing, and rests on the others.", String.join(""
                            + " and ", idle))).from("equilibrium"));
        }
        made.supports().stream().min(Comparator.comparingDouble(Support::bearingFactor))
                .filter(s -> !(s.bearingFactor() >= WANTED_BEARING)).ifPresent(s -> findings.add(bearing(s)));
        made.shell().ifPresent(s -> stresses(made, s, findings));
        return findings;
    }

    private Finding bearing(Support s) {
        double factor = s.bearingFactor();
        return finding(CoverRule.SADDLE_BEARING, factor >= 1 ? Level.WARN : Level.REFUSE,
                Figures.of(factor, WANTED_BEARING, "1"), text("Under %s, %.1f m from the base, %.0f kN: demand %.0f"
                        + " kPa, bearing capacity %.0f kPa; factor of safety %.2f, %.0f required; %s.",
                        s.name(), s.along(), s.reaction() / 1000, s.pressure() / 1000, s.bearing() / 1000, factor,
                        WANTED_BEARING, s.soil().map(SoilSensitivity::words).orElse("soil as stated"))).with(s.name())
                .at(hull.lyingAt(TrueMetres.SAME, s.along(), 0))
                .todo(text("Give the foot %.1f m2, add supports, or bed the hull along its length.",
                        s.reaction() * WANTED_BEARING / s.bearing()));
    }

    private void stresses(HullSupports made, Stresses s, List<Finding> findings) {
        double on = s.pressurisedFactor();
        double off = s.bendingFactor();
        if (!(on >= WANTED_BENDING) || !(off >= 1)) {
            double shown = on >= WANTED_BENDING ? off : on;
            findings.add(finding(CoverRule.SADDLE_BENDING, on >= 1 ? Level.WARN : Level.REFUSE,
                    Figures.of(shown, on >= WANTED_BENDING ? 1 : WANTED_BENDING, "1"), text("Bending moment %.1f MN"
                            + " m over a support, %.1f MN m between: up to %.0f MPa in the bare shell, capacity"
                            + " %.0f MPa. Factor of safety %.1f with the pressure on (lengthwise pull %.0f MPa),"
                            + " %.1f with it off.", made.hogging() / 1e6, made.sagging() / 1e6,
                            Math.max(s.overSupport(), s.between()) / 1e6, s.bearable() / 1e6, on, s.pull() / 1e6,
                            off)).from(OURS));
        }
        s.horn().filter(horn -> !(horn <= s.yield())).ifPresent(horn -> findings.add(finding(CoverRule.SADDLE_HORN,
                Level.WARN, Figures.of(horn / 1e6, s.yield() / 1e6, "MPa"), text("At the horn of the most loaded"
                        + " saddle the bare wall is stressed with %.0f MPa; it yields at %.0f MPa.", horn / 1e6,
                        s.yield() / 1e6)).from(ZICK)));
    }

    private Finding finding(Rule rule, Level level, Figures figures, String words) {
        return Finding.of(rule, level, hull.id(), figures, words).at(hull.baseCentre());
    }

    private static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
