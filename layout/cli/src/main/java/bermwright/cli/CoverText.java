// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.strength.SupportedBeam;
import bermwright.site.answer.Answers;
import bermwright.site.answer.CoverAnswers;
import bermwright.site.answer.Unit;
import bermwright.site.assessment.Assessment;
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
        out.println(TextTable.of(Answers.COVER, assessment.hulls().stream().flatMap(h -> h.cover().stream()).toList()));
        assessment.hulls().forEach(h -> CommonText.wrapped("Hull " + h.hull().id() + (h.cover().isEmpty()
                ? ": no cover." : h.burial().map(b -> ": factor of safety of the shell under it, pressure on: "
                + TextTable.words(b.shellFactor(), 2) + ".").orElse(": its shell under it is not worked out.")), 2,
                out));
        assessment.cover().ifPresent(cover -> out.printf("  In all %s m3 placed, slopes of at most %s deg.%n%n",
                TextTable.words(cover.volume(), 0),
                TextTable.words(Unit.DEG.of(assessment.plan().ground().regolith().stableSlope()), 1)));
    }

    /** What passes through the covers; nothing where nothing does. */
    static void writePassThroughs(Assessment assessment, PrintStream out) {
        List<PassedThrough> all = assessment.cover().map(SiteCover::passing).orElse(List.of());
        if (all.isEmpty()) {
            return;
        }
        CommonText.heading("What passes through the covers", out);
        out.println(TextTable.of(CoverAnswers.PASSING, all));
    }

    /** What carries each buried hull. */
    static void writeSupports(Assessment assessment, PrintStream out) {
        CommonText.heading("What carries the buried hulls", out);
        assessment.hulls().forEach(hull -> hull.burial().filter(b -> !b.supports().supports().isEmpty())
                .ifPresent(b -> {
                    out.println("  Hull " + b.id());
                    out.println(TextTable.of(Answers.SUPPORTS, b.supports().supports()));
                }));
        assessment.hulls().forEach(hull -> hull.burial().ifPresent(b -> b.supports().supports().forEach(s -> s.soil()
                .ifPresent(soil -> CommonText.wrapped("Soil: %s, %s, factor of safety %s; %s.".formatted(b.id(),
                        s.name(), TextTable.words(s.bearingFactor(), 2), soil.words()), 2, out)))));
        assessment.hulls().forEach(hull -> hull.burial().map(HullBurial::supports).ifPresent(
                s -> bending(hull.hull().id(), s, out)));
        out.println();
    }

    private static void bending(String hull, HullSupports supports, PrintStream out) {
        if (!(supports.hogging() > 0) && !(supports.sagging() > 0)) {
            return;
        }
        CommonText.wrapped(hull + " bends with " + TextTable.words(Unit.KN.of(supports.hogging()), 0)
                + " kN m over a support and " + TextTable.words(Unit.KN.of(supports.sagging()), 0)
                + " kN m between, and shears with up to "
                + TextTable.words(Unit.KN.of(supports.beam().map(SupportedBeam::greatestShear).orElse(0.0)), 0)
                + " kN" + supports.shell().map(shell -> "; factor of safety of the bare shell "
                + TextTable.words(shell.pressurisedFactor(), 1) + " with the pressure on, "
                + TextTable.words(shell.bendingFactor(), 1) + " with it off").orElse("") + ".", 2, out);
    }
}
