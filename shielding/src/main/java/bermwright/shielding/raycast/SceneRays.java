// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Require;
import bermwright.foundation.Vec3;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Soil;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A scene made ready for rays; made once for many stations, and safe to share between threads. */
public final class SceneRays {
    private final Scene scene;
    private final SoilField field;
    private final List<SoilField> patches;

    private SceneRays(Scene scene, SoilField field, List<SoilField> patches) {
        this.scene = scene;
        this.field = field;
        this.patches = patches;
    }

    /**
     * Makes a scene ready.
     *
     * @param scene the scene
     * @return the scene, ready for rays
     */
    public static SceneRays of(Scene scene) {
        Soil soil = scene.soil();
        return new SceneRays(scene, new SoilField(soil), IntStream.range(0, soil.finished().patches().size())
                .mapToObj(i -> new SoilField(soil, i)).toList());
    }

    /**
     * The scene behind it.
     *
     * @return the scene
     */
    public Scene scene() {
        return scene;
    }

    SoilField field() {
        return field;
    }

    /** The soil at a place: the finer patch that holds it, or the grid. */
    SoilField fieldAt(double east, double north) {
        for (SoilField patch : patches) {
            if (patch.holds((east - patch.west) / patch.spacing, (north - patch.south) / patch.spacing)) {
                return patch;
            }
        }
        return field;
    }

    /** The finer patch that holds a place, where there is one. */
    private Optional<SoilField> patch(Vec3 place) {
        return patches.stream().filter(p -> p.holds((place.x() - p.west) / p.spacing,
                (place.y() - p.south) / p.spacing)).findFirst();
    }

    /**
     * A station to look out from.
     *
     * @param station the point rays leave from, over the grid
     * @return the sweep, for one thread
     * @throws IllegalArgumentException if the station is not over the grid or over a hole in it
     */
    public SkySweep from(Vec3 station) {
        double x = (station.x() - field.west) / field.spacing;
        double y = (station.y() - field.south) / field.spacing;
        Require.that(field.holds(x, y), "a station at east %s m, north %s m is not over the grid",
                station.x(), station.y());
        Require.that(!Double.isNaN(field.onTriangles(field.finished, x, y)),
                "the ground has no height under a station at east %s m, north %s m", station.x(), station.y());
        return new SkySweep(fields(station), new SkySweep.Ground(scene.hulls(), scene.walls()), station);
    }

    /** The soil that rays from a station run through. */
    SoilFields fields(Vec3 station) {
        Optional<SoilField> patch = patch(station);
        return new SoilFields(patch.orElse(field), patch.map(p -> field));
    }

    /**
     * How much memory the soil takes up.
     *
     * @return numbers kept (1)
     */
    public long size() {
        return patches.stream().mapToLong(SoilField::size).sum() + field.size();
    }

    /**
     * What one ray crosses.
     *
     * @param station   where it leaves
     * @param direction which way, above the horizontal
     * @return what lies on the way to the sky
     * @throws IllegalArgumentException if the direction is not above the horizontal
     */
    public Crossed ray(Vec3 station, Vec3 direction) {
        Vec3 unit = direction.direction();
        Require.that(unit.z() > 0, "a ray's upward part is %s; accepted: above 0, since others meet the ground",
                unit.z());
        SkyRays rays = new SkyRays();
        from(station).look(new Azimuth(Math.atan2(unit.x(), unit.y())),
                new double[] {Math.min(unit.z(), 1 - 1e-12)}, rays);
        return new Crossed(rays.placed(0), rays.inPlace(0), rays.skin(0), rays.beyondEdge() > 0);
    }

    /**
     * What a ray crosses on its way to the sky.
     *
     * @param placed     placed soil (kg/m2)
     * @param inPlace    undisturbed soil (kg/m2)
     * @param skin       skins at a slant (kg/m2)
     * @param beyondEdge whether it was still in soil at the edge of the known ground
     */
    public record Crossed(double placed, double inPlace, double skin, boolean beyondEdge) {
        /**
         * All of it counted as soil.
         *
         * @param skinEquivalence what one unit of skin counts as in soil (1)
         * @return areal density (kg/m2)
         */
        public double arealDensity(double skinEquivalence) {
            return placed + inPlace + skin * skinEquivalence;
        }
    }
}
