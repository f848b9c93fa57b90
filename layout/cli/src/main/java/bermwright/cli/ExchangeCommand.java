// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.HandoverPart;
import bermwright.report.Reports;
import picocli.CommandLine.Command;

/** Writes the files for other programs. */
@Command(name = "exchange", description = "Writes the files for other programs: shapes (GeoPackage, GeoJSON, DXF),"
        + " surfaces and lifts (GeoTIFF, LandXML, DXF), and the scene for an independent dose calculation (GDML).")
final class ExchangeCommand extends FolderCommand {
    @Override
    public Integer call() {
        return write(HandoverPart.EXCHANGE, Reports.Order.ALL);
    }
}
