// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.foundation.Require;
import bermwright.site.burial.ShellBuckling.ThinShell;

/**
 * A bare thin shell on saddles, after Zick: how much of its round bends as a beam over a saddle, and how hard the
 * saddle's upper edge, its horn, bends the wall.
 *
 * <p>Made for steel vessels on two saddles that hold 120 to 150 degrees, without rings near the saddles. A ring in the
 * plane of a saddle takes the bending at the horn off the wall; a cradle under the whole length has no such edge.
 *
 * @see "Zick (1951), Stresses in large horizontal cylindrical pressure vessels on two saddle supports (from memory)"
 */
public final class SaddleShell {
    /** Least angle of contact that Zick's figures are for, in degrees. */
    public static final double LEAST_CONTACT_DEG = 120;
    /** Greatest angle of contact that Zick's figures are for, in degrees. */
    public static final double GREATEST_CONTACT_DEG = 150;
    /** Length over radius from which a shell counts as long (1). */
    private static final double LONG = 8;
    /** Share of the wall beside a saddle that helps it, times the root of radius and wall (1). */
    private static final double HELPING_WALL = 1.56;

    private SaddleShell() {
    }

    /**
     * One saddle and what it bears.
     *
     * @param load    what it bears (N), zero or more
     * @param contact angle of the round that it holds (rad), above zero, up to half a turn
     * @param width   its width along the hull (m), positive
     * @param fromEnd its middle from the nearer end (m), zero or more
     */
    public record Saddle(double load, double contact, double width, double fromEnd) {
        /** Refuses saddles without size. */
        public Saddle {
            Require.notNegative("load of the saddle", load, "N");
            Require.within("contact of the saddle", contact, Math.nextUp(0.0), Math.PI, "rad");
            Require.positive("width of the saddle", width, "m");
            Require.notNegative("saddle from the end", fromEnd, "m");
        }
    }

    /**
     * The share of the section's strength that an unstiffened shell keeps over a saddle: the upper part of the round
     * gives way sideways, an arc of the contact angle and a sixth of the rest bends.
     *
     * @param contact angle of contact (rad), above zero, up to half a turn
     * @return K1 for the crown (1), so that the section modulus is K1 pi R2 t
     */
    public static double keptOverSaddle(double contact) {
        double arc = Math.PI / 6 + 5 * contact / 12;
        double sin = Math.sin(arc);
        return (arc + sin * Math.cos(arc) - 2 * sin * sin / arc) / (Math.PI * (sin / arc - Math.cos(arc)));
    }

    /**
     * The moment in the wall at the horn over load and radius.
     *
     * @param contact       angle of contact (rad), above zero, up to half a turn
     * @param fromEndRadii  saddle from the nearer end over the radius (1), zero or more: an end within half a radius
     *                      holds the shell round and takes three quarters
     * @return K6 (1)
     */
    public static double hornMoment(double contact, double fromEndRadii) {
        double b = Math.PI - contact / 2;
        double sin = Math.sin(b);
        double cos = Math.cos(b);
        double ratio = sin / b * (sin / b);
        double ring = ratio - 0.5 - Math.sin(2 * b) / (4 * b);
        double free = (0.75 * cos * ratio - 1.25 * sin * cos * cos / b + cos * cos * cos / 2 - sin / (4 * b) + cos / 4
                - b * sin * ring) / (2 * Math.PI * ring);
        return Math.abs(free) * Math.min(1, Math.max(0.25, 1.5 * fromEndRadii - 0.5));
    }

    /**
     * The stress in the wall at the horn: the saddle's push spread over its width and a strip of wall, and bending of
     * the wall over the lesser of four radii and half the length.
     *
     * @param saddle the saddle
     * @param shell  the shell
     * @param radius radius (m), positive
     * @param length length (m), positive
     * @return the stress (Pa), zero or more
     */
    public static double hornStress(Saddle saddle, ThinShell shell, double radius, double length) {
        double wall = shell.thickness();
        double moment = hornMoment(saddle.contact, saddle.fromEnd / radius);
        double push = saddle.load / (4 * wall * (saddle.width + HELPING_WALL * Math.sqrt(radius * wall)));
        double bending = length >= LONG * radius ? 3 * moment * saddle.load / (2 * wall * wall)
                : 12 * moment * saddle.load * radius / (length * wall * wall);
        return push + bending;
    }
}
