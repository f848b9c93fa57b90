// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GeographicPlace;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.GroundFiles;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * What an elevation file holds, before any plan stands on it.
 *
 * @param file    the file with its grid, reference system and scales
 * @param middle  latitude and longitude of the grid's middle; absent where no reference system is known
 * @param missing nodes without a height (1)
 * @param slopes  slopes over the ground
 */
public record GroundSheet(GroundFile file, Optional<GeographicPlace> middle, long missing, Slopes slopes) {
    private static final double[] SHARES = {0.5, 0.9, 0.99, 1};

    /** Refuses null. */
    public GroundSheet {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(middle, "middle");
        Objects.requireNonNull(slopes, "slopes");
    }

    /**
     * Slopes (Horn 1981) that shares of the ground stay below; {@code NaN} where no node has a slope.
     *
     * @param median      half of it (rad)
     * @param ninety      nine tenths of it (rad)
     * @param ninetyNine  99 of 100 (rad)
     * @param greatest    all of it (rad)
     */
    public record Slopes(double median, double ninety, double ninetyNine, double greatest) {
    }

    /**
     * Reads an elevation file and looks it over.
     *
     * @param file     the file
     * @param progress told how far it has come
     * @return what it holds
     * @throws InputException if the file cannot be used
     */
    public static GroundSheet read(Path file, Progress progress) {
        GroundFile ground = GroundFiles.read(file, progress.part(0, 0.8));
        progress.check();
        progress.report(0.8, "slopes");
        double[] slopes = ground.slopeQuantiles(SHARES);
        GridFrame frame = ground.grid().frame();
        Optional<GeographicPlace> middle = ground.referenceSystem().map(s -> s.geographic(frame.centre()));
        progress.report(1, "slopes");
        return new GroundSheet(ground, middle, ground.missing(),
                new Slopes(slopes[0], slopes[1], slopes[2], slopes[3]));
    }
}
