// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

/**
 * One figure of an assessment.
 *
 * @param subject what it is about, such as {@code A} or {@code A/bunks}
 * @param name    what it is
 * @param unit    its unit, {@code 1} for a pure number
 * @param value   its value, in {@code unit}; {@code NaN} where it is not known
 */
public record Figure(String subject, String name, String unit, double value) {
    /**
     * Its subject, name and unit, by which figures of two plans are matched.
     *
     * @return the words
     */
    public String key() {
        return subject + "|" + name + "|" + unit;
    }
}
