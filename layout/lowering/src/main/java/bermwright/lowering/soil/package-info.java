// SPDX-License-Identifier: Apache-2.0
/**
 * Regolith under gear: density and strength by depth, earth pressure, bearing, settlement.
 */
package bermwright.lowering.soil;
