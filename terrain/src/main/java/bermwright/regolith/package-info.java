// SPDX-License-Identifier: Apache-2.0
/**
 * The soil itself: bulk density and strength by depth, states (bank, loose, placed), earth pressure, bearing,
 * settlement.
 *
 * <p>Every room that digs, loads, heaps or looks through regolith reads it here; nobody else interpolates by depth
 * ({@link bermwright.regolith.DepthProfile} does).
 *
 * <p>Ground is what its owner states. A {@link bermwright.regolith.BulkDensity} and a
 * {@link bermwright.regolith.StrengthProfile} hold between the depths stated and stay level beyond them; a single value
 * holds at every depth. Nothing is raised with depth and nothing is capped on its own account: strength that rises is
 * stated by depth, with its source. What the keys of a plan mean is said once, in {@code site.plan.PlanSoil}.
 *
 * <p>Dry soil, by the strength of Mohr and Coulomb. Formulas are those of textbooks on Earth, scaled by gravity; above
 * a friction angle of 45 degrees ({@link bermwright.regolith.Strength#isBeyondDesign}) they extrapolate, for such
 * angles are measured at very low stress only.
 */
package bermwright.regolith;
