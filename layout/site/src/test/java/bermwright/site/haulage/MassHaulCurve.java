// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.foundation.Ring;
import bermwright.terrain.earthworks.MassHaul;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The mass-haul curve of a site along one axis: from the middle of what is dug to the middle of what is placed.
 *
 * <p>Cut and fill are spread evenly over the extent of their outlines along the axis; volumes are bank volumes, so that
 * the curve ends at nothing. Ramps are left out.
 *
 * @param start     where the axis begins
 * @param azimuth   its direction
 * @param spacing   distance between stations (m)
 * @param ordinates bank volume dug and not yet placed at each station (m3)
 * @param moment    volume times way along the axis (m4)
 */
public record MassHaulCurve(Point start, Azimuth azimuth, double spacing, List<Double> ordinates, double moment) {
    /** Copies the ordinates. */
    public MassHaulCurve {
        ordinates = List.copyOf(ordinates);
    }

    /**
     * The curve of planned earthworks.
     *
     * @param input   what the earthworks were planned from
     * @param result  the earthworks
     * @param spacing distance between stations (m), above zero
     * @return the curve; empty where nothing is hauled or all of it stays in one place
     */
    public static Optional<MassHaulCurve> of(EarthworksInput input, EarthworksResult result, double spacing) {
        Require.positive("station spacing", spacing, "m");
        List<Haul> hauls = result.hauls().stream().filter(h -> h.kind() == SoilNeed.Kind.COVER
                || h.kind() == SoilNeed.Kind.FILL).toList();
        Map<String, Ring> areas = new HashMap<>();
        input.plan().borrowGrounds().forEach(b -> areas.put(b.id(), b.area()));
        input.offers().forEach(o -> areas.put(o.from(), o.area()));
        input.needs().forEach(n -> areas.put("to " + n.to(), n.mainOutline()));
        double bank = hauls.stream().mapToDouble(Haul::bank).sum();
        if (!(bank > 0)) {
            return Optional.empty();
        }
        Point dug = middle(hauls, bank, h -> areas.get(h.from()).centre());
        Point placed = middle(hauls, bank, h -> areas.get("to " + h.to()).centre());
        if (!(dug.distance(placed) > 0)) {
            return Optional.empty();
        }
        return Optional.of(new Axis(dug, Azimuth.from(dug, placed), input.ground().metres(), spacing)
                .curve(hauls, areas));
    }

    private interface Place {
        Point of(Haul haul);
    }

    private static Point middle(List<Haul> hauls, double bank, Place place) {
        double east = 0;
        double north = 0;
        for (Haul haul : hauls) {
            east += haul.bank() / bank * place.of(haul).east();
            north += haul.bank() / bank * place.of(haul).north();
        }
        return new Point(east, north);
    }

    private record Axis(Point origin, Azimuth azimuth, TrueMetres metres, double spacing) {
        MassHaulCurve curve(List<Haul> hauls, Map<String, Ring> areas) {
            double first = Double.POSITIVE_INFINITY;
            double last = Double.NEGATIVE_INFINITY;
            for (Haul haul : hauls) {
                for (Ring ring : List.of(areas.get(haul.from()), areas.get("to " + haul.to()))) {
                    first = Math.min(first, extent(ring)[0]);
                    last = Math.max(last, extent(ring)[1]);
                }
            }
            int count = Math.max(1, (int) Math.ceil((last - first) / spacing));
            double[] cut = new double[count];
            double[] fill = new double[count];
            for (Haul haul : hauls) {
                spread(cut, haul.bank(), extent(areas.get(haul.from())), first);
                spread(fill, haul.bank(), extent(areas.get("to " + haul.to())), first);
            }
            double[] ordinates = MassHaul.ordinates(cut, fill);
            List<Double> listed = new ArrayList<>(Arrays.stream(ordinates).boxed().toList());
            return new MassHaulCurve(metres.moved(origin, azimuth, first, 0), azimuth, spacing, listed,
                    MassHaul.moment(ordinates, spacing));
        }

        /** First and last place of an outline along the axis (m). */
        private double[] extent(Ring ring) {
            double[] along = ring.corners().stream().mapToDouble(p -> metres.length((p.east() - origin.east())
                    * azimuth.east() + (p.north() - origin.north()) * azimuth.north())).sorted().toArray();
            return new double[] {along[0], along[along.length - 1]};
        }

        private void spread(double[] into, double volume, double[] extent, double first) {
            double length = extent[1] - extent[0];
            for (int i = 0; i < into.length; i++) {
                double from = Math.max(extent[0], first + i * spacing);
                double to = Math.min(extent[1], first + (i + 1) * spacing);
                if (length > 0 && to > from) {
                    into[i] += volume * (to - from) / length;
                }
            }
        }
    }
}
