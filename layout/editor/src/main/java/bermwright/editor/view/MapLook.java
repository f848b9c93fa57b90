// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

/**
 * How the map is drawn.
 *
 * @param isDark     whether for a dark window
 * @param textSize   size of text on the map (pixels)
 * @param hasGear    whether lines, poles, anchors and their zones are shown
 * @param hasSweeps  whether lowering sweeps are shown
 * @param hasCover   whether cover toes are shown
 * @param hasMarks   whether findings are marked
 */
public record MapLook(boolean isDark, double textSize, boolean hasGear, boolean hasSweeps, boolean hasCover,
        boolean hasMarks) {
    private static final double TEXT = 12;

    /**
     * The look at the first start.
     *
     * @return light, with everything shown
     */
    public static MapLook standard() {
        return new MapLook(false, TEXT, true, true, true, true);
    }

    /**
     * This look for another window.
     *
     * @param dark  whether dark
     * @param scale text size over the usual (1)
     * @return the changed look
     */
    public MapLook in(boolean dark, double scale) {
        return new MapLook(dark, TEXT * scale, hasGear, hasSweeps, hasCover, hasMarks);
    }
}
