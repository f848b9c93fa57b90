// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.finding.Finding;
import bermwright.lowering.chain.Chain;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.thrust.ThrusterResult;
import bermwright.report.sheet.LoweringSheets;
import bermwright.report.sheet.Marks;
import bermwright.report.sheet.Words;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What was found about one hull, in plain sentences with the figures that govern.
 *
 * @param assessment the assessment
 * @param of         the hull's entry in it
 */
public record HullWords(Assessment assessment, HullAssessment of) {
    /**
     * The sentences.
     *
     * @return one a line
     */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        Hull hull = of.hull();
        lines.add(Words.said(hull.length(), "m") + " long, " + Words.said(hull.diameter(), "m") + " across, "
                + Words.said(hull.mass() / 1000, "t") + "; it " + comes(hull) + ".");
        long refuse = about(Finding.Level.REFUSE);
        long warn = about(Finding.Level.WARN);
        lines.add(refuse == 0 && warn == 0 ? "Nothing is refused or warned of." : refuse + " refused, " + warn
                + " to be decided.");
        of.lying().ifPresentOrElse(pose -> lines.add("It lies with its base at east "
                + Words.fixed(pose.axisStart().x(), 1) + " m, north " + Words.fixed(pose.axisStart().y(), 1)
                + " m, axis height " + Words.fixed(pose.axisStart().z(), 2) + " m, on ground that slopes "
                + Words.degrees(Math.abs(pose.slopeAlong())) + (pose.slopeAlong() < 0 ? "° up" : "° down")
                + " along and " + Words.degrees(Math.abs(pose.slopeAcross())) + "° down to the "
                + (pose.slopeAcross() < 0 ? "right." : "left.")),
                () -> lines.add(hull.arrival() == Hull.Arrival.STAYS_UPRIGHT
                ? "It stays upright." : "How it lies is not known, for its ground is missing."));
        of.laydown().flatMap(l -> l.lowering()).ifPresentOrElse(result -> lowering(result, lines), () -> {
            Optional<ThrusterResult> thrusters = of.laydown().flatMap(l -> l.thrusters());
            thrusters.ifPresent(t -> lines.add("Thrusters push it over with at most " + Words.said(
                    t.greatestPush() / 1000, "kN") + " and brake with at most " + Words.said(t.greatestBrake() / 1000,
                    "kN") + ", at " + Words.degrees(t.atTilt()) + "° from standing; thrust over what is required "
                    + Words.fixed(t.thrustMargin(), 2) + ", " + Words.fixed(t.oneOutMargin(), 2)
                    + " with one out; propellant " + Words.said(t.propellant(), "kg") + "."));
            if (thrusters.isEmpty() && hull.arrival() == Hull.Arrival.LOWERED) {
                lines.add("Forces of lowering by lines are not worked out for this hull.");
            }
        });
        of.cover().ifPresentOrElse(cover -> lines.add(cover(cover)), () -> lines.add("No cover was worked out."));
        if (!of.stations().isEmpty()) {
            lines.add(dose());
        }
        return lines;
    }

    private static String comes(Hull hull) {
        Optional<LoweringGear> gear = hull.lowering();
        return switch (hull.arrival()) {
            case LANDS_LYING -> "lands lying";
            case STAYS_UPRIGHT -> "stays upright";
            case LOWERED -> "is laid down towards azimuth " + Words.fixed(hull.layDownAzimuth().degrees(), 1) + "°"
                    + gear.map(g -> " by " + g.means().word()).orElse("; no gear is planned");
        };
    }

    private long about(Finding.Level level) {
        String id = of.hull().id();
        return assessment.findings().stream().filter(f -> f.level() == level
                && (f.subject().equals(id) || f.subject().startsWith(id + "/"))).count();
    }

    private static void lowering(LoweringResult result, List<String> lines) {
        lines.add("One line pulls at most " + Words.said(result.greatestLineTension() / 1000, "kN") + ", at "
                + Words.degrees(result.atTilt()) + "° from standing; balance is at "
                + Words.degrees(result.balanceTilt()) + "° and the lowering lines hold alone from "
                + Words.degrees(result.handOverTilt()) + "°. Governing part: " + result.governingPart()
                + factor(result.chain()) + "." + Marks.of(result.notes()));
        lines.add(LoweringSheets.balances(result));
    }

    /** The factor of safety of the governing part, with the required one; nothing where no part could be judged. */
    private static String factor(Chain chain) {
        return chain.governing().stream().findFirst().filter(row -> row.factor().isPresent())
                .map(row -> "; factor of safety " + Words.fixed(row.factor().getAsDouble(), 2) + ", "
                        + Words.fixed(row.required(), 2) + " required").orElse("");
    }

    private String cover(HullCover cover) {
        if (Double.isNaN(cover.least().depth())) {
            return "Nothing of it is to be covered.";
        }
        return "Least cover " + Words.fixed(cover.least().depth(), 2) + " m, where "
                + Words.fixed(cover.least().wanted(), 2)
                + " m is required, " + Words.fixed(cover.least().along(), 1) + " m from the base plane and "
                + Words.fixed(Math.toDegrees(cover.least().around()), 0) + "° around from the crown; "
                + Words.fixed(100 * cover.shareBelowWanted(), 1) + " % of the skin to be covered lies shallower"
                + " than required. Soil placed for it: " + Words.fixed(cover.volume(), 0) + " m³, "
                + Words.tonnes(cover.placedMass()) + " t.";
    }

    private String dose() {
        String mark = assessment.dose().map(d -> Marks.of(d.models())).orElse("");
        return "Dose alone at each station, best (low to high): " + of.stations().stream().map(HullWords::station)
                .collect(Collectors.joining("; ")) + "." + mark;
    }

    private static String station(StationDose s) {
        return s.station() + " " + Words.said(1000 * s.covered().best(), "mSv") + " ("
                + Words.said(1000 * s.covered().low(), "1") + " to " + Words.said(1000 * s.covered().high(), "1")
                + "), " + Words.fixed(100 * s.reduction(), 0) + " % less than upright and bare";
    }
}
