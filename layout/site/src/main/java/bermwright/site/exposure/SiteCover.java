// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Ring;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.DepthMap;
import bermwright.shielding.cover.DepthMaps;
import bermwright.shielding.cover.LeastCover;
import bermwright.shielding.cover.Mound;
import bermwright.shielding.scene.HullSolid;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The cover of a plan: the mound over all hulls, and what it gives each of them.
 *
 * <p>The three surfaces carry the mound's own finer nodes as patches; a surface that was given has those it was
 * given with.
 *
 * @param natural  the ground before any work
 * @param prepared the ground after benches and trenches, on which hulls lie and soil is placed
 * @param finished the surface with the mound
 * @param toes     outlines where the mound meets the ground, in the plan's frame; none for a surface that was given
 * @param volume   soil placed in all (m3)
 * @param hulls    what covers each hull that has a cover and lies on known ground
 * @param passing  how what passes through the covers fares
 * @param findings what is wrong with the covers
 * @param buriedHatches hatches that soil stands over, by the names that tunnels know them by
 */
public record SiteCover(ElevationGrid natural, ElevationGrid prepared, ElevationGrid finished, List<Ring> toes,
        double volume, List<HullCover> hulls, List<PassedThrough> passing, List<Finding> findings,
        Set<String> buriedHatches) {
    /** Steps of the depth map along a hull (m) and around it. */
    private static final double MAP_STEP = 0.5;
    private static final int MAP_AROUND = 72;

    /** Copies the lists. */
    public SiteCover {
        toes = List.copyOf(toes);
        hulls = List.copyOf(hulls);
        passing = List.copyOf(passing);
        findings = List.copyOf(findings);
        buriedHatches = Set.copyOf(buriedHatches);
    }

    /**
     * The least cover that the plan asks for.
     *
     * @param plan     the plan
     * @param natural  the ground before any work
     * @param prepared the ground after benches and trenches, on the same grid; the natural ground where nothing is
     * @return the cover
     */
    public static SiteCover raised(Plan plan, ElevationGrid natural, ElevationGrid prepared) {
        return raised(plan, natural, prepared, new DepthMaps());
    }

    /**
     * The least cover that the plan asks for, after others that were measured before.
     *
     * @param plan     the plan
     * @param natural  the ground before any work
     * @param prepared the ground after benches and trenches, on the same grid; the natural ground where nothing is
     * @param known    depths that were measured before, which takes up those measured now
     * @return the cover, the same whatever is known
     */
    public static SiteCover raised(Plan plan, ElevationGrid natural, ElevationGrid prepared, DepthMaps known) {
        SiteHulls site = new SiteHulls(plan, prepared);
        Mound mound = mound(plan, site, site.covered(), Set.of(), LeastCover.FINE_SPACING);
        // Everything is described on the mound's own nodes where it stands, and on the ground's elsewhere.
        ElevationGrid bed = prepared.withPatches(site.metres().patches(mound.ground()));
        ElevationGrid before = natural == prepared ? bed : natural.withPatches(bed.patches().stream()
                .map(p -> natural.patch(p.frame())).toList());
        ElevationGrid finished = prepared.withHeights(mound.finished().heights())
                .withPatches(site.metres().patches(mound.finished()));
        PassThroughs passing = new PassThroughs(plan, site);
        List<PassedThrough> states = passing.states(mound.finished());
        List<Ring> toes = mound.toes().stream().map(site.metres()::projected).toList();
        List<HullCover> covers = new ArrayList<>();
        for (int i = 0; i < mound.hulls().size(); i++) {
            CoveredHull covered = mound.hulls().get(i);
            Optional<Hull> hull = plan.hull(covered.hull().id());
            if (hull.isPresent()) {
                covers.add(measured(plan, covered, mound.finished(), new Extent(
                        mound.placedVolume(i) + tunnelShare(plan, mound, hull.get().id())
                                - displaced(states, hull.get().id()), before, toes, known)));
            }
        }
        List<Finding> findings = new ArrayList<>(CoverFindings.of(plan, site, Optional.of(mound), covers, toes));
        findings.addAll(passing.findings(mound.finished()));
        return new SiteCover(before, bed, finished,
                toes, mound.placedVolume()
                        - states.stream().mapToDouble(PassedThrough::displaced).sum(), covers, states, findings,
                CoverFindings.buriedHatches(plan, site, mound));
    }

    /** The mound over given covers, in true metres; no ways are kept clear at closed hulls. */
    static Mound mound(Plan plan, SiteHulls site, List<CoveredHull> covered, Set<String> closed, double spacing) {
        return LeastCover.on(spacing).raised(site.ground(), covered, plan.ground().regolith().stableSlope(),
                site.keptClear(closed));
    }

    /**
     * What a surface that is given, such as a part-built mound or a survey, gives the hulls of a plan.
     *
     * @param plan     the plan
     * @param natural  the ground before any work
     * @param prepared the ground after benches and trenches, on the same grid
     * @param finished the surface as it stands, on the same grid and either on its patches too or without any
     * @return the cover, without toes; volumes of single hulls are not known and stand at 0
     */
    public static SiteCover standing(Plan plan, ElevationGrid natural, ElevationGrid prepared,
            ElevationGrid finished) {
        return standing(plan, natural, prepared, finished, new DepthMaps());
    }

    /**
     * What a surface that is given gives the hulls of a plan, after others that were measured before.
     *
     * @param plan     the plan
     * @param natural  the ground before any work
     * @param prepared the ground after benches and trenches, on the same grid
     * @param finished the surface as it stands, on the same grid and either on its patches too or without any
     * @param known    depths that were measured before, which takes up those measured now
     * @return the cover, the same whatever is known
     */
    public static SiteCover standing(Plan plan, ElevationGrid natural, ElevationGrid prepared,
            ElevationGrid finished, DepthMaps known) {
        boolean finer = frames(finished).equals(frames(prepared)) && frames(prepared).equals(frames(natural));
        ElevationGrid bed = finer ? prepared : prepared.withPatches(List.of());
        ElevationGrid before = finer ? natural : natural == prepared ? bed : natural.withPatches(List.of());
        SiteHulls site = new SiteHulls(plan, bed);
        ElevationGrid surface = site.metres().stretched(finished);
        List<HullCover> covers = new ArrayList<>();
        double taken = 0;
        for (Hull hull : plan.hulls()) {
            Optional<HullSolid> solid = site.hull(hull.id());
            if (solid.isPresent() && hull.cover().isPresent()) {
                covers.add(measured(plan, SiteHulls.covered(solid.get(), hull.cover().get()), surface,
                        new Extent(0, before, List.of(), known)));
            }
        }
        for (HullSolid solid : site.solids()) {
            taken += Mound.takenUp(solid, site.ground(), surface);
        }
        List<Finding> findings = new ArrayList<>(CoverFindings.of(plan, site, Optional.empty(), covers, List.of()));
        PassThroughs passing = new PassThroughs(plan, site);
        findings.addAll(passing.findings(surface));
        List<PassedThrough> states = passing.states(surface);
        taken += states.stream().mapToDouble(PassedThrough::displaced).sum();
        double volume = Math.max(0, Mound.volumeBetween(site.ground(), surface) - taken);
        return new SiteCover(before, bed, finished, List.of(), volume, covers, states, findings, Set.of());
    }

    private static List<GridFrame> frames(ElevationGrid grid) {
        return grid.patches().stream().map(ElevationGrid::frame).toList();
    }

    /** Soil placed for a hull, the ground before, outlines of all mounds where they are known, depths known before. */
    private record Extent(double volume, ElevationGrid natural, List<Ring> toes, DepthMaps known) {
    }

    /** Half the soil over each tunnel that ends at a hull (m3), so that no soil is left out of the haul. */
    private static double tunnelShare(Plan plan, Mound mound, String hull) {
        double share = 0;
        for (int i = 0; i < mound.hulls().size(); i++) {
            String id = mound.hulls().get(i).hull().id();
            for (Tunnel tunnel : plan.tunnels()) {
                if (tunnel.id().equals(id) && plan.hull(id).isEmpty()) {
                    double half = mound.placedVolume(i) / 2;
                    share += (HatchName.of(tunnel.from()).hull().equals(hull) ? half : 0)
                            + (HatchName.of(tunnel.to()).hull().equals(hull) ? half : 0);
                }
            }
        }
        return share;
    }

    /** Soil that open ways through one hull's cover take up (m3). */
    private static double displaced(List<PassedThrough> states, String hull) {
        return states.stream().filter(s -> s.hull().equals(hull)).mapToDouble(PassedThrough::displaced).sum();
    }

    private static HullCover measured(Plan plan, CoveredHull covered, ElevationGrid surface, Extent extent) {
        Hull hull = plan.hull(covered.hull().id()).orElseThrow();
        double volume = extent.volume;
        CoverUncertainty uncertainty = CoverUncertainty.of(plan, hull, extent.natural, extent.toes);
        int along = (int) Math.max(8, Math.ceil(hull.length() / MAP_STEP));
        DepthMap depth = extent.known.of(covered, surface, along, MAP_AROUND);
        double density = density(plan, hull);
        double slack = CoverFindings.slack(covered, surface);
        DepthMap.Place least = depth.thinnest(slack);
        return new HullCover(hull.id(), volume, volume * density, depth, least,
                least.depth() * density + hull.skinArealDensity(),
                depth.shareBelowWanted(slack), uncertainty);
    }

    /**
     * Density at which the soil of a hull's cover is placed.
     *
     * @param plan the plan
     * @param hull one of its hulls
     * @return that of its cover, else that of the plan's soil (kg/m3)
     */
    public static double density(Plan plan, Hull hull) {
        return hull.cover().map(CoverPlan::density).flatMap(d -> d.isPresent() ? Optional.of(d.getAsDouble())
                : Optional.empty()).orElse(plan.ground().regolith().placedDensity());
    }

    /**
     * What stands behind depth and volume.
     *
     * @return the note of the model
     */
    public static ModelNote note() {
        return CoverUncertainty.note();
    }

    /**
     * The cover of one hull.
     *
     * @param id the hull
     * @return its cover, empty where it has none or lies on unknown ground
     */
    public Optional<HullCover> hull(String id) {
        return hulls.stream().filter(h -> h.id().equals(id)).findFirst();
    }
}
