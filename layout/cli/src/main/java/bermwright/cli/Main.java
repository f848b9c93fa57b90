// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Starts the command line. */
public final class Main {
    private Main() {
    }

    /**
     * Runs one command inside this program.
     *
     * @param out       where results are written, and nothing else
     * @param err       where progress and trouble are written
     * @param arguments the command and its options
     * @return the exit code, 0 to 3
     */
    public static int run(PrintStream out, PrintStream err, String... arguments) {
        return new Program(new Console(out, err, new ConsoleProgress(err, false))).run(arguments);
    }

    /**
     * Runs one command and ends with its exit code.
     *
     * @param arguments the command and its options
     */
    public static void main(String[] arguments) {
        // Numbers and words look the same in every language setting; files made on two machines must be the same.
        Locale.setDefault(Locale.ROOT);
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        ConsoleProgress progress = new ConsoleProgress(err, System.console() != null);
        Thread work = Thread.currentThread();
        Thread stop = new Thread(() -> {
            progress.cancel();
            try {
                work.join(ConsoleProgress.PATIENCE_MILLIS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }, "stop");
        Runtime.getRuntime().addShutdownHook(stop);
        int code = new Program(new Console(out, err, progress)).run(arguments);
        out.flush();
        if (code <= ExitCode.REFUSED.number()) {
            StartArchive.makeWhereAsked();
        }
        try {
            Runtime.getRuntime().removeShutdownHook(stop);
        } catch (IllegalStateException stopping) {
            return;
        }
        System.exit(code);
    }
}
