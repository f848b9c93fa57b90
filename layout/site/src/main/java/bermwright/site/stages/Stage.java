// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.site.plan.WorkStep;
import bermwright.terrain.grid.ElevationGrid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The site as it stands when a step of the work is done, and the step itself. */
public final class Stage {
    private final WorkStep step;
    private final Bar bar;
    private final Soil soil;
    private final State state;

    Stage(WorkStep step, Bar bar, Soil soil, State state) {
        this.step = step;
        this.bar = bar;
        this.soil = soil;
        this.state = state;
    }

    /**
     * When the step runs and who does it.
     *
     * @param resource     machine or crew that does it; empty for none
     * @param machineHours machine hours (h); empty where they are not known
     * @param start        its begin (days from the start of the work)
     * @param end          its end (days from the start of the work)
     * @param critical     whether a delay of it delays the end of the work
     */
    public record Bar(String resource, OptionalDouble machineHours, double start, double end, boolean critical) {
    }

    /**
     * What the step places.
     *
     * @param height height of the cover over the hull's bed once it is done (m); nothing for other steps
     * @param placed soil placed in this step (m3)
     * @param ramp   soil of the ramp up to this height, not part of the cover (m3)
     * @param lifts  tops of the lifts in which it is placed, heights over the hull's bed (m), rising
     */
    public record Soil(double height, double placed, double ramp, List<Double> lifts) {
        /** No soil. */
        public static final Soil NONE = new Soil(0, 0, 0, List.of());

        /** Copies the lifts. */
        public Soil {
            lifts = List.copyOf(lifts);
        }
    }

    /**
     * What stands where.
     *
     * @param ground   the ground without covers
     * @param covers   lifted covers by hull id
     * @param heights  height reached by each cover begun (m), by hull id
     * @param standing ids of hulls that stand
     * @param lying    ids of hulls that lie
     * @param prepared ids of preparations made
     */
    record State(ElevationGrid ground, Map<String, LiftedCover> covers, Map<String, Double> heights,
            Set<String> standing, Set<String> lying, Set<String> prepared) {
        State {
            heights = Map.copyOf(new LinkedHashMap<>(heights));
            standing = Set.copyOf(standing);
            lying = Set.copyOf(lying);
            prepared = Set.copyOf(prepared);
        }

        /** The ground with what is placed of each cover begun, by hull id. */
        Map<String, ElevationGrid> placed() {
            Map<String, ElevationGrid> placed = new LinkedHashMap<>();
            heights.forEach((hull, reached) -> Optional.ofNullable(covers.get(hull)).filter(c -> reached > 0)
                    .ifPresent(c -> placed.put(hull, c.raised(ground, reached))));
            return placed;
        }
    }

    /**
     * The step.
     *
     * @return the step that brings the site to this stage
     */
    public WorkStep step() {
        return step;
    }

    /**
     * When it runs.
     *
     * @return its bar on the schedule
     */
    public Bar bar() {
        return bar;
    }

    /**
     * What it places.
     *
     * @return the soil of this step
     */
    public Soil soil() {
        return soil;
    }

    /**
     * Hulls that stand once it is done.
     *
     * @return their ids
     */
    public Set<String> standing() {
        return state.standing();
    }

    /**
     * Hulls that lie once it is done.
     *
     * @return their ids
     */
    public Set<String> lying() {
        return state.lying();
    }

    /**
     * Covers begun, with the height each has reached.
     *
     * @return height over the hull's bed (m) by hull id
     */
    public Map<String, Double> coverHeights() {
        return state.heights();
    }

    /**
     * The ground with the covers as they stand once the step is done, for contours and pictures; made when asked.
     *
     * @return the surface, on the ground's grid and patches
     */
    public ElevationGrid surface() {
        return surface(state.heights().getOrDefault(step.of(), 0.0));
    }

    /**
     * The same while the step is under way, for contour plans of each lift; made when asked.
     *
     * @param height height that the cover this step places has reached, over the hull's bed (m); other steps leave
     *               it out of account
     * @return the surface, on the ground's grid and patches
     */
    public ElevationGrid surface(double height) {
        ElevationGrid surface = state.ground();
        for (Map.Entry<String, Double> cover : state.heights().entrySet()) {
            LiftedCover lifted = state.covers().get(cover.getKey());
            if (lifted != null) {
                boolean own = step.step() == WorkStep.Kind.COVER && cover.getKey().equals(step.of());
                surface = lifted.raised(surface, own ? height : cover.getValue());
            }
        }
        return surface;
    }

    /**
     * The surface for one step of a list.
     *
     * @param stages the stages
     * @param step   the step's id
     * @return its stage, empty where there is no such step
     */
    public static Optional<Stage> of(List<Stage> stages, String step) {
        return stages.stream().filter(s -> s.step().id().equals(step)).findFirst();
    }
}
