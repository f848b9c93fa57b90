// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.InputException;
import bermwright.site.assessment.Version;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import picocli.CommandLine;

/** Runs one command: turns what it throws into an exit code, a line for people and an object for programs. */
final class Program {
    private static final int DEEPEST_CAUSE = 20;
    private static final long BYTES_OF_A_MEGABYTE = 1024 * 1024;

    private final Console console;

    Program(Console console) {
        this.console = new Console(new PlainStream(console.out()), new PlainStream(console.err()),
                console.progress());
    }

    int run(String... arguments) {
        boolean json = Arrays.asList(arguments).contains("--json");
        CommandLine line = Commands.line(console, Arrays.asList(arguments));
        line.setOut(new PrintWriter(console.out(), true));
        line.setErr(new PrintWriter(console.err(), true));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setParameterExceptionHandler((refused, args) -> badOption(refused, json));
        line.setExecutionExceptionHandler((thrown, command, parsed) -> failed(thrown, json, arguments));
        int code;
        try {
            code = line.execute(arguments);
        } catch (Error failure) {
            code = failed(failure, json, arguments);
        }
        if (console.out().checkError()) {
            console.err().println("bermwright: the answer could not be written to the end: its way out is full or"
                    + " closed. Nothing of what was written may be taken for the whole answer.");
            return ExitCode.OURS.number();
        }
        return code;
    }

    private int badOption(CommandLine.ParameterException refused, boolean json) {
        String text = refused.getMessage();
        String command = refused.getCommandLine().getCommandSpec().qualifiedName();
        String accepted = "see " + command + " --help";
        String value = refused instanceof CommandLine.UnmatchedArgumentException unmatched
                ? String.join(" ", unmatched.getUnmatched()) : Optional.ofNullable(refused.getValue()).orElse("");
        Optional<CommandLine.Model.ArgSpec> argument = Optional.ofNullable(refused.getArgSpec());
        String key = argument.map(a -> a.isOption() ? ((CommandLine.Model.OptionSpec) a).longestName()
                : a.paramLabel()).orElse("");
        return trouble(new ErrorObject("", 0, key, value, accepted, text + "; " + accepted), json, ExitCode.BAD_INPUT);
    }

    private int failed(Throwable thrown, boolean json, String[] arguments) {
        String step = console.progress().step();
        console.progress().end();
        if (thrown instanceof InputException bad) {
            return trouble(ErrorObject.of(bad), json, ExitCode.BAD_INPUT);
        } else if (thrown instanceof CancellationException || console.progress().isCancelled()) {
            return trouble(ErrorObject.text("cancelled; nothing was written"), json, ExitCode.OURS);
        }
        String whole = String.join(" ", arguments);
        String where = step.isEmpty() ? "" : " while " + step;
        Optional<Throwable> limit = tooLarge(thrown);
        if (limit.isPresent()) {
            return tooLarge(limit.get() instanceof OutOfMemoryError, where, whole, json);
        }
        String text = "this is our mistake, not yours%s: %s. To repeat it: bermwright %s, version %s, Java %s, %s"
                .formatted(where, thrown, whole, Version.whole(), System.getProperty("java.version"),
                        System.getProperty("os.name"));
        thrown.printStackTrace(console.err());
        return trouble(ErrorObject.text(text), json, ExitCode.OURS);
    }

    private int tooLarge(boolean isMemory, String where, String whole, boolean json) {
        long allowed = Runtime.getRuntime().maxMemory() / BYTES_OF_A_MEGABYTE;
        String text = isMemory ? String.format(Locale.ROOT, "memory ran out%s: what bermwright %s asks for does not fit"
                + " into the %d MB that this run may use. Give it more with JAVA_TOOL_OPTIONS=-Xmx8g, or take a smaller"
                + " or coarser elevation file or fewer hulls and stations", where, whole, allowed)
                : "bermwright ran too deep" + where + ": something that " + whole + " names is nested too deeply";
        return trouble(new ErrorObject("", 0, "", whole, isMemory ? "more memory, or less to be held in it"
                : "less depth", text), json, ExitCode.OURS);
    }

    /** Memory or depth that ran out, somewhere among the causes. */
    private static Optional<Throwable> tooLarge(Throwable thrown) {
        Throwable cause = thrown;
        for (int i = 0; i < DEEPEST_CAUSE && cause != null; i++) {
            if (cause instanceof OutOfMemoryError || cause instanceof StackOverflowError) {
                return Optional.of(cause);
            }
            cause = cause.getCause();
        }
        return Optional.empty();
    }

    private int trouble(ErrorObject error, boolean json, ExitCode code) {
        console.err().println("bermwright: " + error.text());
        if (json) {
            console.out().println(JsonObjects.text(error.json()));
        }
        return code.number();
    }
}
