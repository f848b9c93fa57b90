// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.filestore.WholeFolder;
import bermwright.foundation.InputException;
import bermwright.report.sheet.ArrangementSheet;
import bermwright.site.arrangement.Arrangement;
import bermwright.site.arrangement.ArrangementSearch;
import bermwright.site.assessment.ArrangeSite;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanBeside;
import bermwright.site.planfile.PlanFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Looks for arrangements of the hulls that nothing refuses and that take less work. */
@Command(name = "arrange", description = "Moves and turns the hulls that are not held so that nothing refuses the plan"
        + " and the work gets less; writes arrangements none of which is better in all than another, each a plan.")
final class ArrangeCommand extends FolderCommand {
    /** Where neither steps nor seconds are given: so many arrangements, and no more steps than that. */
    private static final int ENOUGH = 5;
    private static final int LEAST_STEPS = 6;
    private static final int MOST_STEPS = 40;
    private static final double NANOS = 1e9;

    @Option(names = "--only", paramLabel = "ID", split = ",", description = "Moves these hulls alone, held or not.")
    private List<String> only = List.of();

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Seed of all chance; the same seed"
            + " and number of steps give the same files.")
    private long seed;

    @Option(names = "--steps", paramLabel = "N", description = "Ends after so many steps; else once five arrangements"
            + " are found, after 6 steps at least and 40 at most.")
    private Optional<Integer> steps = Optional.empty();

    @Option(names = "--seconds", paramLabel = "S", description = "Begins no step after so many seconds.")
    private Optional<Double> seconds = Optional.empty();

    @Option(names = "--size", description = "Sizes the covers too, to the least that meets the limits.")
    private boolean size;

    @Override
    public Integer call() {
        Console console = console();
        Plan plan = PlanFiles.read(planFile());
        check(plan);
        SiteGround ground = SiteGround.read(plan, planFile(), console.progress().part(0, 0.02));
        ArrangeSite arrange = new ArrangeSite(Assessments.standard(), ground, planFile().toString());
        ArrangementSearch.Found found = arrange.run(plan,
                new ArrangeSite.Request(new LinkedHashSet<>(only), seed, size), new Until(console),
                console.progress().part(0.02, 1));
        if (!found.arrangements().isEmpty()) {
            write(found);
        }
        console.progress().end();
        ArrangePage page = new ArrangePage(planFile(), directory(), found, seed);
        if (json()) {
            console.out().println(JsonObjects.text(page.json()));
        } else {
            page.text(console.out());
        }
        return (found.arrangements().isEmpty() ? ExitCode.REFUSED : ExitCode.DONE).number();
    }

    /** Ends by steps or seconds, and says when the first arrangement is there. */
    private final class Until implements ArrangementSearch.Course {
        private final Console console;
        private final long begun = System.nanoTime();
        private boolean isFirst = true;

        Until(Console console) {
            this.console = console;
        }

        @Override
        public boolean goesOn(int done, int known) {
            boolean inTime = seconds.isEmpty() || elapsed() < seconds.get() || done == 0;
            boolean wanted = steps.isPresent() ? done < steps.get()
                    : seconds.isPresent() || done < LEAST_STEPS || known < ENOUGH && done < MOST_STEPS;
            return inTime && wanted;
        }

        @Override
        public void found(Arrangement arrangement) {
            if (isFirst && arrangement.step() > 0) {
                isFirst = false;
                console.progress().report(0.1, String.format(Locale.ROOT, "first arrangement without refusal after"
                        + " %.1f s: %.0f machine hours", elapsed(), arrangement.figures().hours().orElse(0)));
            }
        }

        private double elapsed() {
            return (System.nanoTime() - begun) / NANOS;
        }
    }

    private void check(Plan plan) {
        for (String id : only) {
            if (plan.hull(id).isEmpty()) {
                throw Options.bad("--only", id,
                        "ids of hulls of the plan: " + String.join(", ", plan.hulls().stream().map(Hull::id).toList()));
            }
        }
        if (ArrangementSearch.movable(plan, Set.copyOf(only)).isEmpty()) {
            throw InputException.badValue(new InputException.Place(planFile().toString(), 0, "hulls"),
                    plan.hulls().isEmpty() ? "an empty list" : "held throughout",
                    "at least one hull that is not held and lands on no pad of its own, or --only with its id");
        }
        if (steps.isPresent() && steps.get() < 1) {
            throw Options.bad("--steps", "" + steps.get(), "1 or more");
        }
        if (seconds.isPresent() && !(seconds.get() > 0)) {
            throw Options.bad("--seconds", "" + seconds.get(), "above 0");
        }
        OutFolder.check(directory(), "earlier arrangements", console().err());
    }

    private void write(ArrangementSearch.Found found) {
        Path from = Optional.ofNullable(planFile().toAbsolutePath().getParent()).orElse(Path.of("."));
        OutFolder.write(directory(), () -> WholeFolder.write(directory(), folder -> {
            for (int i = 0; i < found.arrangements().size(); i++) {
                PlanFiles.write(PlanBeside.moved(found.arrangements().get(i).plan(), from, directory()),
                        folder.resolve(ArrangePage.file(i)));
            }
            new ArrangementSheet(found).drawing().write(folder);
            Files.writeString(folder.resolve("arrangements.csv"),
                    new ArrangePage(planFile(), directory(), found, seed).csv());
        }));
    }
}
