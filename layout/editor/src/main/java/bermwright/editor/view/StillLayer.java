// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.MapFigure;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.site.plan.Plan;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Parts what lies over the ground while something is tried out: what stands still and need not be drawn anew, and what
 * moves.
 *
 * <p>At first everything stands still that is not of the part in the hand. What is found changed or gone later moves
 * from then on, until what is tried out is settled or given up.
 */
final class StillLayer {
    private Optional<MapOverlay.Layer> still = Optional.empty();
    private MapOverlay.Layer live = new MapOverlay.Layer(List.of(), List.of());

    /** Lets everything move again. */
    void end() {
        still = Optional.empty();
    }

    /**
     * Parts what is to be drawn now.
     *
     * @param all  all there is to be drawn
     * @param held the part in the hand
     * @param plan the plan tried out
     * @return true where what stands still must be drawn anew
     */
    boolean part(MapOverlay.Layer all, Optional<Part> held, Plan plan) {
        Optional<MapOverlay.Layer> before = still;
        Set<MapFigure> figuresNow = new HashSet<>(all.figures());
        Map<Finding, Numbered> findingsNow = new HashMap<>();
        all.findings().forEach(n -> findingsNow.put(n.finding(), n));
        MapOverlay.Layer from = before.orElse(all);
        List<MapFigure> figures = from.figures().stream().filter(figuresNow::contains)
                .filter(f -> held.isEmpty() || !f.part().equals(held)).toList();
        List<Numbered> findings = from.findings().stream().map(n -> findingsNow.get(n.finding()))
                .filter(java.util.Objects::nonNull)
                .filter(n -> held.isEmpty() || !Part.bySubject(plan, n.finding().subject()).equals(held)).toList();
        MapOverlay.Layer kept = new MapOverlay.Layer(figures, findings);
        live = new MapOverlay.Layer(without(all.figures(), new HashSet<>(figures)),
                without(all.findings(), new HashSet<>(findings)));
        still = Optional.of(kept);
        return before.filter(kept::equals).isEmpty();
    }

    private static <T> List<T> without(List<T> all, Set<T> some) {
        return all.stream().filter(Predicate.not(some::contains)).toList();
    }

    /** What stands still. */
    MapOverlay.Layer still() {
        return still.orElseThrow();
    }

    /** What moves. */
    MapOverlay.Layer live() {
        return live;
    }
}
