// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A line or area measured on the map: true lengths and areas, azimuths from grid north, rise and slope of the ground.
 *
 * @param corners its corners, in order
 * @param metres  true metres
 * @param ground  the ground; without it nothing is said of heights
 */
record Measure(List<Point> corners, TrueMetres metres, Optional<ElevationGrid> ground) {
    Measure {
        corners = List.copyOf(corners);
    }

    /** Length of the whole line (m). */
    double length() {
        double sum = 0;
        for (int i = 1; i < corners.size(); i++) {
            sum += metres.distance(corners.get(i - 1), corners.get(i));
        }
        return sum;
    }

    /** The line in words: its last piece, and the whole where it has several. */
    String lineWords() {
        if (corners.size() < 2) {
            return UnitWords.place(corners.get(0));
        }
        Point from = corners.get(corners.size() - 2);
        Point to = corners.get(corners.size() - 1);
        double piece = metres.distance(from, to);
        List<String> said = new ArrayList<>();
        said.add(piece > 0 ? Readout.text("%.2f m, azimuth %.1f\u00b0 from grid north", piece,
                Azimuth.from(from, to).degrees()) : "0 m");
        if (corners.size() > 2) {
            said.add(Readout.text("%.2f m in all", length()));
        }
        ground.map(g -> new double[] {g.height(from), g.height(to)}).ifPresent(z -> said.add(
                Double.isNaN(z[0] + z[1]) ? "height not known" : rise(z[1] - z[0], piece)));
        return String.join("\n", said);
    }

    private static String rise(double rise, double way) {
        String slope = way > 0 ? Readout.text(", %.1f\u00b0 from end to end", Math.toDegrees(Math.atan(Math.abs(rise)
                / way))) : "";
        return Readout.text(rise < 0 ? "falls %.2f m%s" : "rises %.2f m%s", Math.abs(rise), slope);
    }

    /** The area in words. */
    String areaWords() {
        if (corners.size() < 3) {
            return lineWords();
        }
        List<Point> closed = new ArrayList<>(corners);
        closed.add(corners.get(0));
        double edge = new Measure(closed, metres, Optional.empty()).length();
        return Readout.text("%.0f m\u00b2, edge %.1f m", metres.area(new Ring(corners).area()), edge);
    }
}
