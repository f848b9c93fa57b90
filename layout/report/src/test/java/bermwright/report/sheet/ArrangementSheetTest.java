// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.arrangement.Arrangement;
import bermwright.site.arrangement.ArrangementSearch;
import bermwright.site.arrangement.Figures;
import bermwright.site.arrangement.Judge;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ArrangementSheetTest {
    private static final Pattern LABEL = Pattern.compile("<text x=\"([0-9.]+)\" y=\"([0-9.]+)\"[^>]*>([1-5]): 3\\d w");
    private static final Plan PLAN = PlanFiles.read("{\"bermwright_plan\": 1, \"ground\": {\"elevation_file\": \"g\"}}",
            "p");

    private static Figures figures(double hours, double soil, int warnings) {
        return new Figures(OptionalDouble.of(hours), soil, warnings, 16, 0, OptionalDouble.empty());
    }

    private static String drawn(double... hoursAndSoil) {
        List<Arrangement> all = new ArrayList<>();
        for (int i = 0; i < hoursAndSoil.length; i += 2) {
            all.add(new Arrangement(PLAN, figures(hoursAndSoil[i], hoursAndSoil[i + 1], 36), 1));
        }
        return new ArrangementSheet(new ArrangementSearch.Found(all, new Judge.Verdict(PLAN, List.of(),
                figures(5266, 24_593, 33)), 3, Map.of())).drawing().svg();
    }

    /** Five that lie close together, as those of the demo do, are told apart, and the far plan does not press them. */
    @Test
    void eachHasItsNumberAndNoTwoNumbersLieOnOneAnother() {
        String svg = drawn(2867, 18_748, 2876, 18_692, 2881, 18_679, 2894, 18_600, 2876.5, 18_693);
        Matcher found = LABEL.matcher(svg);
        List<double[]> at = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        while (found.find()) {
            at.add(new double[] {Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))});
            numbers.add(found.group(3));
        }
        assertEquals(List.of("1", "2", "3", "4", "5"), numbers, svg);
        for (int i = 0; i < at.size(); i++) {
            for (int k = 0; k < i; k++) {
                double[] a = at.get(i);
                double[] b = at.get(k);
                assertTrue(Math.abs(a[1] - b[1]) > 11 || Math.abs(a[0] - b[0]) > 60, i + " on " + k);
            }
        }
        assertTrue(Math.abs(at.get(0)[0] - at.get(3)[0]) > 300, "they fill the chart");
        assertTrue(svg.contains("Plan as given: 5,266 h, 24,593 m\u00b3, 33 warnings."), svg);
    }
}
