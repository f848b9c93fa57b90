// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Soil;
import bermwright.shielding.scene.WallSolid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is not the same in two scenes: hulls, walls, and tiles of the soil's cells. What is compared is all that a ray
 * can meet, value by value, so that a ray that passes none of it crosses the very same in both.
 */
public final class SceneChange {
    private final SceneRays before;
    private final SceneRays after;
    private final boolean isWhole;
    private final List<HullSolid> hulls = new ArrayList<>();
    private final List<WallSolid> walls = new ArrayList<>();
    private final Map<List<SoilField>, Optional<boolean[]>> tiles = new HashMap<>();

    private SceneChange(SceneRays before, SceneRays after) {
        this.before = before;
        this.after = after;
        Soil was = before.scene().soil();
        Soil is = after.scene().soil();
        boolean sameOrder = differing(before.scene().hulls(), after.scene().hulls(), hulls)
                & differing(before.scene().walls(), after.scene().walls(), walls);
        isWhole = !sameOrder || was.placedDensity() != is.placedDensity() || !was.inPlace().equals(is.inPlace());
    }

    /**
     * Compares two scenes.
     *
     * @param before the one
     * @param after  the other
     * @return what differs
     */
    public static SceneChange between(SceneRays before, SceneRays after) {
        return new SceneChange(before, after);
    }

    /** Collects what only one of two lists holds; false where what both hold does not stand in the same order. */
    private static <T> boolean differing(List<T> before, List<T> after, List<T> into) {
        List<T> kept = new ArrayList<>(before);
        kept.retainAll(after);
        List<T> still = new ArrayList<>(after);
        still.retainAll(before);
        before.stream().filter(b -> !after.contains(b)).forEach(into::add);
        after.stream().filter(a -> !before.contains(a)).forEach(into::add);
        return kept.equals(still);
    }

    /**
     * The change as seen from a station that stands in both scenes.
     *
     * @param station where to look from, over the grid
     * @return the azimuths it reaches
     */
    public SkyChange from(Vec3 station) {
        SoilFields was = before.fields(station);
        SoilFields is = after.fields(station);
        if (isWhole || !isAlike(was, is)) {
            return SkyChange.everywhere();
        }
        SkyChange change = SkyChange.of(station, hulls, walls);
        change.take(is.near(), tiles(was.near(), is.near()));
        if (is.far().isPresent()) {
            change.take(is.far().get(), tiles(was.far().orElseThrow(), is.far().get()));
        }
        return change;
    }

    /** Whether rays run through both in the same way: the same nodes, and soil placed or dug in both or in neither. */
    private static boolean isAlike(SoilFields was, SoilFields is) {
        return was.far().isPresent() == is.far().isPresent() && isAlike(was.near(), is.near())
                && (is.far().isEmpty() || isAlike(was.far().get(), is.far().get()))
                && isPlain(was) == isPlain(is);
    }

    private static boolean isAlike(SoilField was, SoilField is) {
        return was.rows == is.rows && was.columns == is.columns && was.west == is.west && was.south == is.south
                && was.spacing == is.spacing;
    }

    private static boolean isPlain(SoilFields fields) {
        return fields.near().inPlace == fields.near().finished
                && fields.far().map(f -> f.inPlace == f.finished).orElse(true);
    }

    /** Tiles in which any height differs; none where all are the same. */
    private Optional<boolean[]> tiles(SoilField was, SoilField is) {
        return tiles.computeIfAbsent(List.of(was, is), pair -> Arrays.equals(was.finished, is.finished)
                && Arrays.equals(was.natural, is.natural) ? Optional.empty() : Optional.of(differing(was, is)));
    }

    private static boolean[] differing(SoilField was, SoilField is) {
        boolean[] changed = new boolean[is.tiles.rows * is.tiles.columns];
        for (int row = 0; row < is.rows; row++) {
            for (int column = 0; column < is.columns; column++) {
                int node = row * is.columns + column;
                if (Double.compare(was.finished[node], is.finished[node]) != 0
                        || Double.compare(was.natural[node], is.natural[node]) != 0) {
                    mark(is.tiles, row, column, changed);
                }
            }
        }
        return changed;
    }

    /** Marks the tiles that a node belongs to, those at whose edge it stands among them. */
    private static void mark(Tiles tiles, int row, int column, boolean[] changed) {
        int top = Math.min(row >> Tiles.SHIFT, tiles.rows - 1);
        int right = Math.min(column >> Tiles.SHIFT, tiles.columns - 1);
        for (int r = Math.max(0, row - 1) >> Tiles.SHIFT; r <= top; r++) {
            for (int c = Math.max(0, column - 1) >> Tiles.SHIFT; c <= right; c++) {
                changed[r * tiles.columns + c] = true;
            }
        }
    }
}
