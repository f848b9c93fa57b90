// SPDX-License-Identifier: Apache-2.0
/**
 * Turns a hull of the plan and its ground into a body and a rig, and words what lowering finds.
 */
package bermwright.site.laydown;
