// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.editor.edit.PlanEdit;
import bermwright.editor.edit.SetValue;
import bermwright.filestore.WholeFile;
import bermwright.foundation.InputException;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Templates for hulls, gear, machines and soil: a file beside the plan that a team can share, in the words of the plan
 * file. It is read anew each time it is asked, so that what others add is seen.
 */
public final class Templates {
    /** Name of the file, beside the plan. */
    public static final String FILE = "bermwright-templates.json";
    private static final String VERSION = "bermwright_templates";
    private static final ObjectMapper JSON = new ObjectMapper();
    /** What belongs to one place or plan and is not kept with a template. */
    private static final List<String> OF_ITS_PLACE = List.of("id", "base_centre", "lay_down_azimuth_deg", "held");

    private final Path file;

    /**
     * The templates beside a plan.
     *
     * @param plan the plan file
     */
    public Templates(Path plan) {
        this.file = plan.resolveSibling(FILE);
    }

    /** What a template is of. */
    public enum Kind {
        /** A hull with gear, stations and cover, without name and place. */
        HULL(Part.Kind.HULL, ""),
        /** The gear that lays a hull down. */
        GEAR(Part.Kind.HULL, ".lowering"),
        /** Machines of one kind, without a name. */
        MACHINE(Part.Kind.MACHINE, ""),
        /** The soil of the ground. */
        SOIL(Part.Kind.GROUND, ".regolith");

        private final Part.Kind part;
        private final String path;

        Kind(Part.Kind part, String path) {
            this.part = part;
            this.path = path;
        }

        /**
         * What it is, for people and in the file.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * Whether a part can be kept as such a template, or take one.
         *
         * @param kind the part's kind
         * @return true where it can
         */
        public boolean isOf(Part.Kind kind) {
            return part == kind;
        }
    }

    /**
     * A template.
     *
     * @param kind what it is of
     * @param name its name
     */
    public record Template(Kind kind, String name) {
    }

    /**
     * The templates there are.
     *
     * @return kind by kind; none where there is no file
     * @throws InputException if the file cannot be read
     */
    public List<Template> all() {
        ObjectNode read = read();
        List<Template> all = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            read.path(kind.word()).fieldNames().forEachRemaining(name -> all.add(new Template(kind, name)));
        }
        return all;
    }

    private ObjectNode read() {
        if (!Files.exists(file)) {
            return JSON.createObjectNode().put(VERSION, 1);
        }
        try {
            JsonNode read = JSON.readTree(Files.readString(file));
            if (read instanceof ObjectNode object && object.path(VERSION).asInt() == 1) {
                return object;
            }
            throw InputException.badValue(InputException.Place.of(file.toString()), "no file of templates",
                    "an object with " + VERSION + " 1");
        } catch (IOException unreadable) {
            throw InputException.unreadable(InputException.Place.of(file.toString()), "it cannot be read",
                    "a file of templates", Optional.of(unreadable));
        }
    }

    /**
     * Keeps a part as a template; one of the same name is replaced.
     *
     * @param plan the plan
     * @param part the part
     * @param kind what is kept of it
     * @param name name of the template, not blank
     * @throws InputException if there is nothing to keep, or the file cannot be read or written
     */
    public void keep(Plan plan, Part part, Kind kind, String name) {
        String json = PlanValues.json(plan, part.path(plan) + kind.path).orElseThrow(() -> InputException.badValue(
                InputException.Place.of(file.toString()), "nothing", part.words() + " with " + kind.word()));
        ObjectNode all = read();
        try {
            ObjectNode value = (ObjectNode) JSON.readTree(json);
            if (kind != Kind.GEAR && kind != Kind.SOIL) {
                OF_ITS_PLACE.forEach(value::remove);
            }
            all.withObject("/" + kind.word()).set(name.strip(), value);
            WholeFile.write(file, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(all) + "\n");
        } catch (IOException notWritten) {
            throw InputException.unreadable(InputException.Place.of(file.toString()), "it cannot be written",
                    "a file in a folder that can be written to", Optional.of(notWritten));
        }
    }

    /**
     * The edit that gives a part what a template holds; name and place stay the part's own.
     *
     * @param plan     the plan
     * @param part     the part
     * @param template the template
     * @return the edit, checked by the plan's own rules when it is made
     * @throws InputException if the file cannot be read or has no such template any more
     */
    public PlanEdit edit(Plan plan, Part part, Template template) {
        JsonNode value = read().path(template.kind.word()).path(template.name);
        if (!(value instanceof ObjectNode object)) {
            throw InputException.badValue(InputException.Place.of(file.toString()), template.name,
                    "a template that is in the file");
        }
        ObjectNode whole = object.deepCopy();
        if (template.kind == Kind.HULL || template.kind == Kind.MACHINE) {
            for (String key : OF_ITS_PLACE) {
                PlanValues.json(plan, part.path(plan) + "." + key).ifPresent(own -> whole.set(key, parsed(own)));
            }
        }
        return new SetValue(part.path(plan) + template.kind.path, whole.toString(), "Take " + template.kind.word()
                + " \u201c" + template.name + "\u201d for " + part.words());
    }

    private static JsonNode parsed(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("the plan wrote text that is not JSON: " + json, impossible);
        }
    }
}
