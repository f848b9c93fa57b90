// SPDX-License-Identifier: Apache-2.0
/**
 * One worked site: an invented ground made from a seed, its plan, and the end-to-end run.
 */
package bermwright.demosite;
