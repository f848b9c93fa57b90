// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.strength.SupportedBeam;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.burial.HullBurial;
import bermwright.site.burial.HullSupports;
import bermwright.site.exposure.PassedThrough;
import bermwright.site.exposure.SiteCover;
import java.io.PrintStream;
import java.util.List;

/** The cover of each hull, for people. */
final class CoverText {
    private CoverText() {
    }

    static void write(Assessment assessment, PrintStream out) {
        CommonText.heading("Cover", out);
        TextTable table = new TextTable("hull", "soil m3", "mass t", "least depth m", "wanted there m", "at along m",
                "around deg", "least g/cm2", "skin below wanted %", "shell factor");
        for (HullAssessment hull : assessment.hulls()) {
            if (hull.cover().isEmpty()) {
                table.row(hull.hull().id(), "no cover");
                continue;
            }
            var cover = hull.cover().get();
            table.row(hull.hull().id(), TextTable.number(cover.volume(), 0),
                    TextTable.number(InUnits.tonnes(cover.placedMass()), 0),
                    TextTable.number(cover.least().depth(), 2), TextTable.number(cover.least().wanted(), 2),
                    TextTable.number(cover.least().along(), 1),
                    TextTable.number(InUnits.degrees(cover.least().around()), 0),
                    TextTable.number(InUnits.gramsASquareCentimetre(cover.leastArealDensity()), 0),
                    TextTable.number(100 * cover.shareBelowWanted(), 1),
                    TextTable.number(hull.burial().map(b -> b.shellFactor()).orElse(Double.NaN), 1));
        }
        out.println(table);
        assessment.cover().ifPresent(cover -> out.printf("  In all %s m3 placed, slopes of at most %s deg.%n%n",
                TextTable.words(cover.volume(), 0),
                TextTable.words(InUnits.degrees(assessment.plan().ground().regolith().stableSlope()), 1)));
    }

    /** What passes through the covers; nothing where nothing does. */
    static void writePassThroughs(Assessment assessment, PrintStream out) {
        List<PassedThrough> all = assessment.cover().map(SiteCover::passing).orElse(List.of());
        if (all.isEmpty()) {
            return;
        }
        CommonText.heading("What passes through the covers", out);
        TextTable table = new TextTable("hull", "what", "kind", "at along m", "around deg", "state", "soil over it m",
                "open way m", "takes up m3");
        all.forEach(p -> table.row(p.hull(), p.thing().id(), p.thing().kind().word(),
                TextTable.number(p.thing().along(), 1), TextTable.number(InUnits.degrees(p.thing().around()), 0),
                p.state(), TextTable.number(p.deepest(), 2), TextTable.number(p.openWay(), 2),
                TextTable.number(p.displaced(), 2)));
        out.println(table);
    }

    /** What carries each buried hull. */
    static void writeSupports(Assessment assessment, PrintStream out) {
        CommonText.heading("What carries the buried hulls", out);
        TextTable table = new TextTable("hull", "support", "at along m", "load kN", "on soil kPa", "soil bears kPa",
                "factor");
        for (HullAssessment hull : assessment.hulls()) {
            hull.burial().ifPresent(b -> b.supports().supports().forEach(s -> table.row(b.id(), s.name(),
                    TextTable.number(s.along(), 1), TextTable.number(InUnits.kilonewtons(s.reaction()), 0),
                    TextTable.number(InUnits.kilopascals(s.pressure()), 1),
                    TextTable.number(InUnits.kilopascals(s.bearing()), 0),
                    TextTable.number(s.bearingFactor(), 1))));
        }
        out.println(table);
        assessment.hulls().forEach(hull -> hull.burial().ifPresent(b -> b.supports().supports().forEach(s -> s.soil()
                .ifPresent(soil -> CommonText.wrapped("Soil: %s, %s, factor %s; %s.".formatted(b.id(), s.name(),
                        TextTable.words(s.bearingFactor(), 2), soil.words()), 2, out)))));
        assessment.hulls().forEach(hull -> hull.burial().map(HullBurial::supports).ifPresent(
                s -> bending(hull.hull().id(), s, out)));
        out.println();
    }

    private static void bending(String hull, HullSupports supports, PrintStream out) {
        if (!(supports.hogging() > 0) && !(supports.sagging() > 0)) {
            return;
        }
        CommonText.wrapped(hull + " bends with " + TextTable.words(InUnits.kilonewtons(supports.hogging()), 0)
                + " kN m over a support and " + TextTable.words(InUnits.kilonewtons(supports.sagging()), 0)
                + " kN m between, and shears with up to "
                + TextTable.words(InUnits.kilonewtons(supports.beam().map(SupportedBeam::greatestShear).orElse(0.0)), 0)
                + " kN" + supports.shell().map(shell -> "; the bare shell bears that "
                + TextTable.words(shell.pressurisedFactor(), 1) + " times with the pressure on, "
                + TextTable.words(shell.bendingFactor(), 1) + " times with it off").orElse("") + ".", 2, out);
    }
}
