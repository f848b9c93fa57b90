// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

/** The colour of one pixel of ground, from shade and slope band. */
final class ReliefInk {
    private ReliefInk() {
    }

    /** The colour of ground whose height is not known: hatched, so that it is told apart without its colour. */
    static int unknown(ReliefLook look, int x, int y) {
        boolean ink = (x + y) % 8 == 0;
        return look.isDark() ? ink ? 0xFF3D3350 : 0xFF2A2333 : ink ? 0xFFA99FBA : 0xFFCFC7DA;
    }

    static int colour(ReliefLook look, int shade, SlopeBand band, int place) {
        double light = look.isShaded() ? shade / 255.0 : 0.7;
        double grey = look.isDark() ? 22 + 130 * light : 88 + 160 * light;
        double red = grey;
        double green = grey * 0.985;
        double blue = grey * (look.isDark() ? 1.02 : 0.955);
        if (band != SlopeBand.LEVEL) {
            double strength = band.hasInk(place >>> 16, place & 0xFFFF) ? 0.85 : 0.28;
            red += strength * ((band.colour() >> 16 & 255) - red);
            green += strength * ((band.colour() >> 8 & 255) - green);
            blue += strength * ((band.colour() & 255) - blue);
        }
        return 0xFF000000 | clamp(red) << 16 | clamp(green) << 8 | clamp(blue);
    }

    private static int clamp(double value) {
        return value <= 0 ? 0 : value >= 255 ? 255 : (int) value;
    }
}
