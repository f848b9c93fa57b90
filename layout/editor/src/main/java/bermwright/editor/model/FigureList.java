// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.finding.Finding;
import bermwright.site.answer.AnswerTable;
import bermwright.site.answer.Answers;
import bermwright.site.answer.DoseAnswers;
import bermwright.site.answer.LoweringAnswers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import java.util.ArrayList;
import java.util.List;

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
        assessment.dose().ifPresent(dose -> list.all("outside", DoseAnswers.OPEN_GROUND, dose));
        return List.copyOf(list.figures);
    }

    private void add(String subject, String name, String unit, double value) {
        figures.add(new Figure(subject, name, unit, value));
    }

    private void hull(HullAssessment hull) {
        String id = hull.hull().id();
        hull.lying().ifPresent(lying -> all(id, LoweringAnswers.LYING, lying));
        hull.laydown().flatMap(l -> l.lowering()).ifPresent(result -> {
            all(id, Answers.LOWERING, result);
            all(id, LoweringAnswers.FACTORS, result.factors());
        });
        hull.cover().ifPresent(cover -> all(id, Answers.COVER, cover));
        hull.stations().forEach(s -> all(s.name(), Answers.STATIONS, s));
    }

    private <T> void all(String subject, AnswerTable<T> table, T of) {
        table.figures().forEach(f -> f.unit().ifPresent(unit -> add(subject, f.heading(),
                unit.symbol().isEmpty() ? "1" : unit.symbol(), f.read(of))));
    }
}
