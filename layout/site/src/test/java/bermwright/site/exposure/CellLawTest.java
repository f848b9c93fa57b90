// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No answer hangs on the cell of the elevation file, nor on which way north is. */
class CellLawTest {
    private static final double SIDE = 300;
    private static final double[] CELLS = {0.25, 0.5, 1, 2, 5, 10, 20};
    private static final double DEPTH = 0.02;
    private static final double DOSE = 0.02;
    private static final double VOLUME = 0.005;
    private static final double TURNED = 1e-3;

    @TempDir
    static Path directory;

    private final Responses responses = new Responses(directory);

    private static double plane(double east, double north) {
        return 0.03 * east - 0.02 * north;
    }

    private static double smooth(double east, double north) {
        return plane(east, north) + 0.8 * Math.sin(east / 70) * Math.cos(north / 60);
    }

    /** A bowl of 110 m, 5 m deep, with the hull on its side. */
    private static double bowl(double east, double north) {
        double away = Math.hypot(east - 170, north - 150) / 55;
        return away < 1 ? 5 * (away * away - 1) : 0;
    }

    private static ElevationGrid sampled(DoubleBinaryOperator height, double cell) {
        int nodes = (int) (SIDE / cell) + 1;
        ElevationGrid file = ElevationGrid.sampled(new GridFrame(nodes, nodes, 0, 0, cell), height);
        return file.refined((int) Math.max(1, Math.ceil(cell)));
    }

    private static Plan plan(Point place, double azimuthDeg) {
        return SamplePlans.plan(List.of(SamplePlans.hull("A", place, azimuthDeg)));
    }

    private record Answer(double depth, double volume, List<String> findings, double uncertainty, double dose) {
    }

    private Answer answer(Plan plan, ElevationGrid ground, boolean withDose) {
        SiteCover cover = SiteCover.raised(plan, ground, ground);
        HullCover hull = cover.hull("A").orElseThrow();
        double dose = !withDose ? 0 : SiteDose.of(plan, cover, new DoseSources(responses, directory), Progress.NONE)
                .stations().get(0).covered().best();
        return new Answer(hull.least().depth(), hull.volume(), cover.findings().stream().map(f -> f.rule().id())
                .filter(r -> r.contains("hatch") || r.equals("cover-thin")).toList(), hull.uncertainty().volume(),
                        dose);
    }

    @Test
    void onAPlaneAndASmoothSlopeEveryCellGivesTheSame() {
        Plan plan = plan(new Point(120, 150), 75);
        List<DoubleBinaryOperator> grounds = List.of(CellLawTest::plane, CellLawTest::smooth);
        for (DoubleBinaryOperator ground : grounds) {
            Answer fine = answer(plan, sampled(ground, CELLS[0]), true);
            for (double cell : CELLS) {
                boolean withDose = cell == 1 || cell == 5 || cell == 20;
                Answer coarse = answer(plan, sampled(ground, cell), withDose);
                String where = "cells of " + cell + " m: " + coarse + " against " + fine;
                assertEquals(fine.depth, coarse.depth, DEPTH, where);
                assertEquals(fine.volume, coarse.volume, VOLUME * fine.volume, where);
                assertEquals(fine.findings, coarse.findings, where);
                if (withDose) {
                    assertEquals(fine.dose, coarse.dose, DOSE * fine.dose, where);
                }
            }
        }
    }

    @Test
    void inABowlTheVolumeStaysWithinItsStatedSpreadAndTheDepthIsKept() {
        Plan plan = plan(new Point(120, 150), 75);
        Answer fine = answer(plan, sampled(CellLawTest::bowl, CELLS[0]), false);
        for (double cell : CELLS) {
            Answer coarse = answer(plan, sampled(CellLawTest::bowl, cell), false);
            String where = "cells of " + cell + " m: " + coarse + " against " + fine;
            assertEquals(fine.depth, coarse.depth, DEPTH, where);
            assertTrue(Math.abs(coarse.volume - fine.volume) <= 2 * Math.max(coarse.uncertainty, 0.001 * fine.volume),
                    where);
        }
    }

    @Test
    void turningTheSiteByAQuarterOrMirroringItChangesNothing() {
        for (double cell : new double[] {1, 5}) {
            Answer first = answer(plan(new Point(120, 150), 60), sampled(CellLawTest::smooth, cell), true);
            Answer turned = answer(plan(new Point(150, SIDE - 120), 150),
                    sampled((e, n) -> smooth(SIDE - n, e), cell), true);
            Answer mirrored = answer(plan(new Point(SIDE - 120, 150), 300),
                    sampled((e, n) -> smooth(SIDE - e, n), cell), true);
            for (Answer other : List.of(turned, mirrored)) {
                String where = "cells of " + cell + " m: " + first + " and " + other;
                assertEquals(first.depth, other.depth, TURNED * first.depth, where);
                assertEquals(first.volume, other.volume, TURNED * first.volume, where);
                assertEquals(first.dose, other.dose, TURNED * first.dose, where);
                assertEquals(first.findings, other.findings, where);
            }
        }
    }
}
