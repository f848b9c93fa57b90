// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import java.io.PrintStream;
import java.util.Collection;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/** The commands in the order in which help lists them. */
public final class Commands {
    private static final List<Class<?>> ALL = List.of(AssessCommand.class, LowerCommand.class, CoverCommand.class,
            DoseCommand.class, EarthworksCommand.class, SizeCoverCommand.class, DoubtsCommand.class,
            GroundCommand.class, ReportCommand.class, DrawingsCommand.class, ExchangeCommand.class,
            CompareCommand.class, JudgeCommand.class, SurveyCommand.class, SchemaCommand.class, RulesCommand.class,
            ArrangeCommand.class, EditCommand.class, CompletionCommand.class);

    private Commands() {
    }

    /**
     * All commands with all their options, for what is made from them: completion of a shell, pages of the manual.
     *
     * @return the program as the library of options knows it
     */
    public static CommandLine all() {
        PrintStream nowhere = new PrintStream(PrintStream.nullOutputStream());
        return line(new Console(nowhere, nowhere, new ConsoleProgress(nowhere, false)),
                ALL.stream().map(c -> command(c).name()).toList());
    }

    /**
     * The program with the options of those commands alone that were named; of the others it knows name and purpose.
     * To read the options of all of them takes longer than {@code --help} may.
     */
    static CommandLine line(Console console, Collection<String> words) {
        CommandLine line = new CommandLine(new Bermwright(console).spec(), new Maker());
        for (Class<?> type : ALL) {
            Command command = command(type);
            if (words.contains(command.name())) {
                line.addSubcommand(command.name(), type);
            } else {
                CommandSpec known = CommandSpec.create().name(command.name());
                known.usageMessage().description(command.description());
                line.addSubcommand(command.name(), known);
            }
        }
        return line;
    }

    private static Command command(Class<?> type) {
        return type.getAnnotation(Command.class);
    }

    /** Makes our own classes here: the library's maker first looks through all jars for another language's classes. */
    private static final class Maker implements CommandLine.IFactory {
        @Override
        public <K> K create(Class<K> type) throws Exception {
            return type.getPackage() == Commands.class.getPackage() ? type.getDeclaredConstructor().newInstance()
                    : CommandLine.defaultFactory().create(type);
        }
    }
}
