// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import java.util.List;

/**
 * Figures of one kind of thing.
 *
 * @param <T>     the kind of thing
 * @param path    where its objects stand in JSON, such as {@code hulls[].cover}
 * @param meaning what they are
 * @param model   id of the model note behind the figures; empty where they rest on none
 * @param figures the figures, in the order in which they are shown
 */
public record AnswerTable<T>(String path, String meaning, String model, List<Figure<T>> figures) {
    /** Copies the figures. */
    public AnswerTable {
        figures = List.copyOf(figures);
    }

    /**
     * The figures that text for a screen shows.
     *
     * @return those that are brief
     */
    public List<Figure<T>> brief() {
        return figures.stream().filter(Figure::isBrief).toList();
    }
}
