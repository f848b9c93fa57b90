// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.HandoverPart;
import bermwright.report.Reports;
import bermwright.site.assessment.Assessment;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Writes the files for other programs. */
@Command(name = "exchange", description = "Writes the files for other programs: shapes (GeoPackage, GeoJSON, DXF),"
        + " surfaces and lifts (GeoTIFF, LandXML, DXF), and the scene for an independent dose calculation (GDML).")
final class ExchangeCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Answers with one JSON object.")
    private boolean json;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "Where to; made where it is not there.")
    private Path directory;

    @Parameters(paramLabel = "PLAN", description = "The plan file.")
    private Path planFile;

    @Override
    public Integer call() {
        Console console = program.console();
        OutFolder.check(directory, "earlier " + HandoverPart.EXCHANGE.word());
        Assessment assessment = Assessed.plan(planFile, console.progress().part(0, 0.9));
        OutFolder.write(HandoverPart.EXCHANGE, assessment, Reports.Order.ALL, directory,
                console.progress().part(0.9, 1));
        console.progress().end();
        OutFolder.answer(assessment, directory, json, console);
        return ExitCode.of(assessment.findings()).number();
    }
}
