// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Reading a curve between its points. */
class DoseCurveTest {
    private static final double ROUNDING = 1e-12;
    private static final Band BAND = new Band(0.5, 2);
    private static final DoseCurve CURVE = new DoseCurve(Response.Per.DAY, List.of(
            new DoseCurve.Point(0, new Particles(0, 0, 4, 0, 0, 0, 0), BAND, Band.NONE),
            new DoseCurve.Point(100, new Particles(0.5, 0.5, 0, 0, 0, 0, 0), BAND, Band.NONE)), List.of(),
            Optional.empty(),
            DoseCurve.Slants.NONE);

    @Test
    void thePointsAreKept() {
        assertEquals(CURVE.points().get(0).isotropic(), CURVE.at(0));
        assertEquals(CURVE.points().get(1).isotropic(), CURVE.at(100));
    }

    @Test
    void betweenThemTheDoseIsTheGeometricMeanAndSharesAreMixed() {
        Particles middle = CURVE.at(50);
        assertEquals(2, middle.total(), ROUNDING);
        assertEquals(1, middle.protons(), ROUNDING);
        assertEquals(0.5, middle.fastNeutrons(), ROUNDING);
        assertEquals(0.5, middle.neutronShare(), ROUNDING);
    }

    @Test
    void beyondTheLastPointItStays() {
        assertEquals(1, CURVE.at(5000).total(), ROUNDING);
    }

    @Test
    void whatIsNoDepthIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> CURVE.at(-1));
        assertThrows(IllegalArgumentException.class, () -> CURVE.at(Double.NaN));
        assertThrows(IllegalArgumentException.class,
                () -> new DoseCurve(Response.Per.DAY, List.of(), List.of(), Optional.empty(),
                        DoseCurve.Slants.NONE));
    }
}
