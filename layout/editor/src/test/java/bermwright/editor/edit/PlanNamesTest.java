// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.planfile.PlanValues;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A new id reaches all that names a thing, and what goes takes along what cannot be without it. */
class PlanNamesTest {
    private static final Plan PLAN = named();

    /** The sample with a tunnel, a wall, a pad, a bench, a person and machines that are all named somewhere. */
    private static Plan named() {
        Plan plan = SampleSite.plan();
        plan = PlanValues.with(plan, "tunnels[0]", "{\"id\":\"T\",\"from\":\"A/main\",\"to\":\"B/main\","
                + "\"diameter_m\":2.4}");
        plan = PlanValues.with(plan, "walls[0]", "{\"id\":\"W\",\"line\":[[0,0],[9,0]],\"height_m\":4,"
                + "\"thickness_m\":1}");
        plan = PlanValues.with(plan, "hulls[0].cover", "{\"thickness_m\":2.5,\"base_end\":\"wall\","
                + "\"base_end_wall\":\"W\"}");
        plan = PlanValues.with(plan, "hulls[0].lowering.landing", "{\"pad\":\"P1\"}");
        plan = PlanValues.with(plan, "preparations[0]", "{\"id\":\"A\",\"kind\":\"bench\","
                + "\"area\":[[0,0],[9,0],[9,9]]}");
        plan = PlanValues.with(plan, "order_of_work[3]", "{\"id\":\"4\",\"step\":\"prepare\",\"of\":\"A\","
                + "\"machine\":\"hauler\",\"after\":[\"1\",\"2\"]}");
        return PlanValues.with(plan, "exposure.people", "[{\"id\":\"Kim\",\"hours\":[{\"at\":\"A/bunks\","
                + "\"hours_a_day\":8},{\"at\":\"B/bench\",\"hours_a_day\":8}],\"shelter\":\"A/bunks\","
                + "\"to_shelter_min\":5}]");
    }

    private static Plan renamed(String path, String id) {
        return new SetValue(path + ".id", "\"" + id + "\"", "Rename").applied(PLAN);
    }

    @Test
    void aHullKeepsItsTunnelsStepsAndPeopleUnderAnotherId() {
        Plan plan = renamed("hulls[0]", "north hull");
        assertEquals("north hull/main", plan.tunnels().get(0).from());
        assertEquals("B/main", plan.tunnels().get(0).to());
        assertEquals(List.of("north hull", "north hull", "B", "A"), plan.orderOfWork().stream().map(s -> s.of())
                .toList(), "the step that prepares bench A stays with the bench");
        assertEquals("north hull/bunks", plan.exposure().people().get(0).hours().get(0).at());
        assertEquals("north hull/bunks", plan.exposure().people().get(0).shelter().orElseThrow());
        assertEquals(PLAN, new SetValue("hulls[0].id", "\"A\"", "Rename").applied(plan), "and back again");
    }

    @Test
    void hatchesStationsWallsPadsBenchesMachinesAndStepsKeepWhatNamesThem() {
        assertEquals("A/front", renamed("hulls[0].hatches[0]", "front").tunnels().get(0).from());
        assertEquals("A/beds", renamed("hulls[0].stations[0]", "beds").exposure().people().get(0).shelter()
                .orElseThrow());
        assertEquals("end wall", renamed("walls[0]", "end wall").hull("A").orElseThrow().cover().orElseThrow()
                .baseEndWall().orElseThrow());
        assertTrue(PlanFiles.text(renamed("landing_pads[0]", "P9")).contains("\"pad\": \"P9\""));
        assertEquals("bench 1", renamed("preparations[0]", "bench 1").orderOfWork().get(3).of());
        assertEquals("scoop", renamed("machines[0]", "scoop").orderOfWork().get(3).machine().orElseThrow());
        assertEquals(List.of("first", "2"), renamed("order_of_work[0]", "first").orderOfWork().get(3).after());
    }

    @Test
    void aStepThatBuildsAWallGoesByItsNameAndGoesWithIt() {
        Plan plan = PlanValues.with(PLAN, "order_of_work[4]", "{\"id\":\"5\",\"step\":\"prepare\",\"of\":\"W\"}");
        assertEquals("end wall", new SetValue("walls[0].id", "\"end wall\"", "Rename").applied(plan).orderOfWork()
                .get(4).of());
        RemovePart edit = new RemovePart(new Part(Part.Kind.WALL, "W"));
        assertEquals(List.of("wall of the base end of hull A", "step 5"), edit.alsoGone(plan));
        assertEquals(List.of("1", "2", "3", "4"), edit.applied(plan).orderOfWork().stream().map(s -> s.id()).toList());
    }

    @Test
    void removingAHullSaysAndTakesWhatNamesIt() {
        RemovePart edit = new RemovePart(Part.hull("A"));
        assertEquals(List.of("tunnel T", "hours of Kim at A/bunks", "shelter of Kim", "step 1", "step 2",
                "\"after 1\" of step 3", "\"after 1\" of step 4", "\"after 2\" of step 4"),
                edit.alsoGone(PLAN).stream().sorted((a, b) -> 0).toList());
        Plan plan = edit.applied(PLAN);
        assertEquals(List.of("3", "4"), plan.orderOfWork().stream().map(s -> s.id()).toList());
        assertEquals(List.of(), plan.orderOfWork().get(0).after());
        assertEquals(List.of("B/bench"), plan.exposure().people().get(0).hours().stream().map(h -> h.at()).toList());
        assertTrue(plan.tunnels().isEmpty());
        assertFalse(PlanFiles.text(plan).contains("A/"), "nothing names the hull any more");
        assertEquals(PLAN.preparations(), plan.preparations(), "a bench of the same id stays");
    }

    @Test
    void removingAMachineAPadOrAWallTakesOnlyTheirNamesOutOfOthers() {
        assertTrue(new RemovePart(new Part(Part.Kind.MACHINE, "hauler")).applied(PLAN).orderOfWork().get(3).machine()
                .isEmpty());
        Plan padless = new RemovePart(new Part(Part.Kind.LANDING_PAD, "P1")).applied(PLAN);
        assertEquals(2, padless.hulls().size());
        assertFalse(PlanFiles.text(padless).contains("P1"));
        assertTrue(new RemovePart(new Part(Part.Kind.WALL, "W")).applied(PLAN).hull("A").orElseThrow().cover()
                .orElseThrow().baseEndWall().isEmpty());
        assertEquals(List.of(), new RemovePart(Part.hull("B")).alsoGone(SampleSite.plan()).stream()
                .filter(w -> !w.startsWith("step") && !w.startsWith("hours")).toList());
    }
}
