// SPDX-License-Identifier: Apache-2.0
/**
 * What is wrong with a plan or worth knowing about it, and the catalogue of all rules a finding can come from.
 */
package bermwright.finding;
