// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Progress;
import java.io.Closeable;

/** Scores blocks of a survey one after the other; belongs to one thread. */
public final class BlockWorker implements Closeable {
    private final SurveyOrder order;
    private final SurveySetup setup;
    private final boolean isOwner;
    private final BlockScorer scorer;

    private BlockWorker(SurveyOrder order, SurveySetup setup, boolean isOwner) {
        this.order = order;
        this.setup = setup;
        this.isOwner = isOwner;
        this.scorer = new BlockScorer(setup, side(order), true);
    }

    /**
     * A worker that opens the elevation file itself.
     *
     * @param order the survey
     * @return the worker, to be closed
     */
    public static BlockWorker open(SurveyOrder order) {
        return new BlockWorker(order, SurveySetup.open(order, Progress.NONE), true);
    }

    static BlockWorker of(SurveyOrder order, SurveySetup setup) {
        return new BlockWorker(order, setup, false);
    }

    private static int side(SurveyOrder order) {
        return Math.min(SurveyOrder.SIDE, Math.max(order.window().rows(), order.window().columns()));
    }

    /**
     * Scores a block.
     *
     * @param number the block's number in the order
     * @return what was found in it
     */
    public ScoredBlock score(int number) {
        return scorer.score(order.block(number), order.mapSquare());
    }

    @Override
    public void close() {
        if (isOwner) {
            setup.close();
        }
    }
}
