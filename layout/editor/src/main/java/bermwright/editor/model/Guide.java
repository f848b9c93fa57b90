// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import java.util.List;

/** A short way through the three people's questions, for somebody who sees the editor for the first time. */
public final class Guide {
    private static final List<Stop> STOPS = List.of(
            new Stop("Three people plan a buried hull. This short way shows where each finds an answer.",
                    "Findings", false),
            new Stop("The surface planner asks: does it fit? Findings stand on the right, the worst first, and by"
                    + " number on the map. Pick one to fly to it; then drag the hull and watch it go.",
                    "Findings", true),
            new Stop("The surface planner asks: can it be laid down? Pull the slider of tilt: hull, lines and poles"
                    + " move on the map and from the side, with the forces held still at that tilt.", "Lowering", true),
            new Stop("The crew-safety reviewer asks: is the cover deep enough, and what dose is left? Sections and the"
                    + " unrolled depth show the cover; the dose of each station stands against the limits.",
                    "Dose", true),
            new Stop("The excavation lead asks: how much soil, and in which order? Volumes stand here; the slider of"
                    + " the order of work shows the site after each step.", "Soil and work", true),
            new Stop("Everything can be undone, and every edit is kept beside the plan until you save, also through a"
                    + " crash. Resting the pointer on anything tells the rule behind it.", "Findings", false));

    private int at;

    /**
     * A stop on the way.
     *
     * @param words    what is said
     * @param heading  the heading of the answers that are shown
     * @param hasHull  whether a hull is picked for it
     */
    public record Stop(String words, String heading, boolean hasHull) {
    }

    /**
     * The stop one is at.
     *
     * @return the stop
     */
    public Stop stop() {
        return STOPS.get(at);
    }

    /**
     * Goes on to the next stop.
     *
     * @return true where there was one
     */
    public boolean next() {
        if (at + 1 >= STOPS.size()) {
            return false;
        }
        at++;
        return true;
    }

    /**
     * Whether this is the last stop.
     *
     * @return true where it is
     */
    public boolean isLast() {
        return at + 1 == STOPS.size();
    }

    /**
     * Where one is.
     *
     * @return such as {@code 2 of 6}
     */
    public String place() {
        return (at + 1) + " of " + STOPS.size();
    }
}
