// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.MapCamera;
import bermwright.foundation.Point;

/** How far something drawn reaches over a picture (pixels); nothing at first. */
final class Reach {
    private double left = Double.POSITIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double bottom = Double.NEGATIVE_INFINITY;

    void add(double x, double y, double around) {
        left = Math.min(left, x - around);
        right = Math.max(right, x + around);
        top = Math.min(top, y - around);
        bottom = Math.max(bottom, y + around);
    }

    void add(MapCamera camera, Point place, double around) {
        add(camera.x(place.east()), camera.y(place.north()), around);
    }

    void add(MapCamera camera, MapCamera.Box box, double around) {
        add(camera.x(box.west()), camera.y(box.north()), around);
        add(camera.x(box.east()), camera.y(box.south()), around);
    }

    /** What of it lies in a picture, with edges on multiples of a step, so that they seldom change. */
    Patch in(double width, double height, double step) {
        double x = Math.max(0, step * Math.floor(left / step));
        double y = Math.max(0, step * Math.floor(top / step));
        double w = Math.min(width, step * Math.ceil(right / step)) - x;
        double h = Math.min(height, step * Math.ceil(bottom / step)) - y;
        return new Patch(x, y, Math.max(0, w), Math.max(0, h));
    }

    /**
     * A part of a picture.
     *
     * @param x      left edge (pixels)
     * @param y      upper edge (pixels)
     * @param width  width (pixels); nothing where none of it is in sight
     * @param height height (pixels); nothing where none of it is in sight
     */
    record Patch(double x, double y, double width, double height) {
        boolean isEmpty() {
            return !(width > 0 && height > 0);
        }
    }
}
