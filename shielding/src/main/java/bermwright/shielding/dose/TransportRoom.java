// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.transport.SlowRoom;

/**
 * A room as transport has it, in doses.
 *
 * @param fluences slow neutrons of the room by its walls
 * @param seconds  seconds of what the dose is counted over (s)
 */
record TransportRoom(SlowRoom fluences, double seconds) implements DiffuseRoom {
    private static final double KG_M2 = 10;

    @Override
    public Sky sky() {
        SlowRoom.Walls walls = fluences.walls();
        return new Sky() {
            @Override
            public void add(double across, double along, double share) {
                walls.add(across / KG_M2, along / KG_M2, share);
            }

            @Override
            public double total() {
                return BodyDose.slow(walls.fluence()) * seconds;
            }

            @Override
            public double fromFloor() {
                return BodyDose.slow(walls.fromFloor()) * seconds;
            }
        };
    }
}
