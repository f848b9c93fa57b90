// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class SyntheticGroundPinnedTest {
    /** The same on every machine to the last bits; a change means that grounds made before cannot be made again. */
    private static final double LAST_BITS = 1e-11;
    private static final int PARTS = 121;
    private static final double FIRST = 1204.8308818980095;
    private static final double SECOND = 1192.5450787726927;

    @Test
    void aGroundCanBeMadeAgain() {
        SyntheticGround.Recipe recipe = new SyntheticGround.Recipe(new Point(0, 0), new Point(400, 300),
                new InclinedPlane(new Point(200, 150), 1200, Math.toRadians(2), Azimuth.ofDegrees(130)),
                new RollingGround.Roughness(1.5, 250, 6, 0.85),
                new SyntheticGround.Strewing(4, 60, 0.2, 0.2, 0.9), List.of(),
                List.of(new Scarp(new Point(320, 0), Azimuth.ofDegrees(80), 9, Math.toRadians(18))));
        Landforms ground = SyntheticGround.of(recipe, 20261125);
        assertEquals(PARTS, ground.parts().size());
        assertEquals(FIRST, ground.height(123.5, 77.25), LAST_BITS);
        assertEquals(SECOND, ground.height(350, 200), LAST_BITS);
    }
}
