// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.site.plan.Hull;
import bermwright.site.space.HullInSpace;
import bermwright.site.space.Revolved;
import java.util.ArrayList;
import java.util.List;

/** How other hulls may stand or lie while one is lowered, by the order of work the plan states. */
final class StatesInTime {
    private final StatedOrder order;

    StatesInTime(StatedOrder order) {
        this.order = order;
    }

    /**
     * A hull as it may be.
     *
     * @param id    its id
     * @param words what people call it
     * @param body  its body
     * @param isUp  whether it stands
     */
    record State(String id, String words, Revolved body, boolean isUp) {
    }

    /** The states of another hull while one is lowered; both where the order settles nothing. */
    List<State> of(HullInSpace other, String lowered) {
        String id = other.hull().id();
        boolean falls = other.hull().arrival() == Hull.Arrival.LOWERED;
        List<State> states = new ArrayList<>();
        if (!falls || !order.lowersBefore(id, lowered)) {
            other.standing().ifPresent(b -> states.add(new State(id, "standing hull " + id, b, true)));
        }
        if (!falls || !order.lowersBefore(lowered, id)) {
            other.lying().ifPresent(b -> states.add(new State(id, "lying hull " + id, b, false)));
        }
        return states;
    }
}
