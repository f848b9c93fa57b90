// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

/**
 * What covers are judged for besides radiation.
 *
 * @param perforationChance   greatest chance that a meteoroid perforates a hull in the stay (1), above 0 to 1
 * @param landings            landings on each pad in the stay
 * @param thrownSoil          soil that one of them throws about (kg), zero or more
 * @param surfaceTemperature  mean temperature of the ground's surface (K)
 * @param surfaceSwing        swing of that temperature in a lunar day, either way (K), zero or more
 * @param cabinTemperature    temperature inside the hulls (K)
 * @param conductivity        conductivity of placed soil (W/(m K)), above zero
 * @param specificHeat        specific heat of soil (J/(kg K)), above zero
 * @param quakeAcceleration   greatest acceleration of the ground in the stay (m/s2), zero or more
 * @param annotations         note, own keys and the keys given
 */
public record HazardPlan(double perforationChance, int landings, double thrownSoil, double surfaceTemperature,
        double surfaceSwing, double cabinTemperature, double conductivity, double specificHeat,
        double quakeAcceleration, Annotations annotations) {
    /** What the plan file prints for keys that are left out. */
    public static final HazardPlan USUAL = new HazardPlan(0.005, 1, 26_000, 216, 145, 295, 0.01, 670, 0.25,
            Annotations.NOTHING);
}
