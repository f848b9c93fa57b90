// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Progress;
import java.util.function.Consumer;

/** Who scores the blocks of a survey: the processors of this machine, or a cluster. */
public interface BlockSpread {
    /**
     * Has every block scored once.
     *
     * @param order    the survey
     * @param sink     takes the blocks in any order, one at a time
     * @param progress told how far it has come; asked whether to stop
     */
    void score(SurveyOrder order, Consumer<ScoredBlock> sink, Progress progress);

    /**
     * Where the work is done, in words.
     *
     * @return such as {@code 2 processors of this machine}
     */
    String words();

    /** Clusters that this program can use; found by name, so that nothing of them is needed where none is asked for. */
    interface OfCluster {
        /**
         * The spread over a cluster.
         *
         * @param master where its master is
         * @return the spread
         */
        BlockSpread on(String master);
    }
}
