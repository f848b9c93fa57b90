// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.thrust;

import bermwright.foundation.Require;

/**
 * How fast a hull tilts on its way: evenly speeding up over the first degrees, a set rate, and evenly slowing down
 * from a tilt on to a rate at contact.
 *
 * @param rate        set rate (rad/s), positive
 * @param rampAngle   tilt over which the rate is reached (rad), positive
 * @param slowFrom    tilt from which it slows down (rad), more than the ramp
 * @param contactRate rate at contact (rad/s), positive, at most the set rate
 */
public record RateProfile(double rate, double rampAngle, double slowFrom, double contactRate) {
    /** Refuses profiles that stand still or run backwards. */
    public RateProfile {
        Require.positive("tilting rate", rate, "rad/s");
        Require.positive("ramp", rampAngle, "rad");
        Require.that(slowFrom > rampAngle && slowFrom < Math.PI / 2,
                "slowing down from %s rad; accepted: after the ramp of %s rad and before lying.", slowFrom, rampAngle);
        Require.positive("rate at contact", contactRate, "rad/s");
        Require.that(contactRate <= rate, "rate at contact is %s rad/s; accepted: at most the rate of %s rad/s.",
                contactRate, rate);
    }

    /**
     * The usual profile: the rate reached in three degrees, slowing from eighty on.
     *
     * @param rate        set rate (rad/s), positive
     * @param contactRate rate at contact (rad/s), positive; the set rate counts where that is less
     * @return the profile
     */
    public static RateProfile usual(double rate, double contactRate) {
        return new RateProfile(rate, Math.toRadians(3), Math.toRadians(80), Math.min(rate, contactRate));
    }

    /**
     * The parts of the way, each with an even change of rate.
     *
     * @param rest tilt at rest (rad)
     * @return the parts in order
     */
    Part[] parts(double rest) {
        return new Part[] {new Part(0, rampAngle, 0, rate), new Part(rampAngle, slowFrom, rate, rate),
            new Part(slowFrom, rest, rate, contactRate)};
    }

    /** A part of the way from one tilt (rad) and rate (rad/s) to another. */
    record Part(double from, double to, double rateFrom, double rateTo) {
        double time() {
            return 2 * (to - from) / (rateFrom + rateTo);
        }

        double change() {
            return (rateTo - rateFrom) / time();
        }
    }
}
