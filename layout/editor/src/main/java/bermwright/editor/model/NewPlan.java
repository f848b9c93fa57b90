// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.site.plan.Plan;
import bermwright.site.planfile.Key;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.planfile.PlanKeys;
import bermwright.site.planfile.ValueType;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A plan that holds the ground and nothing on it yet, with every default written out for people to look over. */
public final class NewPlan {
    private static final ObjectMapper JSON = new ObjectMapper();

    private NewPlan() {
    }

    /**
     * Whether a file's name is that of a plan.
     *
     * @param file the file
     * @return true for names that end in {@code .json}
     */
    public static boolean isPlan(Path file) {
        return file.getFileName().toString().toLowerCase(java.util.Locale.ROOT).endsWith(".json");
    }

    /**
     * Where a new plan goes that is begun on an elevation file.
     *
     * @param elevation the elevation file
     * @return a file beside it that is not there yet, named after it
     */
    public static Path beside(Path elevation) {
        String stem = stem(elevation);
        Path file = elevation.toAbsolutePath().resolveSibling(stem + "-plan.json");
        for (int number = 2; Files.exists(file); number++) {
            file = elevation.toAbsolutePath().resolveSibling(stem + "-plan-" + number + ".json");
        }
        return file;
    }

    private static String stem(Path file) {
        String name = file.getFileName().toString();
        return name.lastIndexOf('.') > 0 ? name.substring(0, name.lastIndexOf('.')) : name;
    }

    /**
     * A new plan on an elevation file, which is not read.
     *
     * @param elevation the elevation file
     * @param planFile  where the plan will be; its folder is where the path to the elevation file starts
     * @return the plan: its title after the file, ground, soil, exposure and rules at their defaults, nothing placed
     */
    public static Plan on(Path elevation, Path planFile) {
        ObjectNode plan = JSON.createObjectNode();
        plan.put("bermwright_plan", 1);
        plan.put("title", "New plan on " + stem(elevation));
        ObjectNode ground = plan.putObject("ground");
        ground.put("elevation_file", path(elevation, planFile));
        PlanKeys.of(Plan.class).stream().filter(key -> key.type() instanceof ValueType.Part)
                .forEach(key -> defaults(plan.withObject("/" + key.name()), ((ValueType.Part) key.type()).type()));
        return PlanFiles.read(plan.toString(), planFile.toString());
    }

    /**
     * How a plan names a file beside or around it.
     *
     * @param file     the file
     * @param planFile the plan's file
     * @return the path from the plan's folder, with forward slashes; the whole path where there is none from there
     */
    public static String path(Path file, Path planFile) {
        Path whole = file.toAbsolutePath().normalize();
        Path folder = planFile.toAbsolutePath().normalize().getParent();
        return Optional.ofNullable(folder).filter(f -> f.getRoot().equals(whole.getRoot()))
                .map(f -> f.relativize(whole)).orElse(whole).toString().replace('\\', '/');
    }

    private static void defaults(ObjectNode into, Class<? extends Record> type) {
        for (Key key : PlanKeys.of(type)) {
            boolean isPart = key.type() instanceof ValueType.Part && key.standard().isPresent();
            if (isPart) {
                defaults(into.withObject("/" + key.name()), ((ValueType.Part) key.type()).type());
            } else {
                key.standard().filter(value -> !value.startsWith("[")).ifPresent(value -> put(into, key, value));
            }
        }
    }

    private static void put(ObjectNode into, Key key, String value) {
        try {
            into.set(key.name(), JSON.readTree(value));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("the default of " + key.name() + " is not JSON: " + value, impossible);
        }
    }
}
