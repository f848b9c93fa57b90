// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.transport.NeutronEnclosure;
import java.util.function.ToDoubleFunction;

/**
 * A room as transport has it, in doses.
 *
 * @param fluences slow neutrons of the room by its walls
 * @param weight   dose of a fluence by group (Sv or Gy-Eq)
 * @param seconds  seconds of what the dose is counted over (s)
 */
record TransportRoom(NeutronEnclosure fluences, ToDoubleFunction<double[]> weight,
        double seconds) implements DiffuseRoom {
    private static final double KG_M2 = 10;

    @Override
    public Sky sky() {
        return new Walls(fluences.walls(), this);
    }

    private record Walls(NeutronEnclosure.Walls walls, TransportRoom room) implements Sky {
        @Override
        public void add(double across, double along, double slant, double share) {
            walls.add(across / KG_M2, along / KG_M2, slant, share);
        }

        @Override
        public void add(Sky other, double share) {
            walls.add(((Walls) other).walls, share);
        }

        @Override
        public double total() {
            return room.weight.applyAsDouble(walls.fluence()) * room.seconds;
        }

        @Override
        public double fromFloor() {
            return room.weight.applyAsDouble(walls.fromFloor()) * room.seconds;
        }
    }
}
