// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.report.sheet.Words;
import bermwright.site.answer.AnswerTable;
import bermwright.site.answer.Answers;
import bermwright.site.answer.DoseAnswers;
import bermwright.site.answer.Figure;
import bermwright.site.assessment.Assessment;
import bermwright.site.egress.WaysOut;
import bermwright.site.exposure.StationDose;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Haul;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.plan.ExposurePlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a front page says of the whole site: the crew's doses against their limits, shelter, soil and time.
 *
 * @param assessment the assessment
 */
public record SiteWords(Assessment assessment) {
    /**
     * Of people.
     *
     * @return a sentence for each limit, and one of shelter
     */
    public List<String> people() {
        List<String> lines = new ArrayList<>();
        assessment.dose().ifPresent(dose -> {
            DoseAnswers.HeldLine.of(dose.limits()).stream().filter(l -> l.held().map(h -> h.isCrew()).orElse(true))
                    .forEach(l -> lines.add("Limit on " + DoseAnswers.limitWords(l.judged().limit()) + ": "
                    + said(DoseAnswers.LIMIT_LINES, "limit_mSv", l) + " mSv; the crew gets "
                    + (l.judged().limit().over() == ExposurePlan.Over.CAREER ? "by this stay alone " : "")
                    + l.held().map(h -> said(DoseAnswers.LIMIT_LINES, "best_mSv", l) + " mSv ("
                    + said(DoseAnswers.LIMIT_LINES, "low_mSv", l) + " to "
                    + said(DoseAnswers.LIMIT_LINES, "high_mSv", l) + ")").orElse("what is not known") + ": "
                    + said(DoseAnswers.LIMIT_LINES, "verdict", l) + "."));
            List<String> shelters = dose.stations().stream().filter(StationDose::stormShelter)
                    .map(s -> s.name()).toList();
            lines.add(shelters.isEmpty() ? "No station is a storm shelter." : "Storm shelter: "
                    + String.join(", ", shelters) + assessment.waysOut().shelters().stream()
                    .max(Comparator.comparingDouble(WaysOut.WayToShelter::seconds)).map(w -> "; the longest way to it, "
                    + "from " + w.from() + ", takes " + Words.fixed(w.seconds() / 60, 1) + " min, "
                    + Words.fixed(w.outside(), 0) + " m of it outside").orElse("") + ".");
        });
        return lines;
    }

    /**
     * Of soil and time.
     *
     * @return sentences on volumes, on where the soil comes from, and on the order of work
     */
    public List<String> work() {
        List<String> lines = new ArrayList<>();
        assessment.earthworks().ifPresent(soil -> {
            lines.add("Soil: " + figures(soil, "placed_m3", "bank_m3", "borrow_left_m3", "shortage_m3",
                    "machine_hours") + ".");
            Map<String, List<Haul>> from = soil.hauls().stream()
                    .filter(h -> h.kind() != SoilNeed.Kind.RAMP_REMOVED).collect(Collectors.groupingBy(Haul::from,
                    LinkedHashMap::new, Collectors.toList()));
            from.forEach((pit, hauls) -> lines.add("From " + pit + ": " + Words.fixed(hauls.stream()
                    .mapToDouble(Haul::bank).sum(), 0) + " m³ bank to " + hauls.stream().map(Haul::to).distinct()
                    .collect(Collectors.joining(", ")) + ", at most " + Words.fixed(hauls.stream()
                    .mapToDouble(Haul::distance).max().orElse(0), 0) + " m one way."));
        });
        assessment.stages().filter(w -> !w.stages().isEmpty()).ifPresent(work ->
                lines.add("The work takes " + Words.fixed(work.days(), 1) + " days; first "
                + work.stages().get(0).step().id() + "; critical path: " + String.join(", ", work.criticalChain())
                + "."));
        return lines;
    }

    private static String figures(EarthworksResult soil, String... keys) {
        return Answers.EARTHWORKS.only(keys).figures().stream().filter(f -> !f.text(soil).isEmpty())
                .map(f -> f.heading() + " " + f.text(soil) + " " + f.unit().orElseThrow().symbol())
                .collect(Collectors.joining("; "));
    }

    private static <T> String said(AnswerTable<T> table, String key, T of) {
        return table.figures().stream().filter(f -> f.key().equals(key)).findFirst().map((Figure<T> f) -> f.text(of))
                .orElseThrow();
    }
}
