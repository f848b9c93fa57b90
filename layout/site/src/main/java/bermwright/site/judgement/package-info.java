// SPDX-License-Identifier: Apache-2.0
/**
 * What reviewers judged of a plan's findings and stations, and whether it still stands for the plan as it now is.
 */
package bermwright.site.judgement;
