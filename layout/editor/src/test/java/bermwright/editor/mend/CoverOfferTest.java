// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.shielding.cover.CoverThickness;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.sizing.SizedCover;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CoverOfferTest {
    private static final double EXACT = 1e-9;
    private final Plan plan = PlanFiles.read(Path.of(System.getProperty("bermwright.root", "../.."),
            "demo-site/plan.json"));

    private SizedCover sized(boolean isMet) {
        return new SizedCover(isMet, Map.of("alder", new CoverThickness(3.101, 2.5, 2.2, 2.3)), plan, 1234,
                OptionalDouble.empty(), List.of(), List.of(), 0, OptionalDouble.empty(), List.of(), List.of(),
                OptionalDouble.empty(), 1, List.of());
    }

    @Test
    void theCoversThatWereFoundAreOneStepRoundedUp() {
        Offer offer = CoverOffer.of(plan, sized(true)).orElseThrow();
        assertEquals("Cover alder 3.11 m at the crown (1234 m\u00b3 of soil)", offer.words());
        CoverPlan cover = offer.edit().applied(plan).hull("alder").orElseThrow().cover().orElseThrow();
        assertEquals(3.11, cover.crownThickness(), EXACT);
        assertEquals(2.5, cover.flankThickness(), EXACT);
        assertEquals(2.2, cover.baseThickness(), EXACT);
        assertEquals(2.3, cover.farThickness(), EXACT);
        assertEquals(plan.hull("birch"), offer.edit().applied(plan).hull("birch"));
    }

    @Test
    void whereLimitsCannotBeMetNothingIsOffered() {
        assertTrue(CoverOffer.of(plan, sized(false)).isEmpty());
    }
}
