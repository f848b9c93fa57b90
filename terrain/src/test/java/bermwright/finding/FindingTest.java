// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.foundation.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FindingTest {
    private static final Finding NEAR = Finding.of(PairingRule.HULL_SPACING, Level.REFUSE, "A",
            Figures.of(3, 8, "m"), "Too near.");

    @Test
    void aSourceIsOnlyThatOfALimitWhereThereIsOne() {
        assertEquals("limit from: hull_spacing_m in the rules of the plan", NEAR.origin());
        assertEquals("source: hulls of the plan",
                Finding.of(SiteRule.NO_HULL, Level.REFUSE, "plan", Figures.NONE, "No hull.").origin());
    }

    @Test
    void itsNameIsRuleSubjectAndPartsAlone() {
        Finding named = NEAR.with("B");
        assertEquals("hull-spacing:A:B", named.id());
        assertEquals(named.id(), named.at(new Point(1, 2)).from("elsewhere").todo("Move B 5 m.").id());
        assertEquals("hull-spacing:C:B", named.about("C").id());
        assertEquals("hull-spacing", named.group());
    }

    @Test
    void theWorstComesFirstByLevelThenDangerThenHowFarBeyondTheLimit() {
        Finding slope = Finding.of(SiteRule.SLOPE_UNDER_HULL, Level.REFUSE, "A", Figures.of(6, 5, "deg"), "Steep.");
        Finding blocked = Finding.of(PairingRule.CORRIDOR_BLOCKED, Level.REFUSE, "Z", Figures.of(1, 0, "m2"), "Shut.");
        Finding thin = Finding.of(CoverRule.COVER_THIN, Level.WARN, "A", Figures.of(1, 2, "m"), "Thin.");
        List<Finding> expected = List.of(blocked, NEAR, slope, thin);
        List<Finding> found = new ArrayList<>(expected);
        for (int i = 0; i < found.size(); i++) {
            Collections.rotate(found, 1);
            assertEquals(expected, Numbered.worstFirst(found));
        }
    }

    @Test
    void findingsOfOneRuleAndLevelAreReadAsOneAndKeepTheirNumberWithoutOtherDisciplines() {
        Finding steep = Finding.of(SiteRule.GEAR_ON_STEEP_GROUND, Level.WARN, "A", Figures.of(16, 15, "deg"), "Steep.");
        Finding other = steep.about("B");
        Finding milder = Finding.of(LoweringRule.REST_ROCKS, Level.WARN, "A", Figures.of(1, 4, "m"), "Rocks.");
        List<Numbered.Block> blocks = Numbered.blocks(List.of(milder, other, steep, NEAR));
        assertEquals(List.of("S1", "S2", "L1"), blocks.stream().map(Numbered.Block::number).toList());
        assertEquals(List.of("S2a", "S2b"), blocks.get(1).members().stream().map(Numbered::number).toList());
        assertEquals("L1", Numbered.of(List.of(milder)).get(0).number());
    }

    @Test
    void everyRuleSaysAllThatTheCataloguePrintsAndHasItsOwnName() {
        Set<String> names = new HashSet<>();
        for (Rule rule : Catalogue.all()) {
            assertTrue(names.add(rule.id()), rule.id());
            assertEquals(Optional.of(rule), Catalogue.rule(rule.id()));
            Rule.Entry entry = rule.entry();
            assertTrue(entry.worst().compareTo(entry.mildest()) <= 0, rule.id());
            for (String words : List.of(entry.measures(), entry.unit(), entry.source(), entry.todo())) {
                assertFalse(words.isBlank(), rule.id());
            }
            assertTrue(entry.todo().endsWith(".") && Character.isUpperCase(entry.todo().charAt(0)), rule.id());
        }
        assertTrue(names.size() > 150, "rules: " + names.size());
    }
}
