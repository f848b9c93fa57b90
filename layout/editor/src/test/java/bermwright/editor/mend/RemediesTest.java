// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.edit.Part;
import bermwright.finding.DoseRule;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.PairingRule;
import bermwright.foundation.Progress;
import bermwright.site.assessment.LiveSite;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.planfile.PlanValues;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RemediesTest {
    @TempDir
    private Path folder;
    private Plan plan;
    private ElevationGrid grid;

    @BeforeEach
    void read() {
        Path file = SampleSite.write(folder);
        plan = PlanFiles.read(file);
        grid = SiteGround.read(plan, file, Progress.NONE).grid();
    }

    private List<Finding> lowering(Plan of) {
        return LiveSite.laydownAsPlanned(of, of.hull("A").orElseThrow(), grid).findings();
    }

    private static Stream<Finding> weak(List<Finding> findings, String part) {
        return findings.stream().filter(f -> f.rule() == LoweringRule.LOWERING_FACTOR && f.parts().contains(part));
    }

    @Test
    void aWeakWinchIsOfferedTheLeastRatingThatDoesAndTheEditMendsIt() {
        plan = PlanValues.with(plan, "hulls[0].lowering.lines.winch.rating_each_kN", "30");
        Finding finding = weak(lowering(plan), "lowering winch").findFirst().orElseThrow();
        List<Offer> offers = Remedies.of(plan, grid, Optional.empty(), finding, Progress.NONE);
        assertEquals(1, offers.size());
        assertTrue(offers.get(0).words().matches("Take winches rated for \\d+ kN"), offers.get(0).words());
        assertTrue(offers.get(0).isTried());
        assertEquals(0, weak(lowering(offers.get(0).edit().applied(plan)), "lowering winch").count());
        double offered = Double.parseDouble(offers.get(0).words().replaceAll("\\D", ""));
        Plan less = PlanValues.with(plan, "hulls[0].lowering.lines.winch.rating_each_kN", "" + 0.9 * offered);
        assertTrue(weak(lowering(less), "lowering winch").count() > 0, "a tenth less does not do");
    }

    @Test
    void aLightBallastIsOfferedTheMassThatHolds() {
        plan = PlanValues.with(plan, "hulls[0].lowering.stays[0].anchor.mass_t", "1");
        Finding finding = weak(lowering(plan), "anchor of a stay").findFirst().orElseThrow();
        List<Offer> offers = Remedies.of(plan, grid, Optional.empty(), finding, Progress.NONE);
        assertTrue(offers.get(0).words().matches("Load the stay anchor with [0-9.]+ t"), offers.get(0).words());
        assertEquals(0, weak(lowering(offers.get(0).edit().applied(plan)), "anchor of a stay").count());
    }

    @Test
    void aHullInAKeepOutIsMovedOrTurnedOutOfIt() {
        Plan crowded = PlanValues.with(plan, "keep_outs[0].area", "[[150,205],[170,205],[170,222],[150,222]]");
        Finding finding = LiveSite.of(crowded, Optional.of(grid), Map.of()).findings().stream()
                .filter(f -> f.rule() == PairingRule.KEEP_OUT && f.level() == Finding.Level.REFUSE).findFirst()
                .orElseThrow();
        List<Offer> offers = Remedies.of(crowded, grid, Optional.empty(), finding, Progress.NONE);
        assertFalse(offers.isEmpty());
        for (Offer offer : offers) {
            List<Finding> after = LiveSite.of(offer.edit().applied(crowded), Optional.of(grid), Map.of()).findings();
            assertTrue(after.stream().noneMatch(f -> f.id().equals(finding.id())), offer.words());
        }
    }

    @Test
    void everyPathOfTheTableLeadsToAKey() {
        Map<String, List<String>> paths = new java.util.HashMap<>(MendingField.paths());
        List<String> own = paths.remove("own");
        paths.forEach((root, all) -> all.forEach(path -> assertTrue(PlanValues.key(root + "."
                + path.replace(".east_m", "")).isPresent(), root + "." + path)));
        for (String path : own) {
            assertTrue(Stream.of(Part.Kind.values()).anyMatch(kind -> PlanValues.key(kind.key() + "[0]." + path)
                    .isPresent()), path);
        }
    }

    @Test
    void aDoseOverItsLimitOpensTheThicknessOfTheCover() {
        Finding finding = Finding.of(DoseRule.DOSE_LIMIT, Finding.Level.REFUSE, "B/bunks", Finding.Figures.NONE, "x");
        assertEquals(Optional.of(new MendingField(Part.hull("B"), "hulls[1].cover.thickness_m")),
                MendingField.of(plan, finding));
        Finding outside = Finding.of(DoseRule.STATION_OUTSIDE_HULL, Finding.Level.REFUSE, "B/bench",
                Finding.Figures.NONE, "x");
        assertEquals("hulls[1].stations[1].along_m", MendingField.of(plan, outside).orElseThrow().path());
    }
}
