// SPDX-License-Identifier: Apache-2.0
/**
 * The three reports, each for one reader: surface planner, crew-safety reviewer and excavation lead.
 */
package bermwright.report.reader;
