// SPDX-License-Identifier: Apache-2.0
package bermwright.spark;

import bermwright.site.survey.BlockSpread;

/** Found by the command line where this module is on its class path. */
public final class SparkCluster implements BlockSpread.OfCluster {
    /** Partitions where none are asked for (1): a lost worker costs one of them. */
    private static final int USUAL_PARTITIONS = 4096;

    @Override
    public BlockSpread on(String master) {
        return new SparkSpread(master, USUAL_PARTITIONS);
    }
}
