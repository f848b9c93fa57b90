// SPDX-License-Identifier: Apache-2.0
/**
 * Where a hull's axis lies once it is down, on the ground as it then is.
 *
 * <p>It lies where lowering's rest pose says, its base on legs or shoes where it turned over them, nowhere inside the
 * ground; then it is lifted by a cradle or lowered into a bed as the plan intends.
 */
package bermwright.site.pose;
