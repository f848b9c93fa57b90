// SPDX-License-Identifier: Apache-2.0
/**
 * From a finding to the field that mends it, and to values that were tried and found to do so.
 */
package bermwright.editor.mend;
