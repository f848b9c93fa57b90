// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.Plan;

/**
 * A change of a plan, as a value: the plan goes in, the changed plan comes out, and undo is the plan before.
 *
 * <p>An edit that does not fit the plan, such as one of a part that is no longer there, gives the plan back unchanged.
 * An edit whose value a plan file could not hold throws {@link bermwright.foundation.InputException}.
 */
public sealed interface PlanEdit permits Move, Turn, ShiftCorner, InsertCorner, DropCorner, AlignHatches, SetValue,
        AddItem, RemoveItem, RemovePart, CopyPart, Together, MoveGear {
    /**
     * The plan with this change.
     *
     * @param plan the plan before
     * @return the plan after
     * @throws bermwright.foundation.InputException if a value is not accepted
     */
    Plan applied(Plan plan);

    /**
     * What people call this change, such as {@code Move hull A}; shown behind undo and redo.
     *
     * @return the words
     */
    String words();
}
