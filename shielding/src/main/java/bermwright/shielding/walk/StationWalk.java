// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.walk;

import bermwright.foundation.Progress;
import bermwright.foundation.Require;
import bermwright.foundation.Vec3;
import bermwright.shielding.dose.WalkSource;
import bermwright.shielding.raycast.SceneRays;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * The dose at a station of what reactions made on the way, by walks through the scene as it stands: hulls, mound,
 * ground, neighbours and open ways, without slabs, rooms or diffusion.
 *
 * <p>Each walk starts at the station with a particle and a direction, flies back to where it came from, draws what
 * made it there and goes on with that, until it leaves the scene or fades. At each step it counts what would have come
 * in straight from the sky the way its parent came. The mean of many walks is the dose; it has no error but chance and
 * the cross sections, which are those of the fast method. Batches are seeded one by one, so that the answer is the
 * same on any number of cores.
 */
public final class StationWalk {
    private static final int BATCH = 500;
    private static final int BATCHES = 16;

    private StationWalk() {
    }

    /**
     * Where walks begin and what they go by.
     *
     * @param source reactions, sources and doses
     * @param scene  the scene
     * @param point  where the dose is asked for, outside all skins
     */
    public record At(WalkSource source, SceneRays scene, Vec3 point) {
    }

    /**
     * How long to walk.
     *
     * @param error standard error at which walks stop, as a share of the mean and what is beside it (1), 0.002 to 0.5
     * @param enough standard error that is good enough in any case (Sv), zero or more
     * @param seed  seed of chance
     * @param most  walks after which to stop in any case (1), at least 8000
     */
    public record Asked(double error, double enough, long seed, long most) {
        /** Refuses errors that walks cannot reach. */
        public Asked {
            Require.within("asked error of walks", error, 0.002, 0.5, "1");
            Require.notNegative("error of walks that is good enough", enough, "Sv");
            Require.atLeast("walks", most, BATCH * BATCHES, "1");
        }

        /**
         * The same with another error that is good enough.
         *
         * @param error standard error (Sv), zero or more
         * @return the changed copy
         */
        public Asked withEnough(double error) {
            return new Asked(this.error, error, seed, most);
        }
    }

    /**
     * What walks found.
     *
     * @param fast    dose of fast hadrons, muons, electrons and gammas (Sv, a day's for cosmic rays)
     * @param slow    dose of neutrons below 20 MeV (Sv)
     * @param error   standard error of both together by chance (Sv)
     * @param walks   how many walks there were (1)
     * @param reached whether the asked error was reached
     */
    public record Found(double fast, double slow, double error, long walks, boolean reached) {
        /**
         * The same over another time.
         *
         * @param factor times (1), zero or more
         * @return the multiple
         */
        public Found times(double factor) {
            return new Found(fast * factor, slow * factor, error * factor, walks, reached);
        }
    }

    /** Sums of one batch: of what fast and slow starts gave, and of the squares. */
    private record Sums(double fast, double slow, double squares) {
    }

    /**
     * Walks until the error is reached.
     *
     * @param at       where walks begin and what they go by
     * @param beside   dose that is known without walks and counts in the error asked for (Sv), zero or more
     * @param asked    how long to walk
     * @param progress told how far the work has come; may cancel it
     * @return what was found
     */
    public static Found walk(At at, double beside, Asked asked, Progress progress) {
        Require.notNegative("dose beside the walks", beside, "Sv");
        double seconds = at.source.seconds();
        double fast = 0;
        double slow = 0;
        double squares = 0;
        long walks = 0;
        int first = 0;
        while (true) {
            Sums[] sums = round(at, asked.seed, first, progress);
            for (Sums s : sums) {
                fast += s.fast;
                slow += s.slow;
                squares += s.squares;
            }
            first += BATCHES;
            walks += (long) BATCH * BATCHES;
            double mean = (fast + slow) / walks;
            double error = Math.sqrt(Math.max(0, squares / walks - mean * mean) / walks);
            double share = error * seconds / (mean * seconds + beside);
            double wanted = Math.max(asked.error, asked.enough / (mean * seconds + beside));
            boolean reached = share <= wanted;
            progress.report(Math.min(1, Math.max(Math.pow(wanted / share, 2), (double) walks / asked.most)),
                    "walks, error " + Math.round(1000 * share) / 10.0 + " %");
            if (reached || walks >= asked.most) {
                double scale = seconds / walks;
                return new Found(fast * scale, slow * scale, error * seconds, walks, reached);
            }
        }
    }

    private static Sums[] round(At at, long seed, int first, Progress progress) {
        Sums[] sums = new Sums[BATCHES];
        AtomicInteger next = new AtomicInteger();
        int threads = Math.min(BATCHES, Runtime.getRuntime().availableProcessors());
        IntStream.range(0, threads).parallel().forEach(t -> {
            Walker walker = new Walker(at);
            for (int b = next.getAndIncrement(); b < BATCHES; b = next.getAndIncrement()) {
                progress.check();
                sums[b] = batch(walker, new SplittableRandom(seed + 1_000_003L * (first + b)));
            }
        });
        return sums;
    }

    private static Sums batch(Walker walker, SplittableRandom random) {
        double[] sums = new double[2];
        double squares = 0;
        for (int k = 0; k < BATCH; k++) {
            double one = walker.walk(random);
            sums[walker.startedSlow() ? 1 : 0] += one;
            squares += one * one;
        }
        return new Sums(sums[0], sums[1], squares);
    }
}
