// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.terrain.gridfile.GeographicPlace;
import bermwright.terrain.gridfile.GroundFiles;
import bermwright.terrain.gridfile.GroundSource;
import bermwright.terrain.relief.GroundStatistics;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What an elevation file of any size holds, before any plan stands on it.
 *
 * @param file       the file, closed; its frame, reference system, scales and manner can be asked for
 * @param middle     latitude and longitude of the grid's middle; absent where no reference system is known
 * @param statistics heights and slopes
 * @param cautions   what a user should know before trusting the file, in sentences; empty where nothing is odd
 */
public record GroundSheet(GroundSource file, Optional<GeographicPlace> middle, GroundStatistics statistics,
        List<String> cautions) {
    /** Refuses null; copies the list. */
    public GroundSheet {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(middle, "middle");
        Objects.requireNonNull(statistics, "statistics");
        cautions = List.copyOf(cautions);
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
        try (GroundSource ground = GroundFiles.open(file, GroundFiles.Knowledge.NONE, progress.part(0, 0.4))) {
            GroundStatistics statistics = GroundStatistics.of(ground, progress.part(0.4, 1));
            Optional<GeographicPlace> middle = ground.referenceSystem()
                    .map(s -> s.geographic(ground.frame().centre()));
            return new GroundSheet(ground, middle, statistics, ground.cautions());
        }
    }
}
