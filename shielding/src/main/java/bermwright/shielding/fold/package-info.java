// SPDX-License-Identifier: Apache-2.0
/**
 * Folds what a station sees of the sky with a response, and adds what the ground sends back once.
 */
package bermwright.shielding.fold;
