// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.foundation.ModelNote;
import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.DiffuseRoom;
import bermwright.shielding.dose.Response;
import java.util.Optional;

/** A response that falls as e^(-x/length), and slow neutrons as e^(-x/slowLength) where that is not 0, for tests. */
record Decay(double length, double deepest, double groundReturn, double slowLength, Band solar, double soilGammas)
        implements Response {
    Decay(double length, double deepest, double groundReturn, double slowLength, Band solar) {
        this(length, deepest, groundReturn, slowLength, solar, 0);
    }

    Decay(double length) {
        this(length, 1e9, 0);
    }

    Decay(double length, double deepest, double groundReturn) {
        this(length, deepest, groundReturn, 0);
    }

    Decay(double length, double deepest, double groundReturn, double slowLength) {
        this(length, deepest, groundReturn, slowLength, Band.NONE);
    }

    @Override
    public double isotropicDose(double arealDensity) {
        return 2 * Math.exp(-arealDensity / length) + diffuseDose(arealDensity);
    }

    @Override
    public double diffuseDose(double arealDensity) {
        return slowLength > 0 ? 2 * Math.exp(-arealDensity / slowLength) : 0;
    }

    @Override
    public Optional<DiffuseRoom> room() {
        return slowLength > 0 ? Optional.of(Sum::new) : Optional.empty();
    }

    /** A room whose walls each give their own dose, and nothing back. */
    private final class Sum implements DiffuseRoom.Sky {
        private double sum;

        @Override
        public void add(double across, double along, double slant, double share) {
            sum += share * diffuseDose(across);
        }

        @Override
        public void add(DiffuseRoom.Sky other, double share) {
            sum += ((Sum) other).sum * share;
        }

        @Override
        public double total() {
            return sum;
        }

        @Override
        public double fromFloor() {
            return 0;
        }
    }

    @Override
    public double openGroundReturn() {
        return groundReturn;
    }

    @Override
    public Band band(double arealDensity) {
        return new Band(0.5, 2);
    }

    @Override
    public Band solarBand(double arealDensity) {
        return solar;
    }

    @Override
    public double skinEquivalence() {
        return 0.5;
    }

    @Override
    public Per per() {
        return Per.DAY;
    }

    @Override
    public ModelNote note() {
        return new ModelNote("decay", "e^(-x/length)", "tests", "none", ModelNote.Status.COMPUTED, "tests");
    }
}
