// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.survey.SurveyLimits;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** What a survey asks of a place. */
final class SurveyOptions {
    @Option(names = "--headings", paramLabel = "N", defaultValue = "36", description = "Headings tried, evenly from"
            + " grid north on; 36.")
    private int headings;
    @Option(names = "--cut", paramLabel = "M", defaultValue = "0.5", description = "Most soil cut to level a bed, for"
            + " each square metre of it, metres; 0.5.")
    private double cut;
    @Option(names = "--soil-reach", paramLabel = "M", defaultValue = "200", description = "How far soil may be hauled,"
            + " metres; 200.")
    private double soilReach;
    @Option(names = "--borrow", paramLabel = "DEPTH,YIELD,GRADE", split = ",", description = "Depth to which soil is"
            + " taken, metres; share of it that can be used; steepest ground it is taken from, degrees; 0.5,0.9,15.")
    private List<Double> borrow = List.of(0.5, 0.9, 15.0);
    @Option(names = "--relay", paramLabel = "AZIMUTH,ELEVATION[,EYE]", description = "Something that has to be seen,"
            + " degrees from grid north and over the level, from an eye over the ground, 2 m; may be given again.")
    private List<String> relays = List.of();
    @Option(names = "--light", paramLabel = "FROM,TO,HOURS", description = "Hours of sunlight wanted between two days,"
            + " such as 2030-01-01,2031-01-01,4000; may be given again.")
    private List<String> lights = List.of();
    @Option(names = "--reach", paramLabel = "M", defaultValue = "5000", description = "How far ground is looked at for"
            + " relay and light, metres; 5000.")
    private double reach;
    @Option(names = "--within", paramLabel = "WEST,SOUTH,EAST,NORTH", split = ",", description = "Part of the file that"
            + " is surveyed, projected metres; all of it.")
    private List<Double> within = List.of();

    List<Double> within() {
        if (!within.isEmpty() && within.size() != 4) {
            throw Options.bad("--within", within.toString(), "four numbers: west, south, east, north");
        }
        return within;
    }

    SurveyLimits limits() {
        if (borrow.size() != 3) {
            throw Options.bad("--borrow", borrow.toString(), "three numbers with commas: depth, yield, grade");
        }
        List<SurveyLimits.Relay> seen = new ArrayList<>();
        for (String relay : relays) {
            seen.add(Options.checked("--relay", () -> relay(relay)));
        }
        List<SurveyLimits.Sunlight> sun = new ArrayList<>();
        for (String light : lights) {
            sun.add(Options.checked("--light", () -> light(light)));
        }
        return Options.checked("--headings, --cut, --soil-reach, --borrow, --reach", () -> new SurveyLimits(
                headings, cut, soilReach, borrow.get(0), borrow.get(1), Math.tan(Math.toRadians(borrow.get(2))), seen,
                sun, reach));
    }

    private static SurveyLimits.Relay relay(String text) {
        String[] parts = text.split(",");
        if (parts.length < 2 || parts.length > 3) {
            throw Options.bad("--relay", text, "azimuth and elevation in degrees, and perhaps an eye in metres");
        }
        return new SurveyLimits.Relay(Math.toRadians(number("--relay", parts[0])),
                Math.toRadians(number("--relay", parts[1])), parts.length == 3 ? number("--relay", parts[2]) : 2);
    }

    private static SurveyLimits.Sunlight light(String text) {
        String[] parts = text.split(",");
        if (parts.length != 3) {
            throw Options.bad("--light", text, "two days and hours, such as 2030-01-01,2031-01-01,4000");
        }
        return new SurveyLimits.Sunlight(Options.day("--light", parts[0]).atStartOfDay().toInstant(ZoneOffset.UTC),
                Options.day("--light", parts[1]).atStartOfDay().toInstant(ZoneOffset.UTC), number("--light", parts[2]));
    }

    private static double number(String option, String text) {
        try {
            return Double.parseDouble(text.trim());
        } catch (NumberFormatException e) {
            throw Options.unusable(option, text + " is no number", "a number", e);
        }
    }
}
