// SPDX-License-Identifier: Apache-2.0
/**
 * Surfaces of an elevation file written as files, and invented ground.
 *
 * <p>Files of any size are worked on as a stream of blocks; memory does not grow with them.
 */
package bermwright.site.ground;
