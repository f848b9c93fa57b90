// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * When each step runs: as soon as the steps before it are done and its machines are free.
 *
 * <p>All machines of a kind work on one step at a time; one crew lowers one hull at a time. The critical chain is the
 * row of steps, each begun the moment another ended, that ends last.
 *
 * @param bars one bar for each step, in the order of the steps
 */
record WorkSchedule(List<Bar> bars) {
    /** Ends closer than this are the same moment (days). */
    private static final double SAME_MOMENT = 1e-9;

    WorkSchedule {
        bars = List.copyOf(bars);
    }

    /**
     * What a step needs.
     *
     * @param id       its id
     * @param resource the machine or crew that does it, empty for none
     * @param days     how long it takes (days)
     * @param before   steps that must be done
     */
    record Task(String id, String resource, double days, Set<String> before) {
    }

    /**
     * When a step runs.
     *
     * @param step     its id
     * @param resource the machine or crew that does it, empty for none
     * @param start    its begin (days from the start of the work)
     * @param end      its end (days from the start of the work)
     * @param critical whether it is on the critical chain
     */
    record Bar(String step, String resource, double start, double end, boolean critical) {
        boolean overlaps(Bar other) {
            return start < other.end - SAME_MOMENT && other.start < end - SAME_MOMENT;
        }
    }

    static WorkSchedule of(List<Task> tasks) {
        Map<String, Double> ends = new HashMap<>();
        Map<String, Double> free = new HashMap<>();
        Map<String, String> holder = new HashMap<>();
        Map<String, Optional<String>> waitedFor = new HashMap<>();
        Map<String, Double> starts = new HashMap<>();
        for (Task task : tasks) {
            double start = 0;
            Optional<String> cause = Optional.empty();
            for (String before : task.before()) {
                double end = ends.getOrDefault(before, 0.0);
                if (end > start) {
                    start = end;
                    cause = Optional.of(before);
                }
            }
            if (!task.resource().isEmpty() && free.getOrDefault(task.resource(), 0.0) > start) {
                start = free.get(task.resource());
                cause = Optional.of(holder.get(task.resource()));
            }
            starts.put(task.id(), start);
            ends.put(task.id(), start + task.days());
            waitedFor.put(task.id(), cause);
            if (!task.resource().isEmpty()) {
                free.put(task.resource(), start + task.days());
                holder.put(task.resource(), task.id());
            }
        }
        Set<String> chain = chain(tasks, ends, waitedFor);
        return new WorkSchedule(tasks.stream().map(t -> new Bar(t.id(), t.resource(), starts.get(t.id()),
                ends.get(t.id()), chain.contains(t.id()))).toList());
    }

    private static Set<String> chain(List<Task> tasks, Map<String, Double> ends,
            Map<String, Optional<String>> waitedFor) {
        Set<String> chain = new LinkedHashSet<>();
        Optional<String> at = tasks.stream().map(Task::id)
                .max((a, b) -> Double.compare(ends.get(a), ends.get(b)));
        while (at.isPresent()) {
            chain.add(at.get());
            at = waitedFor.get(at.get());
        }
        return chain;
    }

    /** The steps of the critical chain, first to last. */
    List<String> criticalChain() {
        List<Bar> critical = new ArrayList<>(bars.stream().filter(Bar::critical).toList());
        Collections.sort(critical, (a, b) -> Double.compare(a.start, b.start) != 0
                ? Double.compare(a.start, b.start) : Double.compare(a.end, b.end));
        return critical.stream().map(Bar::step).toList();
    }

    double days() {
        return bars.stream().mapToDouble(Bar::end).max().orElse(0);
    }
}
