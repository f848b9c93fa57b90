// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

/**
 * Dose of slow neutrons in a room. They do not fly straight but fill it: each piece of wall sends in what its own cover
 * makes and lets through, and gives back a part of what reaches it.
 */
public interface DiffuseRoom {
    /**
     * Begins with nothing around a station.
     *
     * @return a sky to add directions to
     */
    Sky sky();

    /** What a station sees above the horizontal. */
    interface Sky {
        /**
         * Adds a direction.
         *
         * @param across distance of the wall there from the outer face of its cover (kg/m2), zero or more; zero where
         *               there is no wall
         * @param along  cover along the ray (kg/m2), zero or more
         * @param slant  how much longer than thick the way through the cover is (1), 1 or more
         * @param share  share of the directions above the horizontal (1); all together are 1
         */
        void add(double across, double along, double slant, double share);

        /**
         * Adds all that another sky of the same room holds.
         *
         * @param other the other sky
         * @param share what each of its directions counts here (1), zero or more
         */
        void add(Sky other, double share);

        /**
         * Dose of slow neutrons at the station, those of the floor among them.
         *
         * @return effective dose (Sv per day or per event), zero or more
         */
        double total();

        /**
         * The part that comes up from the floor and has been nowhere else.
         *
         * @return effective dose (Sv per day or per event), at most the total
         */
        double fromFloor();
    }
}
