// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A way over the lattice pulled straight wherever a straight run is open and no dearer, so that its length is not that
 * of a lattice's sixteen directions.
 *
 * @param nodes    lattice points at its bends, both ends included
 * @param length   length (m)
 * @param levelled cost there and back, halved (m of level way)
 * @param up       rise (m)
 * @param down     fall (m)
 */
record PulledWay(List<Integer> nodes, double length, double levelled, double up, double down) {
    /** Longest run tried, in lattice points. */
    private static final int LONGEST = 128;
    private static final double NO_DEARER = 1e-9;

    private record Run(double length, double levelled, double up, double down) {
        static final Run NONE = new Run(0, 0, 0, 0);

        Run plus(Run other) {
            return new Run(length + other.length, levelled + other.levelled, up + other.up, down + other.down);
        }
    }

    static PulledWay of(HaulGround ground, HaulWays ways, List<Integer> way) {
        List<Integer> bends = new ArrayList<>();
        bends.add(way.get(0));
        Run sum = Run.NONE;
        int at = 0;
        while (at < way.size() - 1) {
            int reach = Math.min(LONGEST, way.size() - 1 - at);
            Optional<Run> run = Optional.empty();
            while (run.isEmpty() && reach > 1) {
                double allowed = ways.costTo(way.get(at + reach)) - ways.costTo(way.get(at)) + NO_DEARER;
                run = straight(ground, way.get(at), way.get(at + reach)).filter(r -> r.levelled <= allowed);
                reach = run.isPresent() ? reach : reach / 2;
            }
            sum = sum.plus(run.isPresent() ? run.get() : step(ground, way.get(at), way.get(at + reach)));
            at += reach;
            bends.add(way.get(at));
        }
        return new PulledWay(bends, sum.length, sum.levelled, sum.up, sum.down);
    }

    /** One step from a lattice point to its neighbour, as the search counted it. */
    private static Run step(HaulGround ground, int from, int to) {
        double length = ground.distance(from, ground.place(to));
        double rise = ground.height(to) - ground.height(from);
        return new Run(length, ground.cost(length, rise), Math.max(0, rise), Math.max(0, -rise));
    }

    /** A straight run over open ground, empty where something closed lies under it. */
    private static Optional<Run> straight(HaulGround ground, int from, int to) {
        int columns = ground.columns();
        double row = from / columns;
        double column = from % columns;
        double rows = to / columns - row;
        double across = to % columns - column;
        int pieces = (int) Math.ceil(Math.max(Math.abs(rows), Math.abs(across)));
        double length = Math.hypot(rows, across) * ground.trueStep() / pieces;
        double before = ground.height(from);
        Run run = Run.NONE;
        for (int i = 1; i <= pieces; i++) {
            double r = row + rows * i / pieces;
            double c = column + across * i / pieces;
            if (!ground.isOpenAround(r, c)) {
                return Optional.empty();
            }
            double height = ground.heightAt(r, c);
            double rise = height - before;
            run = run.plus(new Run(length, ground.cost(length, rise), Math.max(0, rise), Math.max(0, -rise)));
            before = height;
        }
        return Optional.of(run);
    }
}
