// SPDX-License-Identifier: Apache-2.0
/**
 * Surfaces and pictures of the ground, of any size as a stream of blocks: slope, roughness, shading, contours, horizon,
 * light.
 */
package bermwright.terrain.relief;
