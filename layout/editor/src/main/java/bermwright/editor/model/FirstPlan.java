// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.filestore.Storage;
import bermwright.filestore.WholeFile;
import bermwright.foundation.InputException;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.channels.Channels;
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
    /** Folder of the copy, in the user's own. */
    private static final String COPY = "bermwright-demo";

    private FirstPlan() {
    }

    /**
     * The plan to open when none is named: the one opened last.
     *
     * @param settings what is remembered
     * @return the plan's file, empty at the first start, when the window offers three ways to begin
     */
    public static Optional<Path> of(Settings settings) {
        return settings.recentFiles().stream().filter(Files::isRegularFile).findFirst();
    }

    /**
     * A copy of the demo in a folder of the person's own, so that the shipped one is never edited.
     *
     * @param environment the environment; {@code BERMWRIGHT_DEMO} names the demo's plan
     * @param properties  the system's properties; {@code bermwright.demo} names the demo's plan, {@code user.home} the
     *                    folder in which the copy is made
     * @return the copy's plan file, empty where there is no demo or no copy can be made
     */
    public static Optional<Path> demoCopy(Map<String, String> environment, Properties properties) {
        return demo(environment, properties).flatMap(shipped -> copy(shipped, Path.of(properties
                .getProperty("user.home", ".")).resolve(COPY)));
    }

    /**
     * A copy of the demo in a folder; one that is there already is left as it is.
     *
     * @param shipped the demo's plan
     * @param folder  the folder
     * @return the copy's plan file, empty where it cannot be made
     */
    static Optional<Path> copy(Path shipped, Path folder) {
        Path plan = folder.resolve("plan.json");
        if (Files.isRegularFile(plan)) {
            return Optional.of(plan);
        }
        try {
            Plan demo = PlanFiles.read(shipped);
            Files.createDirectories(folder);
            List<String> beside = new ArrayList<>(List.of(demo.ground().elevationFile()));
            demo.orderOfWork().forEach(step -> step.asBuilt().flatMap(WorkStep.AsBuilt::elevationFile)
                    .ifPresent(beside::add));
            for (String file : beside) {
                if (!Files.exists(folder.resolve(file))) {
                    copyWhole(shipped.resolveSibling(file), folder.resolve(file));
                }
            }
            copyWhole(shipped, plan);
            return Optional.of(plan);
        } catch (IOException | InputException notCopied) {
            return Optional.empty();
        }
    }

    private static void copyWhole(Path from, Path to) throws IOException {
        WholeFile.write(Storage.DISK, to, channel -> Files.copy(from, Channels.newOutputStream(channel)));
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
