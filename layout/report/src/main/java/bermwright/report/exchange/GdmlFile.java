// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import bermwright.foundation.Vec3;
import bermwright.shielding.material.Material;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Writes a scene as GDML, the open description of geometry for particle transport: tessellated solids, what is taken
 * out of them as subtractions, volumes inside volumes, nothing turned or moved but the scoring balls.
 *
 * @see "GDML user's guide 2.7: define, materials, solids (box, orb, tessellated, subtraction), structure, setup"
 */
public final class GdmlFile {
    private static final double NOTHING_G_CM3 = 1e-25;
    private static final String VACUUM = "vacuum";

    private final BufferedWriter out;
    private final Scene scene;
    private final StringBuilder structure = new StringBuilder();
    private final Set<String> solids = new LinkedHashSet<>();
    private final Map<String, Integer> corners = new HashMap<>();

    private GdmlFile(BufferedWriter out, Scene scene) {
        this.out = out;
        this.scene = scene;
    }

    /**
     * A scene.
     *
     * @param about     what it is, in sentences
     * @param halfWorld half the side of the empty world around the origin (m)
     * @param materials what its bodies are made of, by the names they use; those named {@code vacuum} need none
     * @param takenOut  forms that bodies are without, by name
     * @param bodies    what stands in the world
     * @param balls     scoring balls
     */
    public record Scene(String about, double halfWorld, Map<String, Stuff> materials, Map<String, Mesh> takenOut,
            List<GdmlBody> bodies, List<Ball> balls) {
        /** Copies the lists. */
        public Scene {
            bodies = List.copyOf(bodies);
            balls = List.copyOf(balls);
        }
    }

    /**
     * A material at a density.
     *
     * @param material what it is
     * @param density  how dense it is here (kg/m3), positive
     */
    public record Stuff(Material material, double density) {
    }

    /**
     * A ball in which dose is scored.
     *
     * @param name     its name
     * @param in       the body it stands in
     * @param middle   its middle (m)
     * @param radius   its radius (m)
     * @param material name of its material
     */
    public record Ball(String name, String in, Vec3 middle, double radius, String material) {
    }

    /**
     * Writes the file.
     *
     * @param file  where to
     * @param scene the scene
     * @throws IOException if it cannot be written
     */
    public static void write(Path file, Scene scene) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            new GdmlFile(out, scene).write();
        }
    }

    private void write() throws IOException {
        out.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- " + scene.about.replace("--", "- -") + " -->\n"
                + "<gdml xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" xsi:noNamespaceSchemaLocation="
                + "\"http://service-spi.web.cern.ch/service-spi/app/releases/GDML/schema/gdml.xsd\">\n<define>\n");
        for (Map.Entry<String, Mesh> form : scene.takenOut.entrySet()) {
            places(form.getKey(), form.getValue());
        }
        for (GdmlBody body : scene.bodies) {
            places(body);
        }
        for (Ball ball : scene.balls) {
            place("at_" + ball.name, ball.middle);
        }
        out.write("</define>\n");
        materials();
        out.write("<solids>\n");
        for (Map.Entry<String, Mesh> form : scene.takenOut.entrySet()) {
            tessellated(form.getKey(), form.getValue());
        }
        for (Ball ball : scene.balls) {
            out.write("<orb name=\"" + ball.name + "_solid\" r=\"" + Decimals.of(ball.radius, 4)
                    + "\" lunit=\"m\"/>\n");
            structure.append("<volume name=\"").append(ball.name).append("\"><materialref ref=\"").append(ball.material)
                    .append("\"/><solidref ref=\"").append(ball.name).append("_solid\"/></volume>\n");
        }
        for (GdmlBody body : scene.bodies) {
            body(body);
        }
        String side = Decimals.of(2 * scene.halfWorld, 3);
        out.write("<box name=\"world_solid\" x=\"" + side + "\" y=\"" + side + "\" z=\"" + side
                + "\" lunit=\"m\"/>\n</solids>\n<structure>\n");
        out.write(structure.toString());
        out.write("<volume name=\"world\"><materialref ref=\"vacuum\"/><solidref ref=\"world_solid\"/>\n");
        for (GdmlBody body : scene.bodies) {
            out.write(placed(body.name(), ""));
        }
        out.write("</volume>\n</structure>\n<setup name=\"Default\" version=\"1.0\"><world ref=\"world\"/></setup>\n"
                + "</gdml>\n");
    }

    private void places(GdmlBody body) throws IOException {
        places(body.name(), body.mesh());
        for (GdmlBody inner : body.inside()) {
            places(inner);
        }
    }

    private void places(String name, Mesh mesh) throws IOException {
        String corner = corner(name);
        for (int i = 0; i < mesh.points().size(); i++) {
            place(corner + i, mesh.points().get(i));
        }
    }

    /** What the corners of a form are called before their number: short, for there are very many. */
    private String corner(String form) {
        return "c" + corners.computeIfAbsent(form, f -> corners.size() + 1) + "_";
    }

    private void place(String name, Vec3 p) throws IOException {
        StringBuilder line = new StringBuilder(96).append("<position name=\"").append(name)
                .append("\" unit=\"m\" x=\"");
        Decimals.appendTrimmed(line, p.x(), 4).append("\" y=\"");
        Decimals.appendTrimmed(line, p.y(), 4).append("\" z=\"");
        out.write(Decimals.appendTrimmed(line, p.z(), 4).append("\"/>\n").toString());
    }

    private void materials() throws IOException {
        out.write("<materials>\n");
        Map<String, Material.Part> elements = new TreeMap<>();
        scene.materials.values().forEach(s -> s.material.parts().forEach(p -> elements.put(p.element().symbol(), p)));
        for (Material.Part part : elements.values()) {
            out.write(String.format(Locale.ROOT, "<element name=\"element_%s\" formula=\"%s\" Z=\"%d\"><atom unit="
                    + "\"g/mole\" value=\"%.5f\"/></element>%n", part.element().symbol(), part.element().symbol(),
                    part.element().charge(), part.element().atomicWeight()).replace("\r", ""));
        }
        out.write("<material name=\"vacuum\" Z=\"1\"><D unit=\"g/cm3\" value=\"" + NOTHING_G_CM3
                + "\"/><atom unit=\"g/mole\" value=\"1.008\"/></material>\n");
        for (Map.Entry<String, Stuff> stuff : scene.materials.entrySet()) {
            out.write(String.format(Locale.ROOT, "<material name=\"%s\" state=\"%s\"><D unit=\"g/cm3\""
                    + " value=\"%.6f\"/>\n", stuff.getKey(), stuff.getValue().material.kind() == Material.Kind.GAS
                    ? "gas" : "solid",
                    stuff.getValue().density / 1000));
            for (Material.Part part : stuff.getValue().material.parts()) {
                out.write(String.format(Locale.ROOT, "<fraction n=\"%.8f\" ref=\"element_%s\"/>\n", part.share(),
                        part.element().symbol()));
            }
            out.write("</material>\n");
        }
        out.write("</materials>\n");
    }

    private void tessellated(String name, Mesh mesh) throws IOException {
        out.write("<tessellated name=\"" + name + "_form\" lunit=\"m\">\n");
        String corner = corner(name);
        for (Mesh.Face f : mesh.faces()) {
            out.write("<triangular vertex1=\"" + corner + f.a() + "\" vertex2=\"" + corner + f.b()
                    + "\" vertex3=\"" + corner + f.c() + "\" type=\"ABSOLUTE\"/>\n");
        }
        out.write("</tessellated>\n");
    }

    /** Writes the solids of a body and of what stands inside it, and notes its volume behind theirs. */
    private void body(GdmlBody body) throws IOException {
        for (GdmlBody inner : body.inside()) {
            body(inner);
        }
        tessellated(body.name(), body.mesh());
        String solid = body.name() + "_form";
        int count = 0;
        for (String without : body.without()) {
            String next = body.name() + "_without_" + ++count;
            out.write("<subtraction name=\"" + next + "\"><first ref=\"" + solid + "\"/><second ref=\"" + without
                    + "_form\"/></subtraction>\n");
            solid = next;
        }
        if (!solids.add(body.name())) {
            throw new IllegalArgumentException("two bodies are named " + body.name());
        }
        structure.append("<volume name=\"").append(body.name()).append("\"><materialref ref=\"")
                .append(body.material()).append("\"/><solidref ref=\"").append(solid).append("\"/>\n");
        for (GdmlBody inner : body.inside()) {
            structure.append(placed(inner.name(), ""));
        }
        List<Ball> balls = new ArrayList<>(scene.balls.stream().filter(b -> b.in.equals(body.name())).toList());
        balls.forEach(b -> structure.append(placed(b.name, "<positionref ref=\"at_" + b.name + "\"/>")));
        structure.append("</volume>\n");
    }

    private static String placed(String volume, String where) {
        return "<physvol name=\"" + volume + "_placed\"><volumeref ref=\"" + volume + "\"/>" + where + "</physvol>\n";
    }

    /**
     * The name of nothing.
     *
     * @return name of the material of empty bodies
     */
    public static String vacuum() {
        return VACUUM;
    }
}
