// SPDX-License-Identifier: Apache-2.0
/**
 * Where each part of a hull's lowering gear stands: the one set of places that statics, map, clearance, setting-out,
 * digging and drawings read.
 *
 * <p>Places are level distances in true metres from the middle of the pivot line: ahead along the lay-down azimuth, and
 * to the left of the lay-down plane. {@link bermwright.site.laydown} stands them on the ground.
 */
package bermwright.site.gear;
