// SPDX-License-Identifier: Apache-2.0
package bermwright.site.hazard;

import bermwright.finding.CoverRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.Verdict;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What covers do not keep off besides radiation, whose limits have findings of their own; hulls as a whole. */
final class HazardFindings {
    private HazardFindings() {
    }

    static List<Finding> of(Plan plan, List<JudgedCover> judged, List<HullHazards> figures) {
        List<Finding> findings = new ArrayList<>();
        for (HullHazards hull : figures) {
            judged.stream().filter(l -> l.hull().equals(hull.hull()) && l.station().isEmpty()
                    && l.verdict() != Verdict.MET).forEach(l -> add(findings, plan, l, hull));
        }
        return findings;
    }

    private static void add(List<Finding> findings, Plan plan, JudgedCover line, HullHazards hull) {
        boolean isOpen = line.verdict() == Verdict.NOT_JUDGED;
        boolean peopleStay = plan.hull(line.hull()).filter(h -> !h.stations().isEmpty()).isPresent();
        switch (line.hazard()) {
            case METEOROIDS -> {
                if (!isOpen || peopleStay) {
                    findings.add(made(plan, CoverRule.COVER_METEOROIDS, Level.WARN, line, isOpen
                            ? "Meteoroids are not judged: " + line.words() + "."
                            : text("The chance that a meteoroid perforates the hull in the stay is %.2g; %.2g is"
                                    + " allowed. %.0f %% of it comes through bare skin.", line.measure().found(),
                                    line.measure().allowed(), 100 * hull.meteoroids().byBare())));
                }
            }
            case THROWN_SOIL -> {
                if (!isOpen) {
                    findings.add(made(plan, CoverRule.COVER_THROWN_SOIL, Level.WARN, line, text("A pad lies %.0f m"
                            + " away: grains of 1 mm at 2 km/s perforate %s.", hull.thrown().distance(),
                            line.measure().unit().equals("mm") ? "the bare skin" : "the soil over it")));
                }
            }
            case HEAT -> {
                if (!isOpen) {
                    findings.add(made(plan, CoverRule.COVER_HEAT, Level.NOTE, line, text("The lunar day is felt under"
                            + " the cover: %.1f K either way at the thinnest place.", hull.heat().swing())));
                }
            }
            case MOONQUAKE -> findings.add(made(plan, CoverRule.COVER_QUAKE, Level.WARN, line, text("While the ground"
                    + " shakes with %.2f m/s2 the mound has a factor of safety of %.2f; it slides from %.2f m/s2.",
                    plan.exposure().hazards().quakeAcceleration(), line.measure().found(), hull.quake().yield())));
            case RADIATION -> {
            }
        }
    }

    private static Finding made(Plan plan, CoverRule rule, Level level, JudgedCover line, String words) {
        JudgedCover.Measure m = line.measure();
        Figures figures = Double.isNaN(m.found()) ? Figures.NONE : Double.isNaN(m.allowed())
                ? Figures.measured(m.found(), m.unit()) : Figures.of(m.found(), m.allowed(), m.unit());
        return Finding.of(rule, level, line.hull(), figures, words).at(plan.hull(line.hull()).orElseThrow()
                .baseCentre());
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
