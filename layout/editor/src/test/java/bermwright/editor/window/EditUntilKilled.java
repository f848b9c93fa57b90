// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.window;

import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import org.testfx.api.FxRobot;

/** Opens the editor on a plan, moves a hull by keys, and then waits to be killed. */
final class EditUntilKilled {
    /** Steps made. */
    static final int STEPS = 3;

    private EditUntilKilled() {
    }

    public static void main(String[] arguments) throws InterruptedException {
        Stagehand hand = Stagehand.open(Path.of(arguments[0]));
        hand.pickHull("A");
        FxRobot robot = hand.robot();
        for (int i = 0; i < STEPS; i++) {
            robot.type(KeyCode.RIGHT);
        }
        Thread.sleep(120_000);
    }
}
