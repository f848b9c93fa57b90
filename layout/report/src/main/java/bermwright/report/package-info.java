// SPDX-License-Identifier: Apache-2.0
/**
 * Turns one assessment into pages, drawings and tables for planner, reviewer and excavation lead.
 */
package bermwright.report;
