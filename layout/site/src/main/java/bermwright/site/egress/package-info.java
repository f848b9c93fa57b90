// SPDX-License-Identifier: Apache-2.0
/**
 * Ways out of buried hulls, and how long the way to the storm shelter takes.
 */
package bermwright.site.egress;
