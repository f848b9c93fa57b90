// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.report.exchange.Detail;
import bermwright.report.exchange.GdmlBody;
import bermwright.report.exchange.GdmlFile;
import bermwright.report.exchange.Mesh;
import bermwright.report.exchange.Tin;
import bermwright.report.sheet.WorkGround;
import bermwright.shielding.material.Material;
import bermwright.shielding.material.Materials;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.WallSolid;
import bermwright.site.exposure.SiteScene;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.site.plan.Station;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The scene of some hulls' doses as bodies for particle transport, around a square of ground.
 *
 * <p>Bodies never overlap: what is placed is the outermost body of the soil; soil in place stands inside it, a gap of
 * two millimetres below its surface, each denser layer inside the one above; hulls, tunnels and walls are taken out of
 * all of them, a millimetre wider than they are.
 */
final class DoseScene {
    /** How far triangles may be off at most (m): where something is built, and elsewhere. */
    static final double TOLERANCE = 0.03;
    private static final double ELSEWHERE = 0.2;
    /** Soil is carried so far below its lowest place (m); more sends nothing back that counts. */
    static final double BELOW = 6;
    private static final double GAP = 0.002;
    private static final double WIDER = 0.001;
    private static final int AROUND = 72;
    private static final int DOME = 10;
    /** Density may change by so much within a layer. */
    private static final double STEP = 0.06;
    private static final int MOST_LAYERS = 5;
    private static final double BALL = 0.15;

    private final Plan plan;
    private final SiteScene scene;
    private final List<Hull> hulls;
    private final double placedDensity;
    private final Map<String, GdmlFile.Stuff> materials = new LinkedHashMap<>();
    private final Map<String, Mesh> takenOut = new LinkedHashMap<>();
    private final List<GdmlBody> bodies = new ArrayList<>();
    private final List<GdmlFile.Ball> balls = new ArrayList<>();
    private final GridFrame square;
    private final Vec3 origin;

    DoseScene(Plan plan, SiteScene scene, List<Hull> hulls, double placedDensity) {
        this.plan = plan;
        this.scene = scene;
        this.hulls = hulls;
        this.placedDensity = placedDensity;
        List<Point> places = new ArrayList<>();
        for (Hull hull : hulls) {
            HullSolid solid = scene.hull(hull.id()).orElseThrow();
            double reach = solid.reach() + REACH;
            Point middle = solid.middle().plan();
            places.add(new Point(middle.east() - reach, middle.north() - reach));
            places.add(new Point(middle.east() + reach, middle.north() + reach));
        }
        double spacing = scene.finished().patches().stream().mapToDouble(p -> p.frame().spacing()).min()
                .orElse(scene.finished().frame().spacing());
        this.square = WorkGround.square(scene.finished().frame(), spacing, places);
        Vec3 middle = scene.hull(hulls.get(0).id()).orElseThrow().middle();
        this.origin = new Vec3(Math.rint(square.centre().east()), Math.rint(square.centre().north()),
                Math.rint(middle.z()));
    }

    /** Ground beyond the hulls' own reach that must be in the scene (m). */
    private static final double REACH = 22;

    /** Where the scene's origin is, in true metres of the site. */
    Vec3 origin() {
        return origin;
    }

    /** Side of the square of ground (m). */
    double side() {
        return square.spacing() * (square.columns() - 1);
    }

    /** The scene, with words at its head. */
    GdmlFile.Scene made(String about) {
        Material soil = Materials.named(plan.ground().regolith().composition());
        materials.put("soil_placed", new GdmlFile.Stuff(soil, placedDensity));
        materials.put("tissue", new GdmlFile.Stuff(tissue(), 1000));
        for (HullSolid hull : scene.hulls()) {
            if (isIn(hull.middle())) {
                takenOut.put(name("hole", hull.id()), revolved(hull, -WIDER));
                plan.hull(hull.id()).ifPresent(h -> bodies.add(hull(h, hull)));
            }
        }
        for (HullSolid other : scene.others()) {
            if (isIn(other.middle())) {
                List<String> before = new ArrayList<>(takenOut.keySet());
                takenOut.put(name("hole", other.id()), revolved(other, -WIDER));
                bodies.add(other(other, before));
            }
        }
        int count = 0;
        for (WallSolid wall : scene.walls()) {
            if (isIn(wall.from().at(wall.foot())) || isIn(wall.to().at(wall.foot()))) {
                String name = "wall_" + ++count;
                List<String> before = new ArrayList<>(takenOut.keySet());
                takenOut.put("hole_" + name, slab(wall, WIDER));
                bodies.add(new GdmlBody(name, slab(wall, 0), before, "soil_placed", List.of()));
            }
        }
        soil(soil);
        return new GdmlFile.Scene(about, side(), materials, takenOut, bodies, balls);
    }

    private boolean isIn(Vec3 place) {
        return square.holds(place.x(), place.y());
    }

    /** A name that programs take. */
    static String name(String what, String id) {
        String safe = id.replaceAll("[^A-Za-z0-9]", "_");
        return what + "_" + (safe.equals(id) ? safe : safe.substring(0, Math.min(24, safe.length())) + "_"
                + String.format(Locale.ROOT, "%08x", id.hashCode()));
    }

    private static Material tissue() {
        return Material.of("ICRU four-element tissue", 1000, Material.Kind.COMPOUND,
                new TreeMap<>(Map.of("O", 0.762, "C", 0.111, "H", 0.101, "N", 0.026)),
                "ICRU Report 33 (1980), from memory");
    }

    /** A hull: each layer of its skin inside the one before, the crew's room inside the last. */
    private GdmlBody hull(Hull hull, HullSolid solid) {
        String cavity = name("inside", hull.id());
        double depth = hull.skin().stream().mapToDouble(l -> l.arealDensity() / material(l.material()).density()).sum();
        GdmlBody body = new GdmlBody(cavity, revolved(solid, depth), List.of(), GdmlFile.vacuum(), List.of());
        for (Station station : hull.stations()) {
            Vec3 place = SiteScene.place(station, solid);
            Vec3 local = solid.pose().local(place);
            double room = solid.shape().radiusAt(local.x()) - Math.hypot(local.y(), local.z()) - depth - 0.02;
            double ends = Math.min(local.x(), solid.shape().length() - local.x()) - depth - 0.02;
            double radius = Math.min(BALL, Math.min(room, ends) * 0.7);
            if (radius > 0.02) {
                balls.add(new GdmlFile.Ball(name("station", hull.named(station.id())), cavity,
                        place.minus(origin), radius, "tissue"));
            }
        }
        for (int i = hull.skin().size() - 1; i >= 0; i--) {
            Material of = material(hull.skin().get(i).material());
            String stuff = name("skin", of.name());
            materials.putIfAbsent(stuff, new GdmlFile.Stuff(of, of.density()));
            depth -= hull.skin().get(i).arealDensity() / of.density();
            body = new GdmlBody(name("skin_" + (i + 1), hull.id()), revolved(solid, Math.max(0, depth)), List.of(),
                    stuff, List.of(body));
        }
        return body;
    }

    private static Material material(String name) {
        return Materials.names().contains(name.toLowerCase(Locale.ROOT)) ? Materials.named(name)
                : Materials.named("aluminium");
    }

    /** A tunnel or an open shaft: empty, its skin counted as aluminium where it has one. */
    private GdmlBody other(HullSolid solid, List<String> without) {
        double skin = solid.shape().skin();
        Material metal = Materials.named("aluminium");
        if (!(skin > 0)) {
            return new GdmlBody(name("way", solid.id()), revolved(solid, 0), without, GdmlFile.vacuum(), List.of());
        }
        materials.putIfAbsent("skin_aluminium", new GdmlFile.Stuff(metal, metal.density()));
        GdmlBody room = new GdmlBody(name("inside", solid.id()), revolved(solid, skin / metal.density()), without,
                GdmlFile.vacuum(), List.of());
        return new GdmlBody(name("way", solid.id()), revolved(solid, 0), without, "skin_aluminium", List.of(room));
    }

    /** Soil placed, and in it the soil in place in layers of one density. */
    private void soil(Material soil) {
        double[] finished = known(WorkGround.on(square, scene.finished()));
        double[] prepared = known(WorkGround.on(square, scene.prepared()));
        double[] natural = known(WorkGround.on(square, scene.natural()));
        BulkDensity density = PlanSoil.of(plan.ground()).inPlace().density();
        List<Double> tops = tops(density);
        List<double[]> surfaces = new ArrayList<>(List.of(finished));
        for (int layer = 0; layer < tops.size(); layer++) {
            double[] top = new double[finished.length];
            for (int i = 0; i < top.length; i++) {
                double above = surfaces.get(layer)[i] - GAP;
                top[i] = Math.min(above, layer == 0 ? prepared[i] - GAP : natural[i] - tops.get(layer));
            }
            surfaces.add(top);
        }
        Tin net = Tin.over(square, surfaces, new Detail(n -> Math.abs(finished[n] - natural[n]) > GAP
                || Math.abs(prepared[n] - natural[n]) > GAP ? TOLERANCE : ELSEWHERE, n -> true, false));
        double bottom = Arrays.stream(surfaces.get(surfaces.size() - 1)).min().orElse(0) - BELOW;
        GdmlBody inner = null;
        List<String> without = new ArrayList<>(takenOut.keySet());
        for (int layer = tops.size() - 1; layer >= 0; layer--) {
            double to = layer + 1 < tops.size() ? tops.get(layer + 1) : tops.get(layer) + BELOW;
            String name = "soil_in_place_" + (layer + 1);
            materials.put(name, new GdmlFile.Stuff(soil, density.mean(tops.get(layer), to)));
            inner = new GdmlBody(name, moved(Mesh.under(net, layer + 1, bottom + (layer + 1) * GAP,
                    (layer + 1) * 2e-5)), without, name, inner == null ? List.of() : List.of(inner));
        }
        bodies.add(new GdmlBody("soil_placed_body", moved(Mesh.under(net, 0, bottom, 0)), without, "soil_placed",
                List.of(inner)));
    }

    /** Depths of the upper side of each layer of nearly one density (m). */
    private static List<Double> tops(BulkDensity density) {
        List<Double> tops = new ArrayList<>(List.of(0.0));
        double last = density.density(0);
        for (double depth = 0.05; depth < BELOW && !density.isUniform() && tops.size() < MOST_LAYERS; depth += 0.05) {
            if (Math.abs(density.density(depth) / last - 1) > STEP) {
                tops.add(depth);
                last = density.density(depth);
            }
        }
        return tops;
    }

    /** Heights with those that are missing taken as the lowest known. */
    private static double[] known(double[] heights) {
        double lowest = Arrays.stream(heights).filter(Double::isFinite).min().orElse(0);
        return Arrays.stream(heights).map(h -> Double.isNaN(h) ? lowest : h).toArray();
    }

    private Mesh moved(Mesh mesh) {
        return new Mesh(mesh.points().stream().map(p -> p.minus(origin)).toList(), mesh.faces());
    }

    /** A hull's form with its skin moved inwards (m); its many sides enclose the room of its round. */
    private Mesh revolved(HullSolid solid, double inwards) {
        HullShape shape = solid.shape();
        double turn = 2 * Math.PI / AROUND;
        double wide = Math.sqrt(turn / Math.sin(turn));
        List<List<Vec3>> rings = new ArrayList<>();
        for (double[] ring : HullProfile.of(shape, inwards, DOME)) {
            List<Vec3> corners = new ArrayList<>();
            for (int k = 0; k < AROUND; k++) {
                corners.add(solid.pose().point(ring[0], wide * ring[1] * Math.sin(k * turn), wide * ring[1]
                        * Math.cos(k * turn)).minus(origin));
            }
            rings.add(corners);
        }
        double[] tips = HullProfile.tips(shape, inwards);
        return Mesh.revolved(rings, solid.pose().point(tips[0], 0, 0).minus(origin),
                solid.pose().point(tips[1], 0, 0).minus(origin));
    }

    /** A wall as a slab of placed soil of its own mass over its face. */
    private Mesh slab(WallSolid wall, double wider) {
        double half = wall.arealDensity() / placedDensity / 2 + wider;
        double length = wall.from().distance(wall.to());
        double x = (wall.to().east() - wall.from().east()) / length;
        double y = (wall.to().north() - wall.from().north()) / length;
        List<List<Vec3>> rings = new ArrayList<>();
        for (double z : new double[] {wall.foot() - wider, wall.top() + wider}) {
            List<Vec3> ring = new ArrayList<>();
            for (int[] corner : new int[][] {{0, -1}, {1, -1}, {1, 1}, {0, 1}}) {
                double along = corner[0] == 0 ? -wider : length + wider;
                ring.add(new Vec3(wall.from().east() + along * x - corner[1] * half * y, wall.from().north()
                        + along * y + corner[1] * half * x, z).minus(origin));
            }
            rings.add(ring);
        }
        Vec3 middle = new Vec3((wall.from().east() + wall.to().east()) / 2, (wall.from().north() + wall.to().north())
                / 2, wall.foot() - wider).minus(origin);
        return Mesh.revolved(rings, middle, new Vec3(middle.x(), middle.y(), wall.top() + wider - origin.z()));
    }
}
