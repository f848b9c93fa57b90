// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Azimuth;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.gridfile.GeographicPlace;
import bermwright.terrain.gridfile.GroundSource;
import bermwright.terrain.relief.Horizon;
import bermwright.terrain.relief.LightSurface;
import bermwright.terrain.relief.SurfaceStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Horizon towards relays and hours of sunlight at the middle of each square of {@link SurveySquares}, from the file's
 * coarser overview, worked out for whole areas of squares and only where something could lie.
 *
 * <p>Areas are counted from the corner of the file, so that no figure hangs on how the survey is cut.
 */
final class FarSight {
    /** A relay this far over the horizon has its full margin (rad). */
    static final double FULL_SIGHT = Math.toRadians(2);
    private static final int SQUARES_OF_AN_AREA = 32;
    private static final int AREAS_KEPT = 16;
    private static final double COARSE = 20;
    private static final int MOST_CELLS = 1200;

    private final HeightSource far;
    private final SurveyLimits limits;
    private final SurveySquares squares;
    private final GridFrame fine;
    private final List<LightSurface> lights;
    private final Map<Long, Area> areas = new LinkedHashMap<>();

    /** What is seen from the squares of an area: for each relay its height over the horizon, for each light hours. */
    private record Area(double[][] relays, double[][] lights) {
    }

    FarSight(GroundSource ground, SurveyLimits limits, SurveySquares squares) {
        this.limits = limits;
        this.squares = squares;
        this.fine = ground.frame();
        this.far = isAsked() ? far(ground, limits) : ground;
        this.lights = limits.lights().isEmpty() ? List.of() : lights(ground, limits);
    }

    boolean isAsked() {
        return !limits.relays().isEmpty() || !limits.lights().isEmpty();
    }

    private static HeightSource far(GroundSource ground, SurveyLimits limits) {
        HeightSource far = ground;
        for (HeightSource overview : ground.overviews()) {
            far = overview.trueSpacing() <= COARSE ? overview : far;
        }
        if (limits.sightReach() > MOST_CELLS * far.trueSpacing()) {
            throw InputException.badValue(new InputException.Place(ground.file().toString(), 0, "overviews"),
                    "none with cells of " + Math.ceil(limits.sightReach() / MOST_CELLS) + " to " + COARSE + " m",
                    "for horizon and light over " + limits.sightReach() + " m a file with overviews (gdaladdo "
                    + ground.file().getFileName() + " 2 4 8 16), or a shorter reach");
        }
        return far;
    }

    private List<LightSurface> lights(GroundSource ground, SurveyLimits wanted) {
        GeographicPlace middle = ground.referenceSystem().map(s -> s.geographic(fine.centre())).orElseThrow(() ->
                InputException.badValue(new InputException.Place(ground.file().toString(), 0, "reference system"),
                        "none", "a file that says where it lies, so that the sun's way is known"));
        List<LightSurface> list = new ArrayList<>();
        for (SurveyLimits.Sunlight l : wanted.lights()) {
            list.add(new LightSurface(new LightSurface.Stay(Math.toRadians(middle.latitudeDeg()),
                    Math.toRadians(middle.longitudeDeg()), ground.scale().trueNorth().orElse(new Azimuth(0)), l.from(),
                    l.to()), wanted.sightReach(), far.trueSpacing()));
        }
        return list;
    }

    /** What is seen at a node: for each relay its height over the horizon (rad), then for each light hours (h). */
    double[] at(int row, int column) {
        int squareRow = squares.of(row);
        int squareColumn = squares.of(column);
        int areaRow = Math.floorDiv(squareRow, SQUARES_OF_AN_AREA);
        int areaColumn = Math.floorDiv(squareColumn, SQUARES_OF_AN_AREA);
        long key = ((long) areaRow << 32) | areaColumn;
        Area area = areas.get(key);
        if (area == null) {
            if (areas.size() >= AREAS_KEPT) {
                areas.remove(areas.keySet().iterator().next());
            }
            area = area(areaRow, areaColumn);
            areas.put(key, area);
        }
        int i = (squareRow - areaRow * SQUARES_OF_AN_AREA) * SQUARES_OF_AN_AREA
                + squareColumn - areaColumn * SQUARES_OF_AN_AREA;
        double[] seen = new double[area.relays.length + area.lights.length];
        for (int k = 0; k < seen.length; k++) {
            seen[k] = k < area.relays.length ? area.relays[k][i] : area.lights[k - area.relays.length][i];
        }
        return seen;
    }

    /** The least of the margins of what is seen; below zero where something is not. */
    double margin(double[] seen) {
        double least = 1;
        for (int i = 0; i < seen.length; i++) {
            int light = i - limits.relays().size();
            double margin = light < 0 ? Math.min(1, seen[i] / FULL_SIGHT)
                    : 1 - limits.lights().get(light).leastHours() / seen[i];
            least = margin < least || Double.isNaN(margin) ? margin : least;
        }
        return Double.isNaN(least) ? -1 : least;
    }

    private Area area(int areaRow, int areaColumn) {
        int count = SQUARES_OF_AN_AREA * SQUARES_OF_AN_AREA;
        double[][] relays = new double[limits.relays().size()][count];
        double[][] hours = new double[lights.size()][count];
        int[] rows = nodes(areaRow, fine.south(), far.frame().south(), far.frame().rows());
        int[] columns = nodes(areaColumn, fine.west(), far.frame().west(), far.frame().columns());
        NodeRange block = new NodeRange(rows[0], columns[0], rows[SQUARES_OF_AN_AREA - 1] - rows[0] + 1,
                columns[SQUARES_OF_AN_AREA - 1] - columns[0] + 1);
        for (int l = 0; l < lights.size(); l++) {
            float[] all = SurfaceStream.block(far, lights.get(l), block);
            for (int i = 0; i < count; i++) {
                hours[l][i] = all[(rows[i / SQUARES_OF_AN_AREA] - rows[0]) * block.columns()
                        + columns[i % SQUARES_OF_AN_AREA] - columns[0]];
            }
        }
        if (relays.length > 0) {
            relays(block, rows, columns, relays);
        }
        return new Area(relays, hours);
    }

    private void relays(NodeRange block, int[] rows, int[] columns, double[][] into) {
        int cells = (int) Math.ceil(limits.sightReach() / far.trueSpacing()) + 2;
        ElevationGrid around = far.window(block.widened(Math.max(1, cells), far.frame()));
        for (int k = 0; k < into.length; k++) {
            SurveyLimits.Relay relay = limits.relays().get(k);
            for (int i = 0; i < into[k].length; i++) {
                Point place = new Point(far.frame().east(columns[i % SQUARES_OF_AN_AREA]),
                        far.frame().north(rows[i / SQUARES_OF_AN_AREA]));
                into[k][i] = around.isMissing(place) ? Double.NaN : relay.elevation() - Horizon.towards(around, place,
                        relay.eye(), limits.sightReach(), relay.direction()).elevation();
            }
        }
    }

    /** The far ground's rows or columns nearest the middles of an area's squares. */
    private int[] nodes(int area, double fineFrom, double farFrom, int count) {
        int[] nodes = new int[SQUARES_OF_AN_AREA];
        for (int i = 0; i < nodes.length; i++) {
            double node = ((double) area * SQUARES_OF_AN_AREA + i + 0.5) * squares.nodes() - 0.5;
            double place = fineFrom + node * fine.spacing();
            nodes[i] = (int) Math.max(0, Math.min(count - 1, Math.rint((place - farFrom) / far.frame().spacing())));
        }
        return nodes;
    }
}
