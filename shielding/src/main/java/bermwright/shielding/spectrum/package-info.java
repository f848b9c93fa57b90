// SPDX-License-Identifier: Apache-2.0
/**
 * What arrives from outside: particles, energies, directions.
 */
package bermwright.shielding.spectrum;
