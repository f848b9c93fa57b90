// SPDX-License-Identifier: Apache-2.0
/**
 * The site as it stands after each step of the work.
 */
package bermwright.site.stages;
