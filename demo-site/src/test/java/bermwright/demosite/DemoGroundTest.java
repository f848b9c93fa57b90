// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.HornSlope;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.GroundFiles;
import org.junit.jupiter.api.Test;

class DemoGroundTest {
    private static final GroundFile FILE = GroundFiles.read(Cli.DEMO.resolve("ground.tif"), GroundFiles.Knowledge.NONE,
            Progress.NONE);

    @Test
    void theCommittedFileIsWhatTheSeedMakes() {
        ElevationGrid made = DemoGround.grid();
        assertEquals(made.frame(), FILE.grid().frame());
        for (int row = 0; row < made.frame().rows(); row++) {
            for (int column = 0; column < made.frame().columns(); column++) {
                assertEquals(made.nodeHeight(row, column), FILE.grid().nodeHeight(row, column),
                        "row " + row + ", column " + column);
            }
        }
    }

    @Test
    void isLargeEnoughRollingAndHasACratersAndAScarp() {
        assertTrue(FILE.grid().frame().rows() >= 600 && FILE.grid().frame().columns() >= 600);
        assertEquals(1, FILE.grid().frame().spacing());
        double[] slopes = HornSlope.quantiles(FILE.grid(), 0.5, 0.99);
        assertTrue(Math.toDegrees(slopes[0]) > 1 && Math.toDegrees(slopes[0]) < 6, "median " + slopes[0]);
        assertTrue(Math.toDegrees(slopes[1]) > 15, "99 % " + slopes[1]);
        double behind = FILE.grid().height(DemoGround.at(560, 198));
        double ahead = FILE.grid().height(DemoGround.at(640, 102));
        assertTrue(behind - ahead > 10, "the scarp drops " + (behind - ahead));
    }

    @Test
    void carriesALunarPolarReferenceSystem() {
        assertEquals("IAU_2015:30135", FILE.referenceSystem().orElseThrow().code().orElseThrow());
        assertEquals(1_737_400, FILE.referenceSystem().orElseThrow().bodyRadius());
    }
}
