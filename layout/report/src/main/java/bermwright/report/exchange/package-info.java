// SPDX-License-Identifier: Apache-2.0
/**
 * Writes the open exchange formats other programs read.
 */
package bermwright.report.exchange;
