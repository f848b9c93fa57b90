// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

/** The sizes of sheets, landscape, after ISO 216. */
public enum SheetSize {
    /** 420 mm by 297 mm. */
    A3(420, 297),
    /** 841 mm by 594 mm. */
    A1(841, 594);

    private final double width;
    private final double height;

    SheetSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /**
     * Its width.
     *
     * @return the width (mm)
     */
    public double width() {
        return width;
    }

    /**
     * Its height.
     *
     * @return the height (mm)
     */
    public double height() {
        return height;
    }
}
