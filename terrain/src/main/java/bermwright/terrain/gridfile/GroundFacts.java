// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.util.List;
import java.util.Optional;

/**
 * What a reader found in a file.
 *
 * @param format    its format in words
 * @param ground    its heights, as the file has them
 * @param overviews the same ground with fewer nodes, finest first
 * @param system    the reference system; absent where the file names none
 * @param heights   how the file keeps its heights
 * @param sayings   what its reader noticed, in sentences
 */
record GroundFacts(String format, StoredGround ground, List<StoredGround> overviews, Optional<ReferenceSystem> system,
        GroundFile.Heights heights, List<String> sayings) {
}
