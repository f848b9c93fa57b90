// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

/**
 * What the soil does to a hull once it stands up to a height.
 *
 * @param height          height of the soil over the ground under the hull (m)
 * @param greatest        greatest pressure of soil on the upper half of the skin (Pa)
 * @param along           where that is, from the base plane (m)
 * @param aroundDeg       where that is, from the crown, in degrees
 * @param pressurised     inner pressure and stiffness over the greatest pressure (1); endless without soil
 * @param unpressurised   stiffness alone, ends held, over the greatest pressure (1); endless without soil, and not a
 *                        number where the shell is not known
 * @param sidePush        push on the hull while this lift lies on one side only (N/m)
 * @param slideResistance friction of the hull's weight and soil on its seat over that push (1); endless without push
 */
public record LiftLoad(double height, double greatest, double along, double aroundDeg, double pressurised,
        double unpressurised, double sidePush, double slideResistance) {
}
