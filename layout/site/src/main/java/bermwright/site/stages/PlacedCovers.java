// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;

/** Parts the mound of a site among its hulls: soil belongs to the hull whose axis is nearest. */
final class PlacedCovers {
    private PlacedCovers() {
    }

    /** One finished cover for each hull that has soil placed for it. */
    static List<PlacedCover> of(Plan plan, SiteCover site) {
        List<HullCover> covered = site.hulls().stream().filter(h -> h.volume() > 0).toList();
        List<Hull> hulls = covered.stream().map(h -> plan.hull(h.id()).orElseThrow()).toList();
        ElevationGrid ground = site.prepared();
        List<double[]> parts = parted(hulls, ground, site.finished());
        List<List<ElevationGrid>> finer = new ArrayList<>();
        hulls.forEach(h -> finer.add(new ArrayList<>()));
        for (int i = 0; i < ground.patches().size(); i++) {
            ElevationGrid bed = ground.patches().get(i);
            List<double[]> part = parted(hulls, bed, site.finished().patches().get(i));
            for (int k = 0; k < hulls.size(); k++) {
                finer.get(k).add(bed.withHeights(part.get(k)));
            }
        }
        List<PlacedCover> covers = new ArrayList<>();
        for (int k = 0; k < hulls.size(); k++) {
            Point middle = hulls.get(k).bed(ground.metres()).centre();
            List<Ring> toes = site.toes().stream().filter(t -> t.contains(middle)).toList();
            covers.add(new PlacedCover(hulls.get(k).id(), ground.withHeights(parts.get(k)).withPatches(
                    finer.get(k)), covered.get(k).volume(), toes));
        }
        return covers;
    }

    /** The surface over each hull's own soil, the bare ground elsewhere. */
    private static List<double[]> parted(List<Hull> hulls, ElevationGrid ground, ElevationGrid mound) {
        GridFrame frame = ground.frame();
        double[] natural = ground.heights();
        double[] finished = mound.heights();
        List<double[]> parts = new ArrayList<>();
        hulls.forEach(h -> parts.add(natural.clone()));
        for (int i = 0; i < natural.length; i++) {
            if (finished[i] > natural[i]) {
                Point place = new Point(frame.east(i % frame.columns()), frame.north(i / frame.columns()));
                int owner = nearest(hulls, place, ground.metres());
                if (owner >= 0) {
                    parts.get(owner)[i] = finished[i];
                }
            }
        }
        return parts;
    }

    private static int nearest(List<Hull> hulls, Point place, TrueMetres metres) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < hulls.size(); k++) {
            double distance = fromAxis(hulls.get(k), place, metres);
            if (distance < least) {
                least = distance;
                nearest = k;
            }
        }
        return nearest;
    }

    private static double fromAxis(Hull hull, Point place, TrueMetres metres) {
        if (hull.arrival() == Hull.Arrival.STAYS_UPRIGHT) {
            return hull.baseCentre().distance(place);
        }
        Azimuth way = hull.layDownAzimuth();
        Point base = hull.lyingBase(metres);
        double along = (place.east() - base.east()) * way.east() + (place.north() - base.north()) * way.north();
        double on = Math.max(0, Math.min(metres.onPlan(hull.length()), along));
        return place.distance(base.moved(way, on, 0));
    }
}
