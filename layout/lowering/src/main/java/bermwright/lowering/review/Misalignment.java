// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.foundation.Require;
import bermwright.foundation.Vec3;

/**
 * A hull that stands beside the plane its gear was set out in, or has swung round.
 *
 * @param left  how far to the left of that plane it stands (m)
 * @param swing how far it has turned about the middle of its pivot line, positive to the left (rad)
 */
public record Misalignment(double left, double swing) {
    /** In its plane. */
    public static final Misalignment NONE = new Misalignment(0, 0);

    /** Refuses what is no number. */
    public Misalignment {
        Require.finite("distance to the left", left, "m");
        Require.within("swing", swing, -Math.PI / 2, Math.PI / 2, "rad");
    }

    /** A point of the gear as the hull then sees it. */
    Vec3 seen(Vec3 gear) {
        double y = gear.y() - left;
        double cos = Math.cos(swing);
        double sin = Math.sin(swing);
        return new Vec3(gear.x() * cos + y * sin, y * cos - gear.x() * sin, gear.z());
    }
}
