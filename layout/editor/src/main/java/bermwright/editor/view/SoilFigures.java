// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.WorkStages;
import bermwright.editor.model.Workbench;
import bermwright.site.assessment.Assessment;
import bermwright.site.exposure.HullCover;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.stages.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** The excavation lead's figures as lines of text. */
final class SoilFigures {
    private SoilFigures() {
    }

    static List<Node> nodes(Workbench bench) {
        List<Node> nodes = new ArrayList<>();
        Optional<Assessment> assessment = bench.answers().assessment();
        nodes.add(heading(bench.answers().heading("Soil", bench.plan())));
        assessment.ifPresent(a -> {
            a.hulls().forEach(h -> h.cover().ifPresent(c -> nodes.add(line(words(c)))));
            a.earthworks().ifPresent(e -> works(nodes, e));
            a.cover().ifPresent(c -> nodes.add(line("All covers together: " + Figures.brief(c.volume())
                    + " m\u00b3 placed.")));
        });
        return nodes;
    }

    /** What stands, what was placed, how long it took and what dose is left after a step of the work. */
    static String words(WorkStages stages, int done) {
        if (stages.stage(done).isEmpty()) {
            return stages.steps().isEmpty() || done == 0 ? "" : "Soil and days of this step are not worked out yet.";
        }
        Stage stage = stages.stage(done).get();
        StringBuilder text = new StringBuilder();
        text.append("Day ").append(Figures.brief(stage.bar().start())).append(" to ")
                .append(Figures.brief(stage.bar().end()))
                .append(stage.bar().resource().isEmpty() ? "" : ", " + stage.bar().resource())
                .append(stage.bar().machineHours().isPresent()
                        ? ", " + Figures.brief(stage.bar().machineHours().getAsDouble()) + " h"
                        : ", hours not known and not in the days")
                .append(stage.bar().critical() ? "; any delay delays the whole work." : ".");
        if (!stage.soil().lifts().isEmpty()) {
            text.append("\nPlaces ").append(Figures.brief(stage.soil().placed())).append(" m\u00b3 in ")
                    .append(stage.soil().lifts().size()).append(stage.soil().lifts().size() == 1 ? " lift" : " lifts")
                    .append(", the last up to ").append(Figures.brief(stage.soil().lifts()
                            .get(stage.soil().lifts().size() - 1))).append(" m over the bed.");
        }
        text.append("\nStanding: ").append(names(stage.standing())).append("; lying: ").append(names(stage.lying()))
                .append('.');
        if (!stages.doses(done).isEmpty()) {
            text.append("\nDose of a whole stay under the cover as it then is, low to high:");
        }
        stages.doses(done).forEach(d -> text.append("\n    ").append(d.hull()).append(", ").append(d.station())
                .append(": ").append(Figures.brief(d.covered().best() * 1e3)).append(" mSv (")
                .append(Figures.brief(d.covered().low() * 1e3)).append(" to ")
                .append(Figures.brief(d.covered().high() * 1e3)).append(")"));
        return text.toString();
    }

    private static String names(Set<String> ids) {
        return ids.isEmpty() ? "none" : ids.stream().sorted().collect(Collectors.joining(", "));
    }

    private static String words(HullCover c) {
        return "Hull " + c.id() + ": " + Figures.brief(c.volume()) + " m\u00b3 placed, "
                + Figures.brief(c.placedMass() / 1e3) + " t; least cover "
                + Figures.brief(c.least().depth()) + " m, " + Figures.brief(c.leastArealDensity() / 10)
                + " g/cm\u00b2 with the skin.";
    }

    private static void works(List<Node> nodes, EarthworksResult e) {
        nodes.add(line("In all " + Figures.brief(e.placed()) + " m\u00b3 placed, " + Figures.brief(e.bank())
                + " m\u00b3 before digging (spread " + Figures.brief(e.spread().bank()) + "), "
                + Figures.brief(e.loose()) + " m\u00b3 in the haulers, " + Figures.brief(e.mass() / 1e3) + " t."));
        nodes.add(line(e.machineHours().isPresent() ? "Machine hours: "
                + Figures.brief(e.machineHours().getAsDouble()) + " h." : "The plan has no machine; no hours."));
        nodes.add(line("Left in the borrow grounds: " + Figures.brief(e.borrowLeft()) + " m\u00b3"
                + (e.shortage() > 0 ? "; SHORT by " + Figures.brief(e.shortage()) + " m\u00b3." : ".")));
        nodes.add(heading("Hauls"));
        e.hauls().forEach(h -> nodes.add(line(h.from() + " \u2192 " + h.to() + ": " + Figures.brief(h.bank())
                + " m\u00b3 before digging over " + Figures.brief(h.distance()) + " m, "
                + Figures.brief(h.loads()) + " loads" + (h.machine().isEmpty() ? "" : " by " + h.machine())
                + (h.machineHours().isPresent() ? ", " + Figures.brief(h.machineHours().getAsDouble()) + " h" : "")
                + ".")));
        e.machineDays().forEach(d -> nodes.add(line(d.machine() + ": " + Figures.brief(d.days()) + " days.")));
        e.notes().forEach(n -> nodes.add(line(n.model() + " Spread: " + n.spread())));
    }

    static Label heading(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("heading");
        label.setWrapText(true);
        return label;
    }

    static Label line(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        return label;
    }
}
