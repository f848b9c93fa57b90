// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.finding.DoseRule;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.Numbered;
import bermwright.finding.PairingRule;
import bermwright.finding.SiteRule;
import bermwright.report.reader.Reader;
import bermwright.site.judgement.Judgement;
import bermwright.site.plan.Plan;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindingBoardTest {
    private static final Plan PLAN = SampleSite.plan();
    private static final Finding SPACING = finding(PairingRule.HULL_SPACING, Finding.Level.REFUSE, "A");
    private static final Finding SLOPE = finding(SiteRule.SLOPE_UNDER_HULL, Finding.Level.WARN, "A");
    private static final Finding SLOPE_OF_B = finding(SiteRule.SLOPE_UNDER_HULL, Finding.Level.WARN, "B");
    private static final Finding DOSE = finding(DoseRule.DOSE_OCCUPANCY, Finding.Level.NOTE, "B/bunks");
    private static final Finding LINE = finding(LoweringRule.LOWERING_SIDE_LINE, Finding.Level.NOTE, "B");
    private static final List<Numbered> ALL = Numbered.of(List.of(SPACING, SLOPE, SLOPE_OF_B, DOSE, LINE));

    private static Finding finding(bermwright.finding.Rule rule, Finding.Level level, String subject) {
        return Finding.of(rule, level, subject, Finding.Figures.NONE, "Words about " + subject + ".");
    }

    private static List<List<Finding>> shown(FindingBoard.Filter filter, FindingBoard.Grouping grouping) {
        return FindingBoard.groups(PLAN, ALL, filter, grouping).stream()
                .map(g -> g.members().stream().map(Numbered::finding).toList()).toList();
    }

    private static FindingBoard.Filter filter(Set<Finding.Level> levels, String search) {
        return new FindingBoard.Filter(levels, Optional.empty(), Optional.empty(), search, Set.of());
    }

    @Test
    void findingsOfOneCauseStandTogetherTheWorstFirst() {
        List<List<Finding>> groups = shown(FindingBoard.Filter.ALL, FindingBoard.Grouping.CAUSE);
        assertEquals(List.of(SPACING), groups.get(0));
        assertEquals(List.of(SLOPE, SLOPE_OF_B), groups.get(1));
        assertEquals(4, groups.size());
    }

    @Test
    void aHullHasItsStationsFindingsToo() {
        List<FindingBoard.Group> groups = FindingBoard.groups(PLAN, ALL, FindingBoard.Filter.ALL,
                FindingBoard.Grouping.HULL);
        assertEquals(List.of("Hull A", "Hull B"), groups.stream().map(FindingBoard.Group::heading).toList());
        assertEquals("1 refuse, 1 warn", groups.get(0).counts());
        assertEquals("1 warn, 2 note", groups.get(1).counts());
    }

    @Test
    void levelsSubjectReaderAndWordsLeaveOut() {
        assertEquals(List.of(List.of(SPACING)), shown(filter(Set.of(Finding.Level.REFUSE), ""),
                FindingBoard.Grouping.NONE));
        assertEquals(List.of(List.of(SLOPE_OF_B)), shown(filter(Set.of(Finding.Level.values()), "SLOPE about b."),
                FindingBoard.Grouping.NONE));
        FindingBoard.Filter ofB = new FindingBoard.Filter(Set.of(Finding.Level.values()), Optional.of("Hull B"),
                Optional.empty(), "", Set.of(LINE.id()));
        assertEquals(List.of(List.of(SLOPE_OF_B, DOSE)), shown(ofB, FindingBoard.Grouping.NONE));
        FindingBoard.Filter forReviewer = new FindingBoard.Filter(Set.of(Finding.Level.values()), Optional.empty(),
                Optional.of(Reader.REVIEWER), "", Set.of());
        List<Finding> decided = shown(forReviewer, FindingBoard.Grouping.NONE).get(0);
        assertTrue(decided.contains(DOSE) && !decided.contains(LINE), decided.toString());
    }

    @Test
    void anAcceptedFindingIsKnownAgainUntilItSaysSomethingElse(@TempDir Path folder) {
        Path plan = SampleSite.write(folder);
        Acceptance acceptance = new Acceptance(plan);
        acceptance.judge(SLOPE, Judgement.Decision.ACCEPTED, "A. Reviewer", "a bench follows");
        assertTrue(Files.exists(plan.resolveSibling(plan.getFileName().toString().replace(".json",
                ".judgements.json"))));
        Acceptance again = new Acceptance(plan);
        assertEquals(Set.of(SLOPE.id()), again.accepted(List.of(SLOPE, SPACING)).keySet());
        assertTrue(again.accepted(List.of(SLOPE)).get(SLOPE.id()).contains("A. Reviewer"));
        assertTrue(again.accepted(List.of(SLOPE)).get(SLOPE.id()).contains("a bench follows"));
        Finding steeper = Finding.of(SiteRule.SLOPE_UNDER_HULL, Finding.Level.REFUSE, "A", Finding.Figures.NONE,
                "Steeper.");
        assertEquals(Set.of(), again.accepted(List.of(steeper)).keySet());
        assertEquals(Set.of(SLOPE.id()), again.outdated(List.of(steeper)).keySet());
        again.judge(SLOPE, Judgement.Decision.REFUSED, "A. Reviewer", "no bench after all");
        assertEquals(Set.of(), new Acceptance(plan).accepted(List.of(SLOPE)).keySet());
    }

    @Test
    void aBrokenFileOfJudgementsIsSaidAndNeverWrittenOver(@TempDir Path folder) throws java.io.IOException {
        Path plan = SampleSite.write(folder);
        Path beside = bermwright.site.planfile.JudgementFiles.beside(plan);
        Files.writeString(beside, "{ broken");
        Acceptance acceptance = new Acceptance(plan);
        assertTrue(acceptance.trouble().isPresent());
        org.junit.jupiter.api.Assertions.assertThrows(bermwright.foundation.InputException.class,
                () -> acceptance.judge(SLOPE, Judgement.Decision.ACCEPTED, "A", "b"));
        assertEquals("{ broken", Files.readString(beside));
    }
}
