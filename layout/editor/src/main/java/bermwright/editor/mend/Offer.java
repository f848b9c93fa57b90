// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import bermwright.editor.edit.PlanEdit;

/**
 * An edit that mends a finding.
 *
 * @param words   what it does, such as {@code Widen the pole feet to 2.6 m²}
 * @param edit    the edit
 * @param isTried whether the check that made the finding was done with it and does not find it at its level any
 *                more; else the value follows from the finding's own figures and shows in the next answers
 */
public record Offer(String words, PlanEdit edit, boolean isTried) {
}
