// SPDX-License-Identifier: Apache-2.0
/**
 * Numerical methods that several rooms need and that no library on the path has in this form.
 *
 * <p>A root of a smooth function is found by the solvers of Apache Commons Math; what is here needs only a yes or a no
 * at each value tried. Everything here is a value: made once, never changed, safe to share between threads.
 */
package bermwright.numeric;
