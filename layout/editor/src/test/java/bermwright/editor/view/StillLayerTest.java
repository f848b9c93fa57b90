// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.edit.Move;
import bermwright.editor.edit.Part;
import bermwright.editor.model.MapFigure;
import bermwright.editor.model.MapFigures;
import bermwright.finding.Numbered;
import bermwright.site.assessment.LiveSite;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands still while a hull is moved, and what is drawn anew. */
class StillLayerTest {
    private static final Part HELD = Part.hull("A");

    @TempDir
    private Path folder;

    private Plan plan;
    private LiveSite site;
    private MapFigures figures;
    private final StillLayer layer = new StillLayer();

    @BeforeEach
    void open() {
        plan = PlanFiles.read(SampleSite.write(folder));
        site = LiveSite.of(plan, Optional.empty(), Map.of());
        figures = MapFigures.of(site);
    }

    private boolean move(double east) {
        Plan moved = new Move(HELD, east, 0).applied(plan);
        site = site.with(moved);
        figures = figures.with(site);
        return layer.part(all(), Optional.of(HELD), moved);
    }

    private MapOverlay.Layer all() {
        return new MapOverlay.Layer(figures.figures(), Numbered.of(site.findings()));
    }

    @Test
    void everyFigureAndFindingIsDrawnOnceAndOnlyOnce() {
        for (int i = 0; i < 5; i++) {
            move(4 * i);
            List<MapFigure> drawn = new ArrayList<>(layer.still().figures());
            drawn.addAll(layer.live().figures());
            assertEquals(all().figures().size(), drawn.size());
            assertEquals(Set.copyOf(all().figures()), new HashSet<>(drawn));
            List<Numbered> told = new ArrayList<>(layer.still().findings());
            told.addAll(layer.live().findings());
            assertEquals(all().findings().size(), told.size());
            assertEquals(Set.copyOf(all().findings()), new HashSet<>(told));
        }
    }

    @Test
    void whatIsInTheHandMovesAndMostElseStandsStill() {
        assertTrue(move(0), "at first what stands still is drawn");
        assertTrue(layer.still().figures().stream().noneMatch(f -> f.part().equals(Optional.of(HELD))));
        assertTrue(layer.live().figures().stream().anyMatch(f -> f.part().equals(Optional.of(HELD))));
        assertFalse(layer.still().figures().isEmpty());
    }

    @Test
    void whatStandsStillIsDrawnAgainOnlyWhereSomethingOnItChanged() {
        move(0);
        move(1);
        MapOverlay.Layer before = layer.still();
        boolean isDrawn = move(1.25);
        assertEquals(!before.equals(layer.still()), isDrawn);
        assertFalse(move(1.25), "nothing changed");
    }

    @Test
    void aFigureThatChangedMovesUntilTheHandLetsGo() {
        move(0);
        MapFigure other = layer.still().figures().get(0);
        MapOverlay.Layer all = all();
        List<MapFigure> without = all.figures().stream().filter(f -> !f.equals(other)).toList();
        assertTrue(layer.part(new MapOverlay.Layer(without, all.findings()), Optional.of(HELD), plan));
        assertFalse(layer.part(all, Optional.of(HELD), plan), "it is not put back among what stands still");
        assertTrue(layer.live().figures().contains(other));
        layer.end();
        assertTrue(layer.part(all, Optional.of(HELD), plan));
        assertTrue(layer.still().figures().contains(other));
    }
}
