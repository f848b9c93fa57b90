// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

/** The parts in the load path, from the winch's anchor to the hull. */
public enum Part {
    /** A lowering line, straight. */
    LOWERING_LINE("lowering line"),
    /** Where a lowering line ends at the hull. */
    TERMINATION("termination of a lowering line"),
    /** A lowering line bent over the sheave at the head. */
    LINE_OVER_SHEAVE("lowering line over the head sheave"),
    /** The sheave at a head with its pin. */
    HEAD_SHEAVE("head sheave"),
    /** A lug on the hull. */
    LUG("lug of a lowering line"),
    /** A pole. */
    POLE("pole"),
    /** The ground under a pole. */
    POLE_FOOT("ground under a pole foot"),
    /** What keeps a pole head from being pulled over in the lay-down plane where its stays do not. */
    POLE_HEAD("hold of a pole head in the lay-down plane"),
    /** The tie or strut between the heads. */
    HEAD_TIE("tie or strut between the pole heads"),
    /** What keeps all heads together from going over sideways. */
    HEADS_ACROSS("hold of the pole heads across the lay-down plane"),
    /** A stay. */
    STAY("stay"),
    /** The anchor of a stay. */
    STAY_ANCHOR("anchor of a stay"),
    /** A lowering winch while it works. */
    WINCH("lowering winch"),
    /** The brake of a lowering winch while it holds. */
    WINCH_BRAKE("brake of a lowering winch, holding"),
    /** The brake of a lowering winch, by its heat. */
    BRAKE_HEAT("brake of a lowering winch, heat"),
    /** The anchor of a lowering winch. */
    WINCH_ANCHOR("anchor of a lowering winch"),
    /** The pull-over line. */
    PULL_OVER_LINE("pull-over line"),
    /** Where the pull-over line ends at the hull. */
    PULL_OVER_TERMINATION("termination of the pull-over line"),
    /** The lug of the pull-over line. */
    PULL_OVER_LUG("lug of the pull-over line"),
    /** The pull-over winch. */
    PULL_OVER_WINCH("pull-over winch"),
    /** The anchor of the pull-over line. */
    PULL_OVER_ANCHOR("anchor of the pull-over line"),
    /** What holds the pivot along the ground. */
    PIVOT_HOLD("hold along the ground at the pivot"),
    /** The friction of the pivot alone, once its hold is lost. */
    PIVOT_FRICTION("friction at the pivot alone"),
    /** The weight that keeps the pivot on the ground. */
    PIVOT_UPLIFT("pivot against lifting"),
    /** What keeps the hull from turning in plan about its pivot. */
    PIVOT_TURNING("pivot against turning in plan"),
    /** The ground under the pivot. */
    PIVOT_GROUND("ground under the pivot"),
    /** The hull's shell in bending between base and lugs. */
    HULL("hull shell in bending");

    private final String words;

    Part(String words) {
        this.words = words;
    }

    /**
     * The part in words.
     *
     * @return the words in lower case
     */
    public String words() {
        return words;
    }
}
