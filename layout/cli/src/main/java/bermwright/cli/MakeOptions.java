// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.site.ground.MakeGround;
import bermwright.terrain.shape.MadeGround;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Invented ground that is asked for. */
final class MakeOptions {
    @Option(names = "--make", paramLabel = "FILE", description = "Writes invented ground that looks like the Moon's, of"
            + " any size.")
    private Optional<Path> make = Optional.empty();
    @Option(names = "--size", paramLabel = "ROWS,COLUMNS", split = ",", description = "Its size; 1000,1000.")
    private List<Integer> size = List.of(1000, 1000);
    @Option(names = "--spacing", paramLabel = "M", defaultValue = "5", description = "Distance between its nodes,"
            + " metres; 5.")
    private double spacing = 5;
    @Option(names = "--middle", paramLabel = "EAST,NORTH", split = ",", description = "Its middle, metres of the south"
            + " polar system; 0,30000.")
    private List<Double> middle = List.of(0.0, 30_000.0);
    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "The seed; 1.")
    private long seed = 1;
    @Option(names = "--relief", paramLabel = "M", description = "Root mean square of the relief without craters,"
            + " metres; 30.")
    private double relief = MadeGround.Recipe.HIGHLAND.relief();
    @Option(names = "--hurst", paramLabel = "H", description = "How much rougher long waves are than short ones,"
            + " 0 to 1; 0.8.")
    private double hurst = MadeGround.Recipe.HIGHLAND.hurst();
    @Option(names = "--craters", paramLabel = "SHARE", description = "Craters, as a share of the steady state; 0.5.")
    private double craters = MadeGround.Recipe.HIGHLAND.craterShare();
    @Option(names = "--largest-crater", paramLabel = "M", description = "Largest rim diameter, metres; 1000.")
    private double largest = MadeGround.Recipe.HIGHLAND.largestCrater();
    @Option(names = "--boulders", paramLabel = "N", description = "Boulders of 1 m and more in a square metre; 0.0002.")
    private double boulders = MadeGround.Recipe.HIGHLAND.boulders();

    Optional<Path> file() {
        return make;
    }

    void write(Path file, Progress progress) {
        if (size.size() != 2 || middle.size() != 2) {
            throw Options.bad("--size, --middle", size + ", " + middle, "two numbers each, with a comma between");
        }
        MadeGround.Recipe like = MadeGround.Recipe.HIGHLAND;
        MadeGround.Recipe recipe = Options.checked("--make", () -> new MadeGround.Recipe(relief, like.longest(),
                hurst, craters, largest, boulders, like.boulderPower()));
        MakeGround.Size wanted = Options.checked("--size", () -> new MakeGround.Size(size.get(0), size.get(1),
                spacing, new Point(middle.get(0), middle.get(1))));
        MakeGround.write(file, wanted, recipe, seed, progress);
    }

    String words() {
        return size.get(0) + " x " + size.get(1) + " nodes, " + spacing + " m apart, seed " + seed;
    }
}
