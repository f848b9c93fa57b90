// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

/** Draws thin lines into a picture, their edges smoothed by sharing each step between the two nearest pixels. */
final class ContourInk {
    private final int[] pixels;
    private final int width;
    private final int height;
    private final int red;
    private final int green;
    private final int blue;

    ContourInk(int[] pixels, int width, boolean isDark) {
        this.pixels = pixels;
        this.width = width;
        this.height = pixels.length / width;
        this.red = isDark ? 235 : 40;
        this.green = (int) (red * 0.9);
        this.blue = (int) (red * 0.75);
    }

    /** A line between two places (pixels), of a strength from 0 to 1. */
    void line(double x0, double y0, double x1, double y1, double strength) {
        boolean isSteep = Math.abs(y1 - y0) > Math.abs(x1 - x0);
        double a0 = isSteep ? y0 : x0;
        double b0 = isSteep ? x0 : y0;
        double a1 = isSteep ? y1 : x1;
        double b1 = isSteep ? x1 : y1;
        if (a0 > a1) {
            line(x1, y1, x0, y0, strength);
            return;
        }
        double most = isSteep ? height : width;
        if (a1 < 0 || a0 >= most) {
            return;
        }
        double slope = a1 > a0 ? (b1 - b0) / (a1 - a0) : 0;
        int first = (int) Math.max(0, Math.floor(a0));
        int last = (int) Math.min(most - 1, Math.floor(a1));
        for (int a = first; a <= last; a++) {
            // How much of this step the line covers, so that pieces of a line join without darker joints.
            double covered = Math.min(a + 1.0, a1) - Math.max(a, a0);
            double b = b0 + slope * (Math.max(a, Math.min(a + 0.5, a1)) - a0) - 0.5;
            int low = (int) Math.floor(b);
            double share = b - low;
            point(isSteep, a, low, strength * covered * (1 - share));
            point(isSteep, a, low + 1, strength * covered * share);
        }
    }

    private void point(boolean isSteep, int a, int b, double strength) {
        int x = isSteep ? b : a;
        int y = isSteep ? a : b;
        if (x < 0 || y < 0 || x >= width || y >= height || !(strength > 0)) {
            return;
        }
        int under = pixels[y * width + x];
        if (under >>> 24 != 255) {
            return;
        }
        pixels[y * width + x] = 0xFF000000 | mixed(under >> 16 & 255, red, strength) << 16
                | mixed(under >> 8 & 255, green, strength) << 8 | mixed(under & 255, blue, strength);
    }

    private static int mixed(int from, int to, double share) {
        return (int) Math.round(from + share * (to - from));
    }
}
