// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

/** The stable slope, and the rounded cone of soil it makes over one point of skin. */
final class Repose {
    final double sin;
    final double cos;
    final double tan;

    Repose(double cosine) {
        cos = cosine;
        sin = Math.sqrt(1 - cosine * cosine);
        tan = sin / cosine;
    }

    static Repose of(double slope) {
        return new Repose(Math.cos(slope));
    }

    /** Height over a point of skin of the ball of the wanted thickness and the cone around it, at a distance. */
    double rise(double distance, double thickness) {
        return distance <= thickness * sin ? Math.sqrt(thickness * thickness - distance * distance)
                : thickness / cos - distance * tan;
    }
}
