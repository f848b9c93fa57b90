// SPDX-License-Identifier: Apache-2.0
/**
 * Results described once: key, meaning, unit, digits, heading and getter of every figure that answers show.
 */
package bermwright.site.answer;
