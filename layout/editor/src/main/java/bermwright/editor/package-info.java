// SPDX-License-Identifier: Apache-2.0
/**
 * Starts the editor.
 */
package bermwright.editor;
