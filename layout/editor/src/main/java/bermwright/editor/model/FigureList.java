// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.finding.Finding;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.StationDose;
import bermwright.site.pose.LyingPose;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Every figure of an assessment in the units people use, in the order in which they are read. */
public final class FigureList {
    private final List<Figure> figures = new ArrayList<>();

    private FigureList() {
    }

    /**
     * The figures of an assessment.
     *
     * @param assessment the assessment
     * @return the figures
     */
    public static List<Figure> of(Assessment assessment) {
        FigureList list = new FigureList();
        for (Finding.Level level : Finding.Level.values()) {
            list.add("plan", "findings to " + level.word(), "1",
                    assessment.findings().stream().filter(f -> f.level() == level).count());
        }
        assessment.hulls().forEach(list::hull);
        assessment.cover().ifPresent(cover -> list.add("plan", "soil placed in all", "m\u00b3", cover.volume()));
        assessment.earthworks().ifPresent(e -> {
            list.add("plan", "soil before digging", "m\u00b3", e.bank());
            list.add("plan", "soil in the haulers", "m\u00b3", e.loose());
            list.add("plan", "mass of soil", "t", e.mass() / 1e3);
            list.add("plan", "machine hours", "h", e.machineHours().orElse(Double.NaN));
            list.add("plan", "soil left in borrow grounds", "m\u00b3", e.borrowLeft());
            list.add("plan", "soil short", "m\u00b3", e.shortage());
            e.hauls().forEach(h -> list.add(h.from() + " to " + h.to(), "way", "m", h.distance()));
        });
        assessment.dose().ifPresent(dose -> {
            list.add("outside", "cosmic rays over the stay", "mSv", dose.outside().cosmic().best() * 1e3);
            list.add("outside", "event", "mSv", dose.outside().event().best() * 1e3);
        });
        return List.copyOf(list.figures);
    }

    private void add(String subject, String name, String unit, double value) {
        figures.add(new Figure(subject, name, unit, value));
    }

    private void add(String subject, String name, OptionalDouble factor) {
        factor.ifPresent(f -> add(subject, name, "1", f));
    }

    private void hull(HullAssessment hull) {
        String id = hull.hull().id();
        hull.lying().ifPresent(lying -> lying(id, lying));
        hull.laydown().flatMap(l -> l.lowering()).ifPresent(result -> lowering(id, result));
        hull.cover().ifPresent(cover -> cover(id, cover));
        hull.stations().forEach(this::station);
    }

    private void lying(String id, LyingPose lying) {
        add(id, "slope along, lying", "\u00b0", Math.toDegrees(lying.slopeAlong()));
        add(id, "slope across, lying", "\u00b0", Math.toDegrees(lying.slopeAcross()));
    }

    private void lowering(String id, LoweringResult r) {
        add(id, "balance tilt", "\u00b0", Math.toDegrees(r.balanceTilt()));
        add(id, "hand-over tilt", "\u00b0", Math.toDegrees(r.handOverTilt()));
        add(id, "greatest pull-over", "kN", r.greatestPullOver() / 1e3);
        add(id, "greatest tension of a line", "kN", r.greatestLineTension() / 1e3);
        add(id, "line angle at rest", "\u00b0", Math.toDegrees(r.lineAngleAtRest()));
        add(id, "factor, line", r.factors().line());
        add(id, "factor, winch", r.factors().winch());
        add(id, "factor, pole", r.factors().pole());
        add(id, "factor, anchor", r.factors().anchor());
        add(id, "factor, pivot hold", r.factors().pivotHold());
    }

    private void cover(String id, HullCover cover) {
        add(id, "soil placed", "m\u00b3", cover.volume());
        add(id, "mass of soil placed", "t", cover.placedMass() / 1e3);
        add(id, "least depth of cover", "m", cover.least().depth());
        add(id, "least areal density", "g/cm\u00b2", cover.leastArealDensity() / 10);
        add(id, "skin below required depth", "%", 100 * cover.shareBelowWanted());
    }

    private void station(StationDose s) {
        String subject = s.hull() + "/" + s.station();
        add(subject, "dose upright, bare", "mSv", s.upright() * 1e3);
        add(subject, "dose covered, best", "mSv", s.covered().best() * 1e3);
        add(subject, "dose covered, low (16th percentile)", "mSv", s.covered().low() * 1e3);
        add(subject, "dose covered, high (84th percentile)", "mSv", s.covered().high() * 1e3);
        add(subject, "cosmic rays from the sky", "mSv", s.parts().cosmic() * 1e3);
        add(subject, "event from the sky", "mSv", s.parts().event() * 1e3);
        add(subject, "ground return", "mSv", s.parts().groundReturn() * 1e3);
        add(subject, "less than upright", "%", 100 * s.reduction());
        add(subject, "thinnest way out", "g/cm\u00b2", s.seen().leastArealDensity() / 10);
        add(subject, "half the sky below", "g/cm\u00b2", s.seen().medianArealDensity() / 10);
    }
}
