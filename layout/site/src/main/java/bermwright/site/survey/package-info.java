// SPDX-License-Identifier: Apache-2.0
/**
 * Where hulls could lie in a region of any size: every cell and heading scored or ruled out, the best places with their
 * reasons.
 *
 * <p>A place is as good as its tightest limit: each criterion has a margin, 1 far from its limit and 0 on it, and the
 * score is the least of them. The ground is worked on block by block; what is found does not hang on how it is cut.
 * A survey is a first sieve: it knows the ground at its nodes and the gear by its places; {@code assess} judges a plan.
 */
package bermwright.site.survey;
