// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import java.util.ArrayList;
import java.util.List;

/** Tells those who asked that something changed; called on the screen thread only. */
public final class Signal {
    private final List<Runnable> listeners = new ArrayList<>();

    /**
     * Asks to be told.
     *
     * @param listener called at each change
     */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** Tells all listeners. */
    public void raise() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
