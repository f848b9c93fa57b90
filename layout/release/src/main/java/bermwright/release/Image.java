// SPDX-License-Identifier: Apache-2.0
package bermwright.release;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Makes the application image with its own Java for the machine this runs on, a Debian package of it where the tools
 * are there, and the papers (licences, manual, demo) that go into everything that is handed out.
 */
public final class Image {
    /** What the program and its parts use of Java; nothing that opens a connection by itself is among it. */
    private static final List<String> MODULES = List.of("java.base", "java.desktop", "java.logging", "java.management",
            "java.naming", "java.prefs", "java.sql", "java.xml", "jdk.charsets", "jdk.unsupported",
            "jdk.unsupported.desktop", "jdk.zipfs");
    private static final List<String> JAVA_OPTIONS = List.of("-XX:+UseParallelGC", "-Xshare:auto", "-Xlog:disable",
            "-Xlog:all=error:stderr", "-Djava.awt.headless=true", "-XX:SharedArchiveFile=$APPDIR/start.jsa",
            "-Dbermwright.archive=$APPDIR/start.jsa");

    private final Path root;
    private final Path target;
    private final String version;
    private final String seconds;

    private Image(Path root, Path target, String version, Instant time) {
        this.root = root;
        this.target = target;
        this.version = version;
        this.seconds = String.valueOf(time.getEpochSecond());
    }

    /**
     * Makes them.
     *
     * @param arguments root of the sources, the module's target folder, version, time of all files
     * @throws IOException          if a file cannot be written or a tool is missing or fails
     * @throws InterruptedException if it is stopped
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Image image = new Image(Path.of(arguments[0]), Path.of(arguments[1]), arguments[2],
                Instant.parse(arguments[3]));
        image.papers();
        image.scripts();
        image.image();
        image.debianPackage();
    }

    private void papers() throws IOException {
        Path papers = anew("papers");
        Files.copy(root.resolve("LICENSE"), papers.resolve("LICENSE"));
        Files.copy(root.resolve("layout/licences/NOTICE"), papers.resolve("NOTICE"));
        Files.copy(root.resolve("layout/release/src/main/dist/README.md"), papers.resolve("README.md"));
        if (!Files.exists(target.resolve("parts.cdx.json"))) {
            throw new IOException("there is no list of parts (parts.cdx.json): it is not made with -o");
        }
        Files.copy(target.resolve("parts.cdx.json"), papers.resolve("parts.cdx.json"));
        copy(target.resolve("licences"), papers.resolve("licences"));
        for (Path part : list(papers.resolve("licences"))) {
            if (list(part).isEmpty()) {
                Files.delete(part);
            }
        }
        copy(root.resolve("layout/licences/parts"), papers.resolve("licences"));
        copy(target.resolve("share"), papers.resolve("share"));
        Path demo = Files.createDirectories(papers.resolve("demo"));
        for (Path file : list(root.resolve("demo-site"))) {
            // The plan and all that it names, and what is expected of it.
            if (file.getFileName().toString().matches(".*\\.(json|tif|tsv)")) {
                Files.copy(file, demo.resolve(file.getFileName()));
            }
        }
        everyPartHasItsLicence(papers.resolve("licences"));
    }

    /** What the list of parts names must have a text: its own folder, or a line in a notice of several parts. */
    private void everyPartHasItsLicence(Path licences) throws IOException {
        StringBuilder notices = new StringBuilder();
        List<String> folders = list(licences).stream().map(f -> f.getFileName().toString()).toList();
        for (String folder : folders) {
            Path notice = licences.resolve(folder).resolve("NOTICE.txt");
            notices.append(Files.exists(notice) ? Files.readString(notice) : "");
        }
        List<String> without = new ArrayList<>();
        for (String part : parts()) {
            boolean isOurs = part.startsWith("bermwright");
            if (!isOurs && folders.stream().noneMatch(part::startsWith) && !folders.contains(part + "-jar")
                    && notices.indexOf(part.replaceAll("-[0-9].*", "")) < 0) {
                without.add(part);
            }
        }
        if (!without.isEmpty()) {
            throw new IOException("no licence is handed out for " + without
                    + "; put its text into layout/licences/parts");
        }
    }

    private List<String> parts() throws IOException {
        List<String> parts = new ArrayList<>();
        for (String folder : List.of("lib", "screen")) {
            list(target.resolve(folder)).stream().map(j -> j.getFileName().toString().replaceAll("\\.jar$", ""))
                    .forEach(parts::add);
        }
        return parts;
    }

    private void scripts() throws IOException {
        Path bin = Files.createDirectories(anew("dist").resolve("bin"));
        for (String name : List.of("bermwright", "bermwright.cmd")) {
            String text = Files.readString(root.resolve("layout/release/src/main/dist/bin").resolve(name));
            Files.writeString(bin.resolve(name), text.replace("@version@", version));
        }
    }

    private void image() throws IOException, InterruptedException {
        Path jlink = tool("jlink");
        Path jpackage = tool("jpackage");
        Path runtime = anew("runtime");
        Files.delete(runtime);
        run(List.of(jlink.toString(), "--add-modules", String.join(",", MODULES), "--strip-java-debug-attributes",
                "--no-header-files", "--no-man-pages", "--compress=2", "--output", runtime.toString()));
        Path app = anew("app");
        copy(target.resolve("lib"), app);
        copy(target.resolve("screen"), app);
        Path place = anew("image");
        List<String> command = new ArrayList<>(List.of(jpackage.toString(), "--type", "app-image", "--name",
                "bermwright", "--app-version", version, "--vendor", "Bermwright", "--description",
                "Plans how landers are laid down on the Moon and buried in its soil", "--runtime-image",
                runtime.toString(), "--input", app.toString(), "--main-jar", "bermwright-cli-" + version + ".jar",
                "--main-class", "bermwright.cli.Main", "--dest", place.toString()));
        JAVA_OPTIONS.forEach(o -> Collections.addAll(command, "--java-options", o));
        Collections.addAll(command, "--java-options",
                "-Dbermwright.editor=$APPDIR/bermwright-editor-" + version + ".jar");
        if (isSystem("windows")) {
            command.add("--win-console");
        }
        run(command);
        Path made = place.resolve("bermwright");
        sortClassPath(made.resolve("lib/app/bermwright.cfg"));
        if (isSystem("linux")) {
            // The tool's own starter asks the package manager at each start where it came from: a tenth of a second.
            Files.copy(target.resolve("dist/bin/bermwright"), made.resolve("bin/bermwright"),
                    StandardCopyOption.REPLACE_EXISTING);
            made.resolve("bin/bermwright").toFile().setExecutable(true, false);
            fonts(made.resolve("lib/fonts"));
        }
        copy(target.resolve("papers"), made);
    }

    /** The fonts that pages and drawings are set in, out of the part that packs them. */
    private void fonts(Path folder) throws IOException {
        Files.createDirectories(folder);
        Files.copy(root.resolve("layout/release/src/main/dist/fonts.conf"), folder.resolve("fonts.conf"));
        Path packed = list(target.resolve("lib")).stream()
                .filter(j -> j.getFileName().toString().startsWith("jasperreports-fonts")).findFirst().orElseThrow();
        try (FileSystem jar = FileSystems.newFileSystem(packed);
                Stream<Path> found = Files.walk(jar.getPath("/"))) {
            for (Path font : found.filter(f -> f.toString().endsWith(".ttf")).sorted().toList()) {
                Files.copy(font, folder.resolve(font.getFileName().toString()));
            }
        }
    }

    /** The main jar alone, whose manifest names the others: the tool lists them in the order of the folder. */
    private static void sortClassPath(Path settings) throws IOException {
        if (Files.exists(settings)) {
            List<String> kept = new ArrayList<>();
            for (String line : Files.readAllLines(settings)) {
                if (!line.startsWith("app.classpath=") || line.contains("bermwright-cli-")) {
                    kept.add(line);
                }
            }
            Files.write(settings, kept);
        }
    }

    private void debianPackage() throws IOException, InterruptedException {
        if (!isSystem("linux") || !isOnPath("dpkg-deb") || !isOnPath("fakeroot")) {
            System.out.println("No Debian package was made: dpkg-deb and fakeroot are not both there.");
            return;
        }
        Path resources = anew("deb");
        for (String script : List.of("postinst", "prerm")) {
            Files.copy(root.resolve("layout/release/src/main/deb").resolve(script), resources.resolve(script));
        }
        run(List.of(tool("jpackage").toString(), "--type", "deb", "--name", "bermwright", "--app-version", version,
                "--app-image", target.resolve("image/bermwright").toString(), "--linux-app-category", "science",
                "--linux-package-deps", "libfontconfig1, libfreetype6",
                "--resource-dir", resources.toString(), "--dest", Files.createDirectories(target.resolve("hand-out"))
                        .toString()));
    }

    private static boolean isSystem(String name) {
        return System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith(name);
    }

    private static boolean isOnPath(String program) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(":")).filter(f -> !f.isEmpty())
                .anyMatch(f -> Files.isExecutable(Path.of(f, program)));
    }

    private static Path tool(String name) throws IOException {
        Path home = Path.of(System.getProperty("java.home"));
        Optional<Path> found = Stream.of(name, name + ".exe").map(n -> home.resolve("bin").resolve(n))
                .filter(Files::isExecutable).findFirst();
        if (found.isEmpty() || !Files.isDirectory(home.resolve("jmods"))) {
            throw new IOException("the Java at " + home + " has no " + (found.isEmpty() ? name : "jmods folder")
                    + ": an image with its own Java needs a full JDK 17 or later (on Debian openjdk-17-jdk);"
                    + " run Maven with JAVA_HOME set to one. All else is built without it by mvn verify");
        }
        return found.get();
    }

    private void run(List<String> command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
        builder.environment().put("SOURCE_DATE_EPOCH", seconds);
        builder.environment().put("LC_ALL", "C.UTF-8");
        builder.environment().put("TZ", "UTC");
        int code = builder.start().waitFor();
        if (code != 0) {
            throw new IOException(command.get(0) + " ended with " + code + ": " + String.join(" ", command));
        }
    }

    /** A folder of the target, empty. */
    private Path anew(String name) throws IOException {
        Path folder = target.resolve(name);
        if (Files.exists(folder)) {
            List<Path> all;
            try (Stream<Path> found = Files.walk(folder)) {
                all = found.sorted(Comparator.reverseOrder()).toList();
            }
            for (Path old : all) {
                old.toFile().setWritable(true);
                Files.delete(old);
            }
        }
        return Files.createDirectories(folder);
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        List<Path> all;
        try (Stream<Path> found = Files.walk(from)) {
            all = found.sorted().toList();
        }
        for (Path file : all) {
            Path place = to.resolve(from.relativize(file).toString());
            if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
                Files.createDirectories(place);
            } else {
                Files.copy(file, place, StandardCopyOption.REPLACE_EXISTING, LinkOption.NOFOLLOW_LINKS);
            }
        }
    }
}
