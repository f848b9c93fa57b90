// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.util.Duration;

/** Words at the pointer or near a place of the map, inside it and never under the panel that lies over it. */
final class PointerWords extends Label {
    /** They stand so far beside the pointer (pixels). */
    private static final double BESIDE = 16;
    private static final double RIM = 4;

    private final PauseTransition end = new PauseTransition(Duration.seconds(4));
    private Optional<Region> panel = Optional.empty();

    PointerWords() {
        setId("readout");
        getStyleClass().add("readout");
        setManaged(false);
        setVisible(false);
        end.setOnFinished(done -> setVisible(false));
    }

    /** Keeps off a panel that lies over the same map. */
    void keepOff(Region over) {
        panel = Optional.of(over);
    }

    /** Shows words beside the pointer. */
    void follow(String words, Point2D at, Region map) {
        show(words);
        place(at.getX() + BESIDE, at.getY() + BESIDE, map);
    }

    /** Shows words at a place of the map for a few seconds; where there is none, at its foot. */
    void say(String words, Optional<Point2D> near, Region map) {
        show(words);
        place(near.map(Point2D::getX).orElse((map.getWidth() - getWidth()) / 2),
                near.map(Point2D::getY).orElse(map.getHeight() - 4 * getHeight()), map);
    }

    private void show(String words) {
        setText(words);
        setVisible(!words.isEmpty());
        autosize();
        end.playFromStart();
    }

    private void place(double x, double y, Region map) {
        double left = Math.max(RIM, Math.min(x, map.getWidth() - getWidth() - RIM));
        double top = Math.max(RIM, Math.min(y, map.getHeight() - getHeight() - RIM));
        Optional<Bounds> over = panel.filter(Region::isVisible).map(Region::getBoundsInParent)
                .filter(b -> b.intersects(new BoundingBox(left, top, getWidth(), getHeight())));
        double beside = over.map(b -> b.getMinX() - getWidth() - RIM).orElse(left);
        // Where there is no room beside the panel they stand above it.
        relocate(beside >= RIM ? beside : left, beside >= RIM ? top
                : Math.max(RIM, over.map(Bounds::getMinY).orElse(top) - getHeight() - RIM));
    }
}
