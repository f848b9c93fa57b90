// SPDX-License-Identifier: Apache-2.0
/**
 * What soil over a hull keeps off besides radiation: meteoroids, thrown soil, the heat and cold of the day.
 *
 * <p>Closed forms of published relations, without a plan; metres, kilograms, seconds, kelvins.
 */
package bermwright.shielding.hazard;
