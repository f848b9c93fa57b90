// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Require;
import java.util.Random;

/**
 * Rolling ground: waves of all lengths and directions, chosen by a seed, the long ones higher.
 *
 * <p>Amplitudes grow with the wave length to the power of the Hurst exponent, which makes the ground self-affine:
 * the typical height difference over a distance grows with that power of the distance, between the shortest and the
 * longest wave. For the Moon's surface the exponent lies between some 0.7 and 0.95 (from memory).
 */
public final class RollingGround implements Landform {
    private static final int WAVES_AN_OCTAVE = 7;

    /**
     * What the ground is like.
     *
     * @param rms      root mean square of the heights (m), zero or more
     * @param longest  longest wave (m), positive
     * @param shortest shortest wave (m), positive, not above {@code longest}
     * @param hurst    Hurst exponent (1), 0 to 1
     */
    public record Roughness(double rms, double longest, double shortest, double hurst) {
        /** Refuses waves that cannot be. */
        public Roughness {
            Require.notNegative("rms height", rms, "m");
            Require.positive("longest wave", longest, "m");
            Require.positive("shortest wave", shortest, "m");
            Require.that(shortest <= longest, "the shortest wave, %s m, is longer than the longest, %s m.", shortest,
                    longest);
            Require.within("Hurst exponent", hurst, 0, 1, "1");
        }
    }

    private final double[] eastNumber;
    private final double[] northNumber;
    private final double[] phase;
    private final double[] amplitude;

    private RollingGround(int waves) {
        eastNumber = new double[waves];
        northNumber = new double[waves];
        phase = new double[waves];
        amplitude = new double[waves];
    }

    /**
     * Rolling ground by a seed.
     *
     * @param seed      the seed; the same seed gives the same ground everywhere
     * @param roughness what the ground is like
     * @return the ground
     */
    public static RollingGround of(long seed, Roughness roughness) {
        Random random = new Random(seed);
        double octaves = StrictMath.log(roughness.longest / roughness.shortest) / StrictMath.log(2);
        int waves = WAVES_AN_OCTAVE * ((int) Math.floor(octaves) + 1);
        RollingGround ground = new RollingGround(waves);
        double squares = 0;
        for (int i = 0; i < waves; i++) {
            double length = roughness.longest * StrictMath.pow(2, -octaves * i / waves);
            double direction = 2 * Math.PI * random.nextDouble();
            double number = 2 * Math.PI / length;
            ground.eastNumber[i] = number * StrictMath.sin(direction);
            ground.northNumber[i] = number * StrictMath.cos(direction);
            ground.phase[i] = 2 * Math.PI * random.nextDouble();
            ground.amplitude[i] = StrictMath.pow(length / roughness.longest, roughness.hurst);
            squares += ground.amplitude[i] * ground.amplitude[i] / 2;
        }
        for (int i = 0; i < waves; i++) {
            ground.amplitude[i] *= roughness.rms / Math.sqrt(squares);
        }
        return ground;
    }

    @Override
    public double height(double east, double north) {
        double height = 0;
        for (int i = 0; i < amplitude.length; i++) {
            height += amplitude[i] * StrictMath.sin(eastNumber[i] * east + northNumber[i] * north + phase[i]);
        }
        return height;
    }
}
