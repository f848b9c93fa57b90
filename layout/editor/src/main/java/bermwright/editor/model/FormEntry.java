// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import java.util.List;
import java.util.Map;

/** A line or a block of the form that shows a part's figures. */
public sealed interface FormEntry {
    /**
     * The path of what it shows in the plan file.
     *
     * @return the path, such as {@code hulls[0].length_m}
     */
    String path();

    /**
     * What people call it.
     *
     * @return the words
     */
    String label();

    /** Kinds of field. */
    enum Kind {
        /** A number with a unit. */
        NUMBER,
        /** Free text. */
        TEXT,
        /** One of a few words. */
        CHOICE,
        /** Yes or no. */
        FLAG,
        /** Corners of an area or line. */
        CORNERS,
        /** Words separated by commas; where there are choices, some of these. */
        WORDS,
        /** A file, as a path beside the plan. */
        FILE
    }

    /**
     * A field.
     *
     * @param path      path of its value
     * @param label     what people call it
     * @param unit      its unit, empty for a pure number or text
     * @param kind      its kind
     * @param text      its value as text, empty where there is none
     * @param isGiven   whether the value was given; else it is a default
     * @param isNeeded  whether the plan cannot do without it
     * @param choices   words to choose from
     * @param sources   where each of these words is from, where that is known
     * @param rule      what it says, what is accepted, what it is when left out
     */
    record Field(String path, String label, String unit, Kind kind, String text, boolean isGiven, boolean isNeeded,
            List<String> choices, Map<String, String> sources, String rule) implements FormEntry {
        /** Copies the choices. */
        public Field {
            choices = List.copyOf(choices);
            sources = Map.copyOf(sources);
        }
    }

    /**
     * Entries that a person thinks of together.
     *
     * @param path    what tells it apart in its form
     * @param label   heading
     * @param entries what it holds
     */
    record Group(String path, String label, List<FormEntry> entries) implements FormEntry {
        /** Copies the entries. */
        public Group {
            entries = List.copyOf(entries);
        }
    }

    /**
     * A block of fields.
     *
     * @param path      path of the object
     * @param label     what people call it
     * @param isThere   whether it is in the plan
     * @param canGo     whether it can be taken out
     * @param rule      what it is
     * @param addition  JSON of a new one, empty where there cannot be one
     * @param entries   what it holds, nothing where it is not there
     */
    record Block(String path, String label, boolean isThere, boolean canGo, String rule, String addition,
            List<FormEntry> entries) implements FormEntry {
        /** Copies the entries. */
        public Block {
            entries = List.copyOf(entries);
        }
    }

    /**
     * A list of blocks.
     *
     * @param path     path of the list
     * @param label    what people call it
     * @param rule     what it is
     * @param addition JSON of a new item
     * @param items    its items
     */
    record Items(String path, String label, String rule, String addition, List<Block> items) implements FormEntry {
        /** Copies the items. */
        public Items {
            items = List.copyOf(items);
        }
    }
}
