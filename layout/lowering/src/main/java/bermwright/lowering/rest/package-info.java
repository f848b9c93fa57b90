// SPDX-License-Identifier: Apache-2.0
/**
 * How a hull comes to rest on real ground: where it touches, how it lies, whether it rolls away.
 */
package bermwright.lowering.rest;
