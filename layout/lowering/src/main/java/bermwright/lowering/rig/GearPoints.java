// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Vec3;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import java.util.ArrayList;
import java.util.List;

/**
 * Where every part of a rig stands in space, in lay-down coordinates: x along the fitted ground in the lay-down
 * azimuth from the pivot line, y to the left of the lay-down plane, z along the ground's normal.
 *
 * <p>What stands on the ground stays where it is; lugs move with the hull, so
 * {@link #lines(TippingBody, Lug, double)} and {@link #pullOver(TippingBody, PullOver, double)} ask for the tilt.
 * Straight lines without sag. In the coordinates of a site see {@code bermwright.site.laydown.GearInSpace}, which
 * stands each part on its own ground.
 *
 * @param reeving which line runs over which pole
 * @param poles   the poles, from right to left; empty where the lines run straight to the winches
 * @param winches the winch of each line, from right to left
 * @param stays   the stays, set by set, each from right to left
 */
public record GearPoints(Reeving reeving, List<PolePoints> poles, List<Vec3> winches, List<StayPoints> stays) {
    /** Copies the lists. */
    public GearPoints {
        poles = List.copyOf(poles);
        winches = List.copyOf(winches);
        stays = List.copyOf(stays);
    }

    /**
     * A pole.
     *
     * @param foot its foot
     * @param head the sheaves at its head
     */
    public record PolePoints(Vec3 foot, Vec3 head) {
    }

    /**
     * A stay.
     *
     * @param set    number of its set in the rig
     * @param pole   number of the pole that it holds
     * @param head   where it is made fast to the head
     * @param anchor where it reaches the ground
     */
    public record StayPoints(int set, int pole, Vec3 head, Vec3 anchor) {
    }

    /**
     * A line from the hull to its winch.
     *
     * @param lug   where it is made fast to the hull
     * @param lead  where it leads to: the head of its pole; the winch where there are no poles
     * @param winch its winch
     */
    public record LinePath(Vec3 lug, Vec3 lead, Vec3 winch) {
        /**
         * The direction in which the line pulls its lug.
         *
         * @return the direction, of length one
         */
        public Vec3 pull() {
            return lead.minus(lug).direction();
        }

        /**
         * The length of line from lug to winch.
         *
         * @return the length (m)
         */
        public double length() {
            return lead.minus(lug).norm() + winch.minus(lead).norm();
        }
    }

    /**
     * The points of a rig.
     *
     * @param rig the rig
     * @return its points
     */
    public static GearPoints of(Rig rig) {
        Reeving reeving = rig.reeving();
        List<PolePoints> poles = new ArrayList<>();
        List<StayPoints> stays = new ArrayList<>();
        if (rig.poles().isPresent()) {
            Poles given = rig.poles().get();
            for (int i = 0; i < reeving.poles(); i++) {
                double left = reeving.poleLeft(i);
                poles.add(new PolePoints(given.foot().leftBy(left), given.head().leftBy(left)));
            }
            for (int set = 0; set < rig.stays().size(); set++) {
                Stay stay = rig.stays().get(set);
                for (int i = 0; i < reeving.stays(stay.halfSpread()); i++) {
                    int pole = reeving.poleOfStay(i);
                    stays.add(new StayPoints(set, pole, poles.get(pole).head(),
                            stay.anchorAt().leftBy(reeving.stayLeft(i, stay.halfSpread()))));
                }
            }
        }
        List<Vec3> winches = new ArrayList<>();
        for (int i = 0; i < reeving.lines(); i++) {
            winches.add(rig.lines().winch().at().leftBy(reeving.winchLeft(i)));
        }
        return new GearPoints(reeving, poles, winches, stays);
    }

    /**
     * The lowering lines at a tilt.
     *
     * @param tipping the body on its pivot
     * @param lug     where the lines are made fast to it
     * @param tilt    tilt (rad), 0 standing
     * @return the lines, from right to left
     */
    public List<LinePath> lines(TippingBody tipping, Lug lug, double tilt) {
        PlanePoint at = tipping.point(lug.along(), lug.offAxis(), tilt);
        List<LinePath> paths = new ArrayList<>();
        for (int i = 0; i < reeving.lines(); i++) {
            Vec3 winch = winches.get(i);
            Vec3 lead = poles.isEmpty() ? winch : poles.get(reeving.poleOf(i)).head();
            paths.add(new LinePath(at.leftBy(reeving.lugLeft(i)), lead, winch));
        }
        return paths;
    }

    /**
     * The pull-over line at a tilt.
     *
     * @param tipping the body on its pivot
     * @param over    the pull-over line
     * @param tilt    tilt (rad), 0 standing
     * @return the line; its lead is its winch
     */
    public static LinePath pullOver(TippingBody tipping, PullOver over, double tilt) {
        Vec3 winch = over.anchorAt().leftBy(0);
        return new LinePath(tipping.point(over.lug().along(), over.lug().offAxis(), tilt).leftBy(0), winch, winch);
    }

    /**
     * The stays of a pole.
     *
     * @param pole number of the pole
     * @return its stays
     */
    public List<StayPoints> staysOf(int pole) {
        return stays.stream().filter(s -> s.pole() == pole).toList();
    }
}
