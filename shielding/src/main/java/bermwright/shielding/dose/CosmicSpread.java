// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Progress;
import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.spectrum.Sun;

/**
 * How far the response to cosmic rays may be off: by the parts of its model, and by the sun, as the dose
 * changes between the quiet and the active sun.
 */
final class CosmicSpread implements TabulatedResponse.Spread {
    private final MonotoneCurve active;
    private final MonotoneCurve quiet;

    private CosmicSpread(MonotoneCurve active, MonotoneCurve quiet) {
        this.active = active;
        this.quiet = quiet;
    }

    /** Gives the doses (Sv) at the standard areal densities for one modulation. */
    interface Doses {
        double[] at(CosmicSpectrum spectrum, Progress progress);
    }

    static CosmicSpread of(Sun sun, Doses doses, Progress progress) {
        double[] best = doses.at(new CosmicSpectrum(sun.modulationW()), progress.part(0, 0.3));
        return new CosmicSpread(
                share(doses.at(new CosmicSpectrum(sun.activeW()), progress.part(0.3, 0.6)), best),
                share(doses.at(new CosmicSpectrum(sun.quietW()), progress.part(0.6, 1)), best));
    }

    private static MonotoneCurve share(double[] doses, double[] best) {
        double[] shares = new double[best.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = doses[i] / best[i];
        }
        return new MonotoneCurve(TransportResponse.depths(), shares);
    }

    @Override
    public Band at(double arealDensity) {
        return ModelSpread.cosmic(arealDensity);
    }

    @Override
    public Band bySun(double arealDensity) {
        return new Band(Math.min(1, active.at(arealDensity)), Math.max(1, quiet.at(arealDensity)));
    }
}
