// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A cover that makes more neutrons than it stops particles is said to be worse than a thinner one. */
class ThinCoverTest {
    private static final String RULE = "dose-thinner-is-better";
    /** What has to be won before it is said, as a share of the dose. */
    private static final double MARGIN = 0.03;
    private static final Pattern SHARE = Pattern.compile("under (\\d+) % of its thickness");
    private static final String MAXIMUM = "\"stay_days\": 180, \"modulation_W\": 180";

    @TempDir
    Path folder;

    private JsonNode dose(String thickness, String exposure) throws IOException {
        return covered("\"cover\": { \"thickness_m\": " + thickness
                + ", \"base_end\": \"covered\", \"far_end\": \"covered\" }", exposure);
    }

    private JsonNode covered(String cover, String exposure) throws IOException {
        String plan = Run.plan().strip();
        String thin = plan.replace("\"cover\": { \"thickness_m\": 2.5 }", cover);
        assertFalse(thin.equals(plan), "the plan of the tests no longer has the cover that is thinned here");
        String with = thin.substring(0, thin.length() - 1) + ", \"exposure\": { " + exposure + " } }";
        return Run.of("dose", Run.site(folder, with).toString(), "--json").json();
    }

    private static Optional<JsonNode> finding(JsonNode answer) {
        return StreamSupport.stream(answer.get("findings").spliterator(), false)
                .filter(f -> f.get("rule").asText().equals(RULE)).findFirst();
    }

    private void table(String rows) throws IOException {
        Files.writeString(folder.resolve("handed-over.csv"), """
                # per: day
                # open_ground_return_mSv: 0.01
                # skin_equivalence: 1
                # source: made up for this test
                areal_density_g_cm2,isotropic_dose_mSv,low_mSv,high_mSv
                """ + rows);
    }

    private static double cosmic(JsonNode answer) {
        JsonNode station = answer.get("hulls").get(0).get("stations").get(0);
        return station.get("cosmic_mSv").asDouble() + station.get("ground_return_mSv").asDouble();
    }

    /** At a strong maximum few slow particles come that thin soil could stop, and fast ones make neutrons in it. */
    @Test
    void roomsUnderTensOfGramsAreWorseAtAStrongMaximumThanUnderLess() throws IOException {
        JsonNode thin = dose("0.45", MAXIMUM);
        JsonNode found = finding(thin).orElseThrow();
        assertEquals("warn", found.get("level").asText());
        assertEquals("elm/bunks", found.get("subject").asText());
        assertTrue(found.get("limit").asDouble() < (1 - MARGIN) * found.get("measured").asDouble());
        assertFalse(found.get("text").asText().contains("event"));
        // What the finding names, planned, is as good as it says, and the planned one as bad.
        Matcher share = SHARE.matcher(found.get("text").asText());
        boolean isBare = found.get("text").asText().contains("without any cover");
        assertTrue(isBare || share.find(), found.toString());
        double thinner = cosmic(isBare ? covered("\"x_cover\": \"none\"", MAXIMUM)
                : dose(Double.toString(0.45 * Integer.parseInt(share.group(1)) / 100), MAXIMUM));
        assertEquals(thinner, found.get("limit").asDouble(), MARGIN * thinner);
        assertEquals(cosmic(thin), found.get("measured").asDouble(), MARGIN * cosmic(thin));
        assertTrue(thinner < (1 - MARGIN) * cosmic(thin));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.5", "2.5"})
    void coversBeyondTheRiseAreNot(String thickness) throws IOException {
        assertTrue(finding(dose(thickness, MAXIMUM)).isEmpty());
    }

    /** Under a mound slanted rays take the rise away at solar minimum: the dose only falls, slowly. */
    @Test
    void atMinimumTheDoseUnderAMoundOnlyFalls() throws IOException {
        double last = Double.POSITIVE_INFINITY;
        for (String thickness : new String[] {"0.02", "0.2", "0.45", "0.8"}) {
            JsonNode answer = dose(thickness, "\"stay_days\": 180");
            assertTrue(finding(answer).isEmpty());
            assertTrue(cosmic(answer) < last);
            last = cosmic(answer);
        }
    }

    @Test
    void anEventHidesItAndThatIsSaid() throws IOException {
        JsonNode found = finding(dose("0.45", MAXIMUM + ", \"event\": \"august 1972\"")).orElseThrow();
        assertTrue(found.get("text").asText().contains("The event hides it"), found.get("text").asText());
    }

    @Test
    void aHandedOverResponseThatRisesIsTakenAtItsWord() throws IOException {
        table("0,1,0.8,1.2\n30,0.9,0.7,1.1\n100,3,2,4\n200,3.1,2,4\n400,1.5,1,2\n1500,0.01,0.005,0.02\n");
        JsonNode found = finding(dose("1.0", "\"stay_days\": 180, \"response\": \"handed-over.csv\"")).orElseThrow();
        assertTrue(found.get("limit").asDouble() < 0.8 * found.get("measured").asDouble());
    }

    @Test
    void aHandedOverResponseThatOnlyFallsNeverIs() throws IOException {
        table("0,1,0.8,1.2\n30,0.9,0.7,1.1\n100,0.6,0.4,0.8\n200,0.4,0.3,0.5\n1500,0.01,0.005,0.02\n");
        for (String thickness : new String[] {"0.2", "0.45", "1.0"}) {
            assertTrue(finding(dose(thickness, "\"stay_days\": 180, \"response\": \"handed-over.csv\"")).isEmpty());
        }
    }
}
