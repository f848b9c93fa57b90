// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.WallSolid;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Station;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a plan's doses are computed in, handed out so that others can compute them: solids and surfaces in true metres,
 * that is, projected metres times {@code metreScale} east and north, and heights as they are.
 *
 * @param metreScale true metres in one projected metre (1), positive
 * @param hulls      hulls on known ground, in the plan's order
 * @param others     tunnels, and the open shafts and pipes that lead through the cover
 * @param walls      walls
 * @param natural    the ground before any work
 * @param prepared   the ground on which hulls lie and soil is placed
 * @param finished   the surface with the mound
 */
public record SiteScene(double metreScale, List<HullSolid> hulls, List<HullSolid> others, List<WallSolid> walls,
        ElevationGrid natural, ElevationGrid prepared, ElevationGrid finished) {
    /** Copies the lists. */
    public SiteScene {
        hulls = List.copyOf(hulls);
        others = List.copyOf(others);
        walls = List.copyOf(walls);
    }

    /**
     * The scene of a plan.
     *
     * @param plan  the plan
     * @param cover its cover
     * @return the scene
     */
    public static SiteScene of(Plan plan, SiteCover cover) {
        SiteHulls site = new SiteHulls(plan, cover.prepared());
        TrueMetres metres = site.metres();
        ElevationGrid natural = cover.natural() == cover.prepared() ? site.ground()
                : metres.stretched(cover.natural());
        ElevationGrid finished = metres.stretched(cover.finished());
        List<HullSolid> others = new ArrayList<>(site.solidsUnder(finished));
        others.removeAll(site.hullSolids());
        return new SiteScene(cover.prepared().metreScale(), site.hullSolids(), others, WallsOfPlan.walls(plan, site),
                natural, site.ground(), finished);
    }

    /**
     * The same for rays.
     *
     * @param plan          the plan
     * @param placedDensity density of the placed soil (kg/m3), positive
     * @return what rays of the plan's doses cross
     */
    public Scene forRays(Plan plan, double placedDensity) {
        List<HullSolid> all = new ArrayList<>(hulls);
        all.addAll(others);
        return new Scene(SiteDose.soil(plan, natural, finished, placedDensity), all, walls);
    }

    /**
     * The solid of a hull.
     *
     * @param id the hull
     * @return its solid; empty where the ground under it is not known
     */
    public Optional<HullSolid> hull(String id) {
        return hulls.stream().filter(h -> h.id().equals(id)).findFirst();
    }

    /**
     * A station of a hull.
     *
     * @param station the station
     * @param in      the hull's solid
     * @return its place in true metres
     */
    public static Vec3 place(Station station, HullSolid in) {
        return in.pose().point(station.along(), station.across(), station.up());
    }

    /**
     * The middle of a hatch.
     *
     * @param hatch the hatch
     * @param of    its hull
     * @param in    the hull's solid
     * @return its place in true metres
     */
    public static Vec3 place(Hatch hatch, Hull of, HullSolid in) {
        return SiteHulls.middle(in, of, hatch);
    }

    /**
     * A place in the plan's projected frame.
     *
     * @param place the place in true metres
     * @return the place in projected metres
     */
    public Vec3 projected(Vec3 place) {
        return new TrueMetres(metreScale).projected(place);
    }
}
