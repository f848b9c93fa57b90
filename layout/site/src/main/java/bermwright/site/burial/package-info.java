// SPDX-License-Identifier: Apache-2.0
/**
 * What soil, saddles and inner pressure do to a hull's skin.
 */
package bermwright.site.burial;
