// SPDX-License-Identifier: Apache-2.0
/**
 * Builds a shielding scene from a plan and asks for dose.
 */
package bermwright.site.exposure;
