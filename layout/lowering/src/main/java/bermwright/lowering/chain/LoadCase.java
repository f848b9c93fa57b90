// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

/** What loads the chain. */
public enum LoadCase {
    /** The hull is held still, no friction in the sheaves. */
    HELD("held", Kind.WORKING),
    /** Paid out: the sheaves' friction helps the winch; the rate is lost evenly in two seconds. */
    PAYING_OUT("paying out", Kind.WORKING),
    /** Hauled back: the sheaves' friction comes on top behind the heads. */
    HAULING_BACK("hauling back", Kind.WORKING),
    /** All winches stop dead at the set rate, as when the power fails and the brakes close. */
    STOP("stop", Kind.SHOCK),
    /** Slack in all lines is taken up at hand-over. */
    SNATCH("snatch", Kind.SHOCK),
    /** A lowering line is lost: itself, its termination, lug, sheave, winch, brake or anchor. */
    LINE_LOST("one line lost", Kind.LOSS),
    /** A pole is lost with its lines: itself, its foot, its only stay or that stay's anchor. */
    POLE_LOST("one pole lost", Kind.LOSS),
    /** One of several stays of a pole is lost, or its anchor. */
    STAY_LOST("one stay lost", Kind.LOSS),
    /** The anchor that holds the pivot along the ground is lost. */
    PIVOT_HOLD_LOST("pivot hold lost", Kind.LOSS);

    /** Which required factor counts. */
    public enum Kind {
        /** The part's own design factor. */
        WORKING,
        /** The factor against shocks. */
        SHOCK,
        /** The factor after one thing is lost. */
        LOSS
    }

    private final String word;
    private final Kind kind;

    LoadCase(String word, Kind kind) {
        this.word = word;
        this.kind = kind;
    }

    /**
     * The word used in files and pages.
     *
     * @return the words in lower case
     */
    public String word() {
        return word;
    }

    /**
     * Which required factor counts.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }
}
