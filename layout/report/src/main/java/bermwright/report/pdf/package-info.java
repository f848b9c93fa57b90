// SPDX-License-Identifier: Apache-2.0
/**
 * Turns a page into a tagged PDF with its fonts inside, the same bytes from the same page.
 */
package bermwright.report.pdf;
