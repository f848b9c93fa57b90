// SPDX-License-Identifier: Apache-2.0
/**
 * What poles, lines, sheaves, brakes and slings bear, by closed forms and published codes.
 */
package bermwright.lowering.strength;
