// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * What becomes of a lowering for landings all over the dispersion, the gear staying where it was set out.
 *
 * @param radius landing dispersion (m), positive
 * @param swing  how far the hull was let swing to either side (rad)
 * @param centre how far the centre of mass was shifted to either end, two standard deviations (m)
 * @param spots  the landings tried, the planned one first
 */
public record LandingDisc(double radius, double swing, double centre, List<Spot> spots) {
    /** Copies the list. */
    public LandingDisc {
        spots = List.copyOf(spots);
    }

    /**
     * One landing inside the dispersion.
     *
     * @param ahead  how far ahead of the planned place along the azimuth (m)
     * @param left   how far to the left of it (m)
     * @param eased  the hardest lowering line with the centre of mass as stated, swung the way that eases it most
     * @param worst  the hardest lowering line of all swings and centres of mass
     * @param turn   greatest angle in plan between the lines and the lay-down plane, without swing (rad)
     * @param turnAt tilt of that angle (rad)
     * @param side   greatest pull of the lines across the plane, without swing (N)
     * @param lifts  whether a shoe or foot lifts with some swing or centre of mass
     */
    public record Spot(double ahead, double left, Pull eased, Pull worst, double turn, double turnAt, double side,
            boolean lifts) {
        /**
         * Where it is, in words.
         *
         * @return such as {@code 1.1 m behind and 1.1 m to the left}
         */
        public String where() {
            if (ahead == 0 && left == 0) {
                return "at the planned place";
            }
            String along = Math.abs(ahead) < 0.005 ? "" : metres(ahead) + (ahead > 0 ? " ahead" : " behind");
            String across = Math.abs(left) < 0.005 ? "" : metres(left) + " to the " + (left > 0 ? "left" : "right");
            return along.isEmpty() || across.isEmpty() ? along + across : along + " and " + across;
        }

        private static String metres(double distance) {
            return String.format(Locale.ROOT, "%.1f m", Math.abs(distance));
        }
    }

    /**
     * A tension with what it comes from.
     *
     * @param tension tension of the hardest lowering line (N)
     * @param tilt    tilt (rad)
     * @param swing   swing to the left (rad)
     * @param centre  shift of the centre of mass towards the far end (m)
     */
    public record Pull(double tension, double tilt, double swing, double centre) {
    }

    /**
     * The landing that asks most of a lowering line.
     *
     * @return the landing
     */
    public Spot worst() {
        return spots.stream().max(Comparator.comparingDouble(s -> s.worst().tension())).orElseThrow();
    }

    /**
     * The landing that asks most of a lowering line even where the hull swings the way that eases it most.
     *
     * @return the landing
     */
    public Spot easedWorst() {
        return spots.stream().max(Comparator.comparingDouble(s -> s.eased().tension())).orElseThrow();
    }

    /**
     * The landing from which the lines lead furthest out of the lay-down plane.
     *
     * @return the landing
     */
    public Spot mostTurned() {
        return spots.stream().max(Comparator.comparingDouble(Spot::turn)).orElseThrow();
    }
}
