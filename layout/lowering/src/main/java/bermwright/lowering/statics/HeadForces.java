// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.statics;

/**
 * Forces at the head of one pole, without friction of the sheave.
 *
 * @param thrust    thrust along the pole (N)
 * @param stay      tension of each of its stays (N), zero where they hang slack
 * @param winchLine tension of the hardest pulled line from the head to its winch (N)
 * @param leftOver  pull square to the pole in the lay-down plane that nothing takes (N): positive towards the hull,
 *                  for want of a stay; negative away from it
 * @param lateral   pull of lines and stays across the lay-down plane (N), positive outwards
 */
public record HeadForces(double thrust, double stay, double winchLine, double leftOver, double lateral) {
    /** No pole, no forces. */
    public static final HeadForces NONE = new HeadForces(0, 0, 0, 0, 0);
}
