// SPDX-License-Identifier: Apache-2.0
/**
 * One self-contained page and tables as text: headings, words, tables and drawings, all user text escaped.
 */
package bermwright.report.page;
