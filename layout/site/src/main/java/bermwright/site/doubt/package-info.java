// SPDX-License-Identifier: Apache-2.0
/**
 * What is not known exactly: the chance of each finding, what decides each figure, and what finding out is worth.
 */
package bermwright.site.doubt;
