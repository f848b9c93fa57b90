// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.MapHands;
import bermwright.editor.model.Workbench;
import bermwright.finding.Numbered;
import bermwright.foundation.Point;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;

/** Says what the pointer rests on: a finding in full, or a figure, whose it is and the rule that goes with it. */
final class MapHint {
    private final MapPane map;
    private final Workbench bench;
    private final MapHands hands;
    private final Tooltip tooltip = Hint.of("");
    private String words = "";

    MapHint(MapPane map, Workbench bench, MapHands hands) {
        this.map = map;
        this.bench = bench;
        this.hands = hands;
        map.addEventHandler(MouseEvent.MOUSE_MOVED, this::follow);
        map.addEventHandler(MouseEvent.MOUSE_PRESSED, event -> say(""));
    }

    private void follow(MouseEvent event) {
        say(words(event.getX(), event.getY()));
    }

    /** Where there is nothing to say there is no tooltip, so that none hangs over bare ground. */
    private void say(String now) {
        if (now.equals(words)) {
            return;
        }
        tooltip.hide();
        if (now.isEmpty()) {
            Tooltip.uninstall(map, tooltip);
        } else if (words.isEmpty()) {
            Tooltip.install(map, tooltip);
        }
        tooltip.setText(now);
        words = now;
    }

    private String words(double x, double y) {
        Optional<Numbered> finding = map.findingAt(x, y);
        if (finding.isPresent()) {
            return finding.map(n -> n.number() + "  " + n.finding().subject() + ", " + n.finding().rule().id() + ": "
                    + n.finding().text() + "\n" + n.finding().origin()).orElseThrow();
        }
        List<Numbered> crowd = map.crowdAt(x, y);
        if (!crowd.isEmpty()) {
            return crowd.size() + " more findings here; go closer, or pick them in the list: " + crowd.stream()
                    .map(n -> n.number() + " " + n.finding().subject() + " " + n.finding().rule().id())
                    .collect(Collectors.joining(", ")) + ".";
        }
        Point place = map.camera().place(x, y);
        return hands.figureAt(place, new MapHands.Feel(map.camera().metresPerPixel(), false))
                .map(figure -> figure.part().map(Part::words).orElse("") + "\n" + figure.look().word() + ": "
                        + figure.look().rule()).orElse("");
    }
}
