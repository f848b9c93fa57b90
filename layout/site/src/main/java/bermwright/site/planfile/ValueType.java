// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import java.time.LocalDate;
import java.util.List;

/** The kinds of value a key takes, each with what it accepts. */
public sealed interface ValueType {

    /**
     * What is accepted, as the end of an error message or the hint beside a field.
     *
     * @return the words, such as {@code a number greater than 0, at most 500, in m}
     */
    String accepted();

    /**
     * A number with a unit; the plan keeps it in SI.
     *
     * @param unit  its unit in the file
     * @param range the values accepted, in that unit
     */
    record Quantity(Unit unit, Range range) implements ValueType {
        @Override
        public String accepted() {
            return "a number " + range.words() + unit.ending();
        }
    }

    /** A direction, in degrees clockwise from grid north. */
    record Direction() implements ValueType {
        /** One turn. */
        static final Range TURN = Range.between(0, 360);

        @Override
        public String accepted() {
            return "a number " + TURN.words() + ", in deg clockwise from grid north";
        }
    }

    /**
     * A whole number.
     *
     * @param range the numbers accepted
     */
    record Count(Range range) implements ValueType {
        @Override
        public String accepted() {
            return "a whole number " + range.words();
        }
    }

    /**
     * Free text.
     *
     * @param mayBeEmpty   whether an empty text is accepted
     * @param mayHoldSlash whether a text with a slash is accepted
     */
    record Text(boolean mayBeEmpty, boolean mayHoldSlash) implements ValueType {
        private static final int DELETE = 0x7f;
        private static final int LAST_CONTROL = 0x9f;

        @Override
        public String accepted() {
            return mayBeEmpty ? "a text" : mayHoldSlash ? "a text that is not empty and holds no control characters"
                    : "a text that is not empty and holds no / and no control characters";
        }

        boolean accepts(String text) {
            return mayBeEmpty || !text.isBlank() && (mayHoldSlash || text.indexOf('/') < 0)
                    && text.chars().noneMatch(c -> c < ' ' || c >= DELETE && c <= LAST_CONTROL);
        }
    }

    /**
     * One of a few words.
     *
     * @param words  the words, in order
     * @param values the values they stand for, in the same order
     */
    record Choice(List<String> words, List<Object> values) implements ValueType {
        /** Copies the lists. */
        public Choice {
            words = List.copyOf(words);
            values = List.copyOf(values);
        }

        @Override
        public String accepted() {
            return String.join(", ", words.stream().map(JsonText::quoted).toList());
        }
    }

    /**
     * A day.
     *
     * @param first the first one accepted
     * @param last  the last one accepted
     */
    record Day(LocalDate first, LocalDate last) implements ValueType {
        @Override
        public String accepted() {
            return "a date as a text such as \"2031-05-01\", from " + first + " to " + last;
        }
    }

    /** Yes or no. */
    record Flag() implements ValueType {
        @Override
        public String accepted() {
            return "true or false";
        }
    }

    /** A place in plan: an object with {@code east_m} and {@code north_m}. */
    record Place() implements ValueType {
        @Override
        public String accepted() {
            return "an object with east_m and north_m";
        }
    }

    /** An outline: a list of three or more {@code [east, north]} in metres that does not cross itself. */
    record Outline() implements ValueType {
        @Override
        public String accepted() {
            return "a list of 3 or more [east, north] in m that does not cross itself";
        }
    }

    /** A line: a list of two or more {@code [east, north]} in metres. */
    record Way() implements ValueType {
        @Override
        public String accepted() {
            return "a list of 2 or more different [east, north] in m";
        }
    }

    /**
     * An object with keys of its own.
     *
     * @param type the plan record it becomes; {@link PlanKeys#of} gives its keys
     */
    record Part(Class<? extends Record> type) implements ValueType {
        @Override
        public String accepted() {
            return "an object";
        }
    }

    /**
     * A list of values of one kind.
     *
     * @param of the kind of its values
     */
    record Many(ValueType of) implements ValueType {
        @Override
        public String accepted() {
            return "a list";
        }
    }
}
