// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/** Which plan to open when none is named. */
public final class FirstPlan {
    private static final int FOLDERS_UP = 5;

    private FirstPlan() {
    }

    /**
     * The plan to open: the one opened last, else the demo.
     *
     * @param settings    what is remembered
     * @param environment the environment; {@code BERMWRIGHT_DEMO} names the demo's plan
     * @param properties  the system's properties; {@code bermwright.demo} names the demo's plan
     * @return the plan's file, empty where there is neither
     */
    public static Optional<Path> of(Settings settings, Map<String, String> environment, Properties properties) {
        return settings.recentFiles().stream().filter(Files::isRegularFile).findFirst()
                .or(() -> demo(environment, properties));
    }

    /**
     * The demo's plan.
     *
     * @param environment the environment; {@code BERMWRIGHT_DEMO} names it
     * @param properties  the system's properties; {@code bermwright.demo} names it
     * @return the file named, else {@code demo-site/plan.json} beside the program or in a folder above it
     */
    public static Optional<Path> demo(Map<String, String> environment, Properties properties) {
        List<Path> places = new ArrayList<>();
        Optional.ofNullable(properties.getProperty("bermwright.demo")).map(Path::of).ifPresent(places::add);
        Optional.ofNullable(environment.get("BERMWRIGHT_DEMO")).map(Path::of).ifPresent(places::add);
        try {
            Path folder = Path.of(FirstPlan.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            for (int i = 0; i < FOLDERS_UP && folder != null; i++) {
                places.add(folder.resolve("demo-site").resolve("plan.json"));
                folder = folder.getParent();
            }
        } catch (URISyntaxException | NullPointerException unknown) {
            places.add(Path.of("demo-site", "plan.json"));
        }
        return places.stream().filter(Files::isRegularFile).findFirst();
    }
}
