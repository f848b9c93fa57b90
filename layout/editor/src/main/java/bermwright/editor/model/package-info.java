// SPDX-License-Identifier: Apache-2.0
/**
 * View models around an immutable plan; tested without a screen.
 */
package bermwright.editor.model;
