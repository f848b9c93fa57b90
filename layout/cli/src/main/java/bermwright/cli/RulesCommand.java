// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.Catalogue;
import bermwright.finding.Rule;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import picocli.CommandLine.Command;

/** Prints the catalogue of rules that findings come from. */
@Command(name = "rules", description = "The catalogue of findings: rule, level, what is measured, where its limit comes"
        + " from, what to do.")
final class RulesCommand extends JsonCommand {
    @Override
    public Integer call() {
        PrintStream out = console().out();
        if (json()) {
            out.println(JsonObjects.text(page()));
        } else {
            Catalogue.all().forEach(rule -> write(rule, out));
        }
        return ExitCode.DONE.number();
    }

    private static void write(Rule rule, PrintStream out) {
        Rule.Entry entry = rule.entry();
        out.printf("%s  %s; endangers %s; number %s%n", rule.id(), rule.levels(), entry.danger().word(), rule.letter());
        String unit = entry.unit().equals("-") ? " (not a figure)" : entry.unit().equals("1") ? ""
                : ", " + entry.unit();
        CommonText.wrapped("Measured: " + entry.measures() + unit + ". Limit: " + entry.source() + ".", 4, out);
        CommonText.wrapped("To do: " + entry.todo(), 4, out);
    }

    private static ObjectNode page() {
        ObjectNode page = JsonObjects.object();
        ArrayNode rules = page.putArray("rules");
        for (Rule rule : Catalogue.all()) {
            Rule.Entry entry = rule.entry();
            ObjectNode one = rules.addObject().put("rule", rule.id());
            ArrayNode levels = one.putArray("levels").add(entry.worst().word());
            if (entry.mildest() != entry.worst()) {
                levels.add(entry.mildest().word());
            }
            one.put("endangers", entry.danger().word()).put("measures", entry.measures()).put("unit", entry.unit())
                    .put("source", entry.source()).put("todo", entry.todo())
                    .put("number", String.valueOf(rule.letter()));
        }
        return page;
    }
}
