// SPDX-License-Identifier: Apache-2.0
/**
 * Where a hull's axis lies once it is down, on the ground as it then is.
 *
 * <p>The pose is the one the plan intends: on the plane that fits the ground under the lying hull, lifted by a cradle,
 * lowered by a bed. What the real ground makes of it (contacts, rocking, rolling away) is lowering's rest pose.
 */
package bermwright.site.pose;
