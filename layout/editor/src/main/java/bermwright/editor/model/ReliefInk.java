// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

/** The colour of one pixel of ground, from shade, slope band and contour. */
final class ReliefInk {
    private ReliefInk() {
    }

    /** 0 for no line, 1 for a contour line, 2 for every {@code indexEvery}-th of them. */
    static int contour(double[] hereRightBelow, double interval, int indexEvery) {
        double here = Math.floor(hereRightBelow[0] / interval);
        double right = Math.floor(hereRightBelow[1] / interval);
        double below = Math.floor(hereRightBelow[2] / interval);
        if (here == right && here == below || Double.isNaN(right + below)) {
            return 0;
        }
        double line = Math.max(here, Math.max(right, below));
        return line % indexEvery == 0 ? 2 : 1;
    }

    static int colour(ReliefLook look, int shade, SlopeBand band, int contour, int place) {
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
        if (contour > 0) {
            double strength = contour == 2 ? 0.6 : 0.3;
            double ink = look.isDark() ? 235 : 40;
            red += strength * (ink - red);
            green += strength * (ink * 0.9 - green);
            blue += strength * (ink * 0.75 - blue);
        }
        return 0xFF000000 | clamp(red) << 16 | clamp(green) << 8 | clamp(blue);
    }

    private static int clamp(double value) {
        return value <= 0 ? 0 : value >= 255 ? 255 : (int) value;
    }
}
