// SPDX-License-Identifier: Apache-2.0
/**
 * Edits as sealed records, plan in, plan out; undo is the earlier plan.
 */
package bermwright.editor.edit;
