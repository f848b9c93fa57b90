// SPDX-License-Identifier: Apache-2.0
/**
 * Runs all checks in order; the one result that command line and editor both show.
 */
package bermwright.site.assessment;
