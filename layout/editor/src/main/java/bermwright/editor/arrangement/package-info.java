// SPDX-License-Identifier: Apache-2.0
/**
 * Long searches about a plan, with progress and cancel: arrangements, and what is in doubt.
 */
package bermwright.editor.arrangement;
