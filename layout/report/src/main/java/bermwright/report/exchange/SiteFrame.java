// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

/**
 * The projected reference system of the places.
 *
 * @param name       its name
 * @param authority  who names it, such as {@code IAU}; empty where the file names none
 * @param code       its code there; empty where there is none
 * @param wellKnown  its definition as well-known text; empty where the elevation file carries none
 * @param metreScale true metres in one projected metre (1)
 */
public record SiteFrame(String name, String authority, String code, String wellKnown, double metreScale) {
}
