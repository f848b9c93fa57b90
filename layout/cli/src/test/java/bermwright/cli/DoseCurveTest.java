// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code dose} answers about dose against cover and the particles behind it. */
class DoseCurveTest {
    private static final double ROUNDING = 1e-9;
    /**
     * The composition is folded with straight lines in the logarithm, the dose with smooth ones; and fast nucleons and
     * gammas of the ground, a hundredth under this cover, are not split.
     */
    private static final double JOINED = 0.02;
    private static final double DAYS_IN_YEAR = 365.25;
    private static final double STAY_DAYS = 100;

    @TempDir
    static Path folder;
    private static String plan;
    private static JsonNode all;

    @BeforeAll
    static void asked() throws IOException {
        String text = Run.plan().strip();
        plan = Run.site(folder, text.substring(0, text.length() - 1)
                + ", \"exposure\": { \"stay_days\": 100, \"event\": \"august 1972\" } }").toString();
        all = Run.of("dose", plan, "--curve", "--composition", "--at", "0,33.5,100", "--out",
                folder.resolve("curve.svg").toString(), "--json").json();
    }

    @Test
    void theCurveStandsBesidePublishedFigures() {
        JsonNode points = all.get("curves").get(0).get("cosmic_year");
        assertTrue(points.size() > 20);
        double before = -1;
        for (JsonNode point : points) {
            assertTrue(point.get("areal_density_g_cm2").asDouble() > before);
            before = point.get("areal_density_g_cm2").asDouble();
            assertTrue(point.get("low_mSv").asDouble() < point.get("dose_mSv").asDouble());
            assertTrue(point.get("high_mSv").asDouble() > point.get("dose_mSv").asDouble());
            double up = 0;
            for (JsonNode term : point.get("terms")) {
                up = Math.hypot(up, Math.log(term.get("high_factor").asDouble()));
            }
            assertEquals(point.get("dose_mSv").asDouble() * Math.exp(up), point.get("high_mSv").asDouble(),
                    ROUNDING * point.get("high_mSv").asDouble());
        }
        // A metre and a half of soil: model, sun, density and cover all count, and the sun not for events.
        JsonNode deep = points.get(23);
        assertTrue(deep.get("terms").get(1).get("high_factor").asDouble() > 1.01);
        assertTrue(deep.get("terms").get(2).get("high_factor").asDouble() > 1.01, deep.toString());
        assertTrue(deep.get("terms").get(3).get("high_factor").asDouble() > 1, deep.toString());
        assertEquals(1, all.get("curves").get(0).get("event_whole").get(23).get("terms").get(1).get("high_factor")
                .asDouble());
        assertTrue(all.get("published").size() >= 10);
        for (JsonNode figure : all.get("published")) {
            assertFalse(figure.get("source").asText().isBlank());
        }
    }

    @Test
    void lowAndHighAreMadeOfTheirTerms() {
        JsonNode spread = all.get("hulls").get(0).get("stations").get(0).get("spread");
        for (String source : new String[] {"cosmic", "event"}) {
            JsonNode one = spread.get(source);
            double up = 0;
            double most = 0;
            String greatest = "";
            for (JsonNode term : one.get("terms")) {
                double high = Math.log(term.get("high_factor").asDouble());
                double width = high - Math.log(term.get("low_factor").asDouble());
                up = Math.hypot(up, high);
                greatest = width > most ? term.get("term").asText() : greatest;
                most = Math.max(most, width);
            }
            assertEquals(4, one.get("terms").size());
            assertEquals(one.get("best_mSv").asDouble() * Math.exp(up), one.get("high_mSv").asDouble(), 1e-6);
            assertEquals(greatest, one.get("greatest").asText());
            double sun = one.get("terms").get(1).get("high_factor").asDouble();
            assertTrue(source.equals("event") ? sun == 1 : sun > 1.01, source + " " + sun);
        }
    }

    @Test
    void publishedLimitsStandBesideTheDoses() {
        assertTrue(all.get("published_limits").size() >= 10);
        for (JsonNode limit : all.get("published_limits")) {
            assertTrue(limit.get("limit").asDouble() > 0);
            assertFalse(limit.get("source").asText().isBlank());
        }
        String text = Run.of("dose", plan).out();
        assertTrue(text.contains("Limits of published standards") && text.contains("solar activity"), text);
    }

    @Test
    void theParticlesMakeUpTheDose() {
        for (JsonNode entry : all.get("composition")) {
            JsonNode parts = entry.get("cosmic_year");
            double sum = 0;
            for (String part : new String[] {"fast_neutrons", "slow_neutrons", "protons", "helium", "heavy", "pions",
                "gammas"}) {
                sum += parts.get(part + "_mSv").asDouble();
            }
            assertEquals(parts.get("total_mSv").asDouble(), sum, ROUNDING * sum);
        }
    }

    @Test
    void theParticlesAtAStationMakeUpItsDose() {
        JsonNode station = all.get("hulls").get(0).get("stations").get(0);
        JsonNode parts = all.get("composition").get(0);
        double stay = parts.get("cosmic_year").get("total_mSv").asDouble() / DAYS_IN_YEAR * STAY_DAYS
                + parts.get("event_whole").get("total_mSv").asDouble();
        assertEquals(station.get("covered_mSv").asDouble(), stay, JOINED * stay);
    }

    @Test
    void neutronsTakeOverWithDepth() {
        JsonNode open = all.get("composition").get(all.get("composition").size() - 3);
        JsonNode deep = all.get("composition").get(all.get("composition").size() - 1);
        assertEquals(0, open.get("dome_g_cm2").asDouble(), 0);
        assertEquals(100, deep.get("dome_g_cm2").asDouble(), 0);
        assertTrue(neutrons(open) < 0.2 && neutrons(deep) > 0.4, neutrons(open) + " " + neutrons(deep));
    }

    private static double neutrons(JsonNode entry) {
        JsonNode parts = entry.get("cosmic_year");
        return (parts.get("fast_neutrons_mSv").asDouble() + parts.get("slow_neutrons_mSv").asDouble())
                / parts.get("total_mSv").asDouble();
    }

    @Test
    void theCurveIsDrawn() throws IOException {
        assertEquals(folder.resolve("curve.svg").toString(), all.get("drawings").get(0).asText());
        String svg = Files.readString(folder.resolve("curve.svg"));
        assertTrue(svg.startsWith("<?xml") && svg.contains("published") && svg.contains("areal density"));
        assertFalse(svg.contains("NaN"));
    }

    @Test
    void peopleReadIt() {
        String out = Run.of("dose", plan, "--curve", "--composition").out();
        assertTrue(out.contains("a year") && out.contains("Reitz") && out.contains("neutrons > 20 MeV"), out);
        assertFalse(out.matches("(?s).*(NaN|Infinity|null|Optional|%[.\\d]*[sdf]).*"), out);
        assertFalse(Run.of("dose", plan).out().contains("Reitz"));
    }

    @Test
    void optionsThatCannotBeFollowedAreRefused() {
        for (String[] wrong : new String[][] {{"--composition", "--at", "-1"}, {"--composition", "--at", "2000"},
            {"--composition", "--at", "NaN"}, {"--out", "x.svg"}, {"--curve", "--out", "x.txt"},
            {"--curve", "--out", folder.resolve("nowhere/x.svg").toString()}}) {
            String[] arguments = new String[wrong.length + 2];
            arguments[0] = "dose";
            arguments[1] = plan;
            System.arraycopy(wrong, 0, arguments, 2, wrong.length);
            Run run = Run.of(arguments);
            assertEquals(2, run.code(), String.join(" ", wrong) + run.err());
        }
        assertFalse(Files.exists(Path.of("x.svg")));
    }
}
