// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Require;
import bermwright.foundation.Vec3;
import bermwright.shielding.raycast.SceneRays;
import bermwright.shielding.raycast.SkyRays;
import bermwright.shielding.raycast.SkySweep;

/**
 * A picture of the sky as a station sees it: areal density in cells of equal solid angle.
 *
 * <p>Sectors run clockwise from grid north; bands have equal shares of the sine of the elevation, from the horizon up.
 * Drawn with the radius sqrt(1 - sine) they make an equal-area disc with the zenith in the middle.
 */
public final class SkyPicture {
    private final int sectors;
    private final int bands;
    private final double[] cells;

    private SkyPicture(int sectors, int bands, double[] cells) {
        this.sectors = sectors;
        this.bands = bands;
        this.cells = cells;
    }

    /**
     * Looks along the middle of every cell.
     *
     * @param scene           the scene, ready for rays
     * @param station         where to look from
     * @param skinEquivalence what one unit of skin counts as in soil (1)
     * @param sectors         sectors of azimuth (1), positive
     * @param bands           bands of elevation (1), positive
     * @return the picture
     */
    public static SkyPicture of(SceneRays scene, Vec3 station, double skinEquivalence, int sectors, int bands) {
        Require.that(sectors > 0 && bands > 0, "a sky picture of %s x %s cells; at least 1 x 1 is needed", sectors,
                bands);
        double[] sines = new double[bands];
        for (int b = 0; b < bands; b++) {
            sines[b] = (b + 0.5) / bands;
        }
        double[] cells = new double[sectors * bands];
        SkySweep sweep = scene.from(station);
        SkyRays rays = new SkyRays();
        for (int s = 0; s < sectors; s++) {
            sweep.look(new Azimuth((s + 0.5) * 2 * Math.PI / sectors), sines, rays);
            for (int b = 0; b < bands; b++) {
                cells[s * bands + b] = rays.placed(b) + rays.inPlace(b) + rays.skin(b) * skinEquivalence;
            }
        }
        return new SkyPicture(sectors, bands, cells);
    }

    /**
     * How many sectors there are.
     *
     * @return the number (1)
     */
    public int sectors() {
        return sectors;
    }

    /**
     * How many bands there are.
     *
     * @return the number (1)
     */
    public int bands() {
        return bands;
    }

    /**
     * The areal density in the middle of a cell.
     *
     * @param sector sector (1), 0 begins at grid north
     * @param band   band (1), 0 is the lowest
     * @return areal density (kg/m2)
     */
    public double arealDensity(int sector, int band) {
        return cells[sector * bands + band];
    }
}
