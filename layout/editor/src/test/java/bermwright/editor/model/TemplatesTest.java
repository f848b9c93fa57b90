// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.edit.Part;
import bermwright.foundation.InputException;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplatesTest {
    @TempDir
    private Path folder;

    @Test
    void aHullTakesAllOfATemplateButNameAndPlace() {
        Plan plan = SampleSite.plan();
        Templates templates = new Templates(folder.resolve("plan.json"));
        templates.keep(plan, Part.hull("A"), Templates.Kind.HULL, "long lander");
        Plan changed = PlanValues.with(plan, "hulls[1].length_m", "50");
        Templates again = new Templates(folder.resolve("other.json"));
        assertEquals(List.of(new Templates.Template(Templates.Kind.HULL, "long lander")), again.all());
        Plan after = again.edit(changed, Part.hull("B"), again.all().get(0)).applied(changed);
        Hull before = changed.hull("B").orElseThrow();
        Hull hull = after.hull("B").orElseThrow();
        assertEquals(38, hull.length());
        assertEquals(before.baseCentre(), hull.baseCentre());
        assertEquals(before.layDownAzimuth(), hull.layDownAzimuth());
        assertEquals(plan.hull("A").orElseThrow().stations(), hull.stations());
    }

    @Test
    void gearSoilAndMachinesAreKeptByThemselves() {
        Plan plan = SampleSite.plan();
        Templates templates = new Templates(folder.resolve("plan.json"));
        templates.keep(plan, Part.hull("A"), Templates.Kind.GEAR, "heavy");
        templates.keep(PlanValues.with(plan, "ground.regolith.cohesion_Pa", "700"), new Part(Part.Kind.GROUND, ""),
                Templates.Kind.SOIL, "firm");
        templates.keep(plan, new Part(Part.Kind.MACHINE, "hauler"), Templates.Kind.MACHINE, "scoop");
        Plan bare = PlanValues.without(plan, "hulls[1].lowering");
        Plan geared = templates.edit(bare, Part.hull("B"), new Templates.Template(Templates.Kind.GEAR, "heavy"))
                .applied(bare);
        assertEquals(plan.hull("A").orElseThrow().lowering(), geared.hull("B").orElseThrow().lowering());
        Plan firm = templates.edit(plan, new Part(Part.Kind.GROUND, ""), new Templates.Template(Templates.Kind.SOIL,
                "firm")).applied(plan);
        assertEquals("700", PlanValues.json(firm, "ground.regolith.cohesion_Pa").orElseThrow());
        assertEquals(3, templates.all().size());
    }

    @Test
    void aFileThatIsNoneIsSaidAndNeverWrittenOver() throws IOException {
        Path file = folder.resolve(Templates.FILE);
        Files.writeString(file, "{ \"hull\": {} }");
        Templates templates = new Templates(folder.resolve("plan.json"));
        InputException refused = assertThrows(InputException.class, templates::all);
        assertTrue(refused.getMessage().contains(Templates.FILE), refused.getMessage());
        assertThrows(InputException.class, () -> templates.keep(SampleSite.plan(), Part.hull("A"),
                Templates.Kind.GEAR, "x"));
        assertEquals("{ \"hull\": {} }", Files.readString(file));
    }
}
