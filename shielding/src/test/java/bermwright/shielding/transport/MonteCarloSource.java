// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.spectrum.EventSpectra;
import java.util.Arrays;
import java.util.Map;

/** What arrived in the Monte Carlo that the tables under {@code published} name. */
public final class MonteCarloSource {
    private static final double MODULATION_W = 10;
    private static final double EVENT_FROM_MEV = 30;
    private static final double HALF_WIDTH = 0.5;
    private static final Map<String, Double> BANDS = Map.of("band300", 2.5, "band3000", 3.5, "band30000", 4.5);

    private MonteCarloSource() {
    }

    /** The beam of a source, from all sides. */
    public static Beam of(String source, EnergyGrid grid) {
        if (source.equals("feb1956")) {
            Beam event = Beam.event(EventSpectra.named("february 1956"), grid);
            for (int i = 0; i < grid.size(); i++) {
                event.of(1)[i] *= grid.energyMeV(i) < EVENT_FROM_MEV ? 0 : 1;
            }
            return event;
        }
        Beam cosmic = Beam.cosmic(new CosmicSpectrum(MODULATION_W), grid, 0);
        int charge = source.equals("gcr_he") ? 2 : 1;
        for (int z = 1; z <= CosmicSpectrum.GREATEST_CHARGE; z++) {
            if (z != charge) {
                Arrays.fill(cosmic.of(z), 0);
            }
        }
        for (int i = 0; BANDS.containsKey(source) && i < grid.size(); i++) {
            double x = (Math.log10(grid.energyMeV(i)) - BANDS.get(source)) / HALF_WIDTH;
            cosmic.of(1)[i] *= Math.abs(x) < 1 ? Math.pow(Math.cos(Math.PI / 2 * x), 2) : 0;
        }
        return cosmic;
    }
}
