// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Figures of one kind of thing.
 *
 * @param <T>     the kind of thing
 * @param path    where its objects stand in JSON, such as {@code hulls[].cover}; empty within other tables
 * @param meaning what they are
 * @param model   id of the model note behind the figures; empty where they rest on none
 * @param figures the figures, in the order in which they are shown
 * @param parts   tables of what belongs to such a thing
 */
public record AnswerTable<T>(String path, String meaning, String model, List<Figure<T>> figures,
        List<Part<T, ?>> parts) {
    /**
     * What belongs to a thing and has a table of its own.
     *
     * @param <T>   the kind of thing
     * @param <U>   the kind of what belongs to it
     * @param key   its key in JSON; empty where its figures stand among those of the thing
     * @param many  whether there may be several, a list in JSON
     * @param table its table
     * @param of    what of that kind belongs to a thing
     */
    public record Part<T, U>(String key, boolean many, AnswerTable<U> table, Function<T, List<U>> of) {
        /** All that belong to a thing. */
        static <T, U> Part<T, U> all(String key, AnswerTable<U> table, Function<T, List<U>> of) {
            return new Part<>(key, true, table, of);
        }

        /** The one that belongs to a thing. */
        static <T, U> Part<T, U> one(String key, AnswerTable<U> table, Function<T, U> of) {
            return new Part<>(key, false, table, t -> List.of(of.apply(t)));
        }

        /** The one that may belong to a thing. */
        static <T, U> Part<T, U> maybe(String key, AnswerTable<U> table, Function<T, Optional<U>> of) {
            return new Part<>(key, false, table, t -> of.apply(t).stream().toList());
        }
    }

    /** Copies the figures and parts. */
    public AnswerTable {
        figures = List.copyOf(figures);
        parts = List.copyOf(parts);
    }

    /**
     * A table without parts.
     *
     * @param path    where its objects stand in JSON
     * @param meaning what they are
     * @param model   id of the model note behind the figures
     * @param figures the figures
     */
    public AnswerTable(String path, String meaning, String model, List<Figure<T>> figures) {
        this(path, meaning, model, figures, List.of());
    }

    /** A table that stands within others. */
    static <T> AnswerTable<T> within(String meaning, List<Figure<T>> figures) {
        return new AnswerTable<>("", meaning, "", figures);
    }

    /**
     * Some figures of this table.
     *
     * @param keys their keys
     * @return a table of these, in the order of this one
     */
    public AnswerTable<T> only(String... keys) {
        return new AnswerTable<>(path, meaning, model, figures.stream().filter(f -> List.of(keys).contains(f.key()))
                .toList());
    }

    /** This table with more figures. */
    AnswerTable<T> and(List<Figure<T>> more) {
        return new AnswerTable<>(path, meaning, model, Stream.concat(figures.stream(), more.stream()).toList(), parts);
    }

    /** This table with more parts. */
    AnswerTable<T> with(List<Part<T, ?>> more) {
        return new AnswerTable<>(path, meaning, model, figures, Stream.concat(parts.stream(), more.stream()).toList());
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
