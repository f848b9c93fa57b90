// SPDX-License-Identifier: Apache-2.0
/**
 * From areal density or fluence to dose, always with an uncertainty.
 */
package bermwright.shielding.dose;
