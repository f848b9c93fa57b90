// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.statics;

import bermwright.lowering.body.Body;
import bermwright.lowering.body.TippingBody;

/**
 * The band of tilts around balance in which both lines must be taut, for nobody knows exactly where it is.
 *
 * @param balance      balance tilt of the stated centre of mass (rad)
 * @param massShare    half-width from two standard deviations of the centre of mass along the axis (rad)
 * @param sloshShare   half-width from liquid that runs to the low side (rad)
 * @param readingShare half-width for reading and setting the tilt (rad), one degree, common practice, no source
 */
public record HandOver(double balance, double massShare, double sloshShare, double readingShare) {
    private static final double READING = Math.toRadians(1);

    /**
     * The band of a body.
     *
     * <p>Liquid is taken at its worst: all of it running from the middle of the base to its rim on the lay-down side,
     * up to the radius.
     *
     * @param tipping the body on its pivot
     * @return the band
     */
    public static HandOver of(TippingBody tipping) {
        Body body = tipping.body();
        double off = tipping.pivotAhead() - body.centre().offAxis();
        double along = body.centre().along();
        double spread = Math.min(2 * body.centre().spread(), 0.9 * along);
        double mass = Math.max(Math.abs(Math.atan(off / (along - spread)) - Math.atan(off / along)),
                Math.abs(Math.atan(off / (along + spread)) - Math.atan(off / along)));
        double shift = body.residualPropellant() / body.mass() * body.outline().radius();
        double slosh = Math.abs(Math.atan((off - shift) / along) - Math.atan(off / along));
        return new HandOver(tipping.balanceTilt(), mass, slosh, READING);
    }

    /**
     * Half the width of the band.
     *
     * @return the half-width (rad)
     */
    public double halfWidth() {
        return massShare + sloshShare + readingShare;
    }

    /**
     * The tilt from which the lowering lines must be taut.
     *
     * @return the tilt (rad), zero or more
     */
    public double from() {
        return Math.max(0, balance - halfWidth());
    }

    /**
     * The hand-over tilt: from here on the lowering lines alone hold the hull, wherever the centre of mass is.
     *
     * @return the tilt (rad)
     */
    public double to() {
        return balance + halfWidth();
    }
}
