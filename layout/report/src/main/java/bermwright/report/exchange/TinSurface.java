// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

/**
 * One of the surfaces over a net, with its name.
 *
 * @param name    its name: lower-case letters, digits and _
 * @param about   what it is, in a sentence
 * @param net     the net
 * @param surface number of the surface over it (1)
 */
public record TinSurface(String name, String about, Tin net, int surface) {
    /**
     * Height at a point of the net.
     *
     * @param point number of the point (1)
     * @return height (m)
     */
    public double height(int point) {
        return net.height(surface, point);
    }
}
