// SPDX-License-Identifier: Apache-2.0
/**
 * Work off the screen thread, with progress and cancel.
 */
package bermwright.editor.run;
