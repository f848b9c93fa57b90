// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

/**
 * A figure of the plan that mends a finding when it is made greater or smaller.
 *
 * @param path  path of the figure in the plan file
 * @param isUp  whether greater is better
 * @param words what changing it is, such as {@code Widen the pole feet}
 */
record Lever(String path, boolean isUp, String words) {
    /** The same lever of a thing at a path, where this one's path starts from that thing. */
    Lever from(String of) {
        return new Lever(of + "." + path, isUp, words);
    }
}
