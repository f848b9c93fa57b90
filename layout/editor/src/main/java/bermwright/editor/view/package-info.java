// SPDX-License-Identifier: Apache-2.0
/**
 * JavaFX nodes; no arithmetic.
 */
package bermwright.editor.view;
