// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Walls by diffusion and rooms by albedo, held against closed forms and against neutrons that walk by chance. */
class NeutronEnclosureLawTest {
    /** Sixty cells. */
    private static final double CELLS = 0.004;
    /** Diffusion theory a few mean free paths from a face, for soil that loses 0.04 of a collision. */
    private static final double THEORY = 0.015;
    /** What plane walls, a flat floor and emission even in all directions leave; largest seen 0.17. */
    private static final double SHAPE = 0.2;
    private static final int STARTS = 150_000;
    private static final double CHANCES = 3;
    private static final double ROUNDING = 1e-12;

    private static final double DIFFUSION = ChanceWalk.DIFFUSION;
    private static final double LENGTH = ChanceWalk.DIFFUSION_LENGTH;

    /** Lamarsh (1966), ch. 5: a half space gives back (1 - 2 D/L) / (1 + 2 D/L). */
    @Test
    void aHalfSpaceHasTheAlbedoOfDiffusionTheory() {
        double x = 2 * DIFFUSION / LENGTH;
        assertEquals((1 - x) / (1 + x), new SlowNeutrons(OneGroup.walking()).albedo(OneGroup.DEEP)[0][0], CELLS);
    }

    /** Chandrasekhar (1950), Radiative Transfer: 1 - H(mu) sqrt(1 - c) back of what comes at mu, H by iteration. */
    @Test
    void theAlbedoIsThatOfExactTransport() {
        assertEquals(exactAlbedo(1 - ChanceWalk.LOSS * ChanceWalk.MEAN_FREE_PATH),
                new SlowNeutrons(OneGroup.walking()).albedo(OneGroup.DEEP)[0][0], THEORY);
    }

    private static double exactAlbedo(double scattered) {
        int n = 200;
        double[] h = new double[n];
        Arrays.fill(h, 1);
        for (int turn = 0; turn < 100; turn++) {
            double[] next = new double[n];
            for (int i = 0; i < n; i++) {
                double mu = (i + 0.5) / n;
                double sum = 0;
                for (int k = 0; k < n; k++) {
                    double other = (k + 0.5) / n;
                    sum += other * h[k] / (mu + other) / n;
                }
                next[i] = 1 / (Math.sqrt(1 - scattered) + scattered / 2 * sum);
            }
            h = next;
        }
        double back = 0;
        for (int i = 0; i < n; i++) {
            double mu = (i + 0.5) / n;
            back += 2 * mu * (1 - h[i] * Math.sqrt(1 - scattered)) / n;
        }
        return back;
    }

    /** Without loss a slab lets through 4/3 over its mean free paths and twice Milne's 0.7104. */
    @ParameterizedTest
    @ValueSource(doubles = {4, 10, 30})
    void aSlabWithoutLossLetsThroughWhatMilneSays(double freePaths) {
        double through = 4.0 / 3 / (freePaths + 2 * 0.7104);
        double back = new SlowNeutrons(new OneGroup(4, 1e-9)).albedo(12 * freePaths)[0][0];
        assertEquals(through, 1 - back, through * THEORY);
    }

    /** Even source S in a half space: S L / (1 + 2 D/L) comes out. */
    @Test
    void anEvenSourceSendsOutWhatDiffusionTheorySays() {
        double out = new SlowNeutrons(OneGroup.walking()).emitted(OneGroup.DEEP, x -> new double[] {1})[0];
        assertEquals(LENGTH / (1 + 2 * DIFFUSION / LENGTH), out, out * CELLS);
    }

    /** Under level cover without end the floor gives as a wall would, and walls look as thick as the cover. */
    @ParameterizedTest
    @ValueSource(doubles = {15, 50, 180})
    void aRoomUnderLevelCoverIsThatOfWalks(double cover) {
        NeutronEnclosure.Walls walls = OneGroup.walking().room().walls();
        for (int i = 0; i < 200; i++) {
            walls.add(cover, cover / ((i + 0.5) / 200), 200 / (i + 0.5), 1.0 / 200);
        }
        within(walls.fluence()[0], new ChanceWalk(new ChanceWalk.Level(cover, 100), 5).fluence(2 * STARTS));
    }

    /** A sphere in free space, wider than its wall is thick. */
    @ParameterizedTest
    @ValueSource(doubles = {15, 50, 180})
    void aSphereIsThatOfWalks(double wall) {
        OneGroup group = OneGroup.walking();
        double[] made = new SlowNeutrons(group).emitted(wall,
                x -> new double[] {OneGroup.sky(0, x)[0] + OneGroup.sky(wall, wall - x)[0]});
        within(group.room().closed(wall, made)[0],
                new ChanceWalk(new ChanceWalk.Sphere(600, wall), 6).fluence(STARTS));
    }

    /** The shape that matters: a long cylinder on the ground under its mound. */
    @ParameterizedTest
    @CsvSource({"660, 15, 33", "660, 50, 33", "660, 180, 33", "660, 400, 33", "300, 180, 33", "660, 180, 25"})
    void aCylinderInItsMoundIsThatOfWalks(double radius, double cover, double slopeDeg) {
        MoundPlace mound = new MoundPlace(radius, cover, Math.toRadians(slopeDeg));
        NeutronEnclosure.Walls walls = OneGroup.walking().room().walls();
        mound.look(walls);
        within(walls.fluence()[0], new ChanceWalk(mound, 7).fluence(2 * STARTS));
    }

    private static void within(double ours, double[] walked) {
        assertEquals(walked[0], ours, SHAPE * walked[0] + CHANCES * walked[1]);
    }

    @Test
    void anOpenSkyLeavesWhatTheFloorSends() {
        NeutronEnclosure.Walls walls = OneGroup.walking().room().walls();
        walls.add(0, 0, 1, 1);
        assertArrayEquals(walls.fromFloor(), walls.fluence(), ROUNDING);
    }

    @Test
    void aRoomIsTheSameFromItsNumbers() {
        NeutronEnclosure room = OneGroup.walking().room();
        NeutronEnclosure again = NeutronEnclosure.of(room.numbers());
        NeutronEnclosure.Walls one = room.walls();
        NeutronEnclosure.Walls other = again.walls();
        one.add(123, 456, 2, 1);
        other.add(123, 456, 2, 1);
        assertArrayEquals(one.fluence(), other.fluence(), 0);
        double[] cut = Arrays.copyOf(room.numbers(), 40);
        assertThrows(IllegalArgumentException.class, () -> NeutronEnclosure.of(cut));
        assertThrows(IllegalArgumentException.class, () -> one.add(Double.NaN, 1, 1, 1));
    }
}
