// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import java.io.PrintStream;

/**
 * Where a command speaks.
 *
 * @param out      results and nothing else
 * @param err      progress and trouble
 * @param progress how far the work has come, and whether somebody asked to stop
 */
record Console(PrintStream out, PrintStream err, ConsoleProgress progress) {
}
