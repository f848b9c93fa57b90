// SPDX-License-Identifier: Apache-2.0
/**
 * Which borrow ground feeds which cover, over what distance, in what order.
 */
package bermwright.site.haulage;
