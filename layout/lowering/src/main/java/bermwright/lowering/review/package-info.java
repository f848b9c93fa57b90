// SPDX-License-Identifier: Apache-2.0
/**
 * What a reviewer asks of a lowering beyond its forces: lines in space, pivot edge, motion, one thing lost.
 */
package bermwright.lowering.review;
