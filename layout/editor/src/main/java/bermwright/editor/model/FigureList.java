// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.finding.Finding;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.site.answer.AnswerTable;
import bermwright.site.answer.Answers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
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
            list.all("plan", Answers.EARTHWORKS, e);
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
        hull.cover().ifPresent(cover -> all(id, Answers.COVER, cover));
        hull.stations().forEach(s -> all(s.hull() + "/" + s.station(), Answers.STATIONS, s));
    }

    private void lying(String id, LyingPose lying) {
        add(id, "slope along, lying", "\u00b0", Math.toDegrees(lying.slopeAlong()));
        add(id, "slope across, lying", "\u00b0", Math.toDegrees(lying.slopeAcross()));
    }

    private void lowering(String id, LoweringResult r) {
        all(id, Answers.LOWERING, r);
        add(id, "factor, line", r.factors().line());
        add(id, "factor, winch", r.factors().winch());
        add(id, "factor, pole", r.factors().pole());
        add(id, "factor, anchor", r.factors().anchor());
        add(id, "factor, pivot hold", r.factors().pivotHold());
    }

    /** The figures of a table, as every answer shows them. */
    private <T> void all(String subject, AnswerTable<T> table, T of) {
        table.figures().forEach(f -> f.unit().ifPresent(unit -> add(subject, f.heading(),
                unit.symbol().isEmpty() ? "1" : unit.symbol(), f.read(of))));
    }
}
