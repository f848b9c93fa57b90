// SPDX-License-Identifier: Apache-2.0
/**
 * The drawings and tables of an assessment, subject by subject, as values for pages, files and editor.
 *
 * <p>Nothing is computed here: every figure is the assessment's own, brought to kN, t, degrees, g/cm2 and mSv in one
 * place.
 */
package bermwright.report.sheet;
