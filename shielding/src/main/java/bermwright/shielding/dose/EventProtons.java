// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Progress;
import bermwright.shielding.material.Material;
import bermwright.shielding.spectrum.EventSpectrum;
import bermwright.shielding.transport.NucleonReactions;
import bermwright.shielding.transport.Stopping;

/**
 * Response to the protons of a solar particle event: they slow down continuously and are lost by nuclear reactions on
 * the way through the soil; those that arrive count by fluence-to-dose coefficients.
 *
 * <p>Leaves out the particles that the reactions make, which matter beyond about 50 g/cm2.
 */
final class EventProtons {
    private static final double LEAST_MEV = 0.1;
    private static final double GREATEST_MEV = 1e4;
    private static final int POINTS_IN_DECADE = 80;
    private static final double KG_M2 = 10;
    private static final double[] DEPTHS_GCM2 = {0, 0.1, 0.2, 0.5, 1, 2, 3, 5, 7, 10, 15, 20, 25, 30, 40, 50, 60, 75,
        90, 105, 125, 150, 175, 200, 250, 300, 350, 400, 500, 600, 700, 800, 1000, 1200, 1500};

    private final Stopping stopping;
    private final double[] energies;
    private final double[] lossDepth;
    private final double step;

    private EventProtons(Material soil) {
        stopping = Stopping.in(soil);
        int points = (int) Math.round(Math.log10(GREATEST_MEV / LEAST_MEV)) * POINTS_IN_DECADE + 1;
        step = Math.log(GREATEST_MEV / LEAST_MEV) / (points - 1);
        energies = new double[points];
        lossDepth = new double[points];
        for (int i = 0; i < points; i++) {
            energies[i] = LEAST_MEV * Math.exp(i * step);
            if (i > 0) {
                double middle = LEAST_MEV * Math.exp((i - 0.5) * step);
                lossDepth[i] = lossDepth[i - 1] + middle * step * NucleonReactions.perGCm2(false, soil, middle)
                        / stopping.protonMeVPerGCm2(middle);
            }
        }
    }

    static Response response(Material soil, EventSpectrum spectrum, double skinEquivalence, Progress progress) {
        EventProtons protons = new EventProtons(soil);
        double[] depths = new double[DEPTHS_GCM2.length];
        double[] doses = new double[DEPTHS_GCM2.length];
        for (int i = 0; i < depths.length; i++) {
            progress.check();
            progress.report((double) i / depths.length, "protons of " + spectrum.name());
            depths[i] = DEPTHS_GCM2[i] * KG_M2;
            doses[i] = protons.dose(DEPTHS_GCM2[i], spectrum);
        }
        progress.report(1, "protons of " + spectrum.name());
        return new TabulatedResponse(depths, doses, PlanningSpread::event, new TabulatedResponse.Terms(
                Response.Per.EVENT, 0, skinEquivalence, note(soil, spectrum)));
    }

    /** Dose behind a depth from all sides (Sv): an integral over the energy on arrival. */
    private double dose(double depthGCm2, EventSpectrum spectrum) {
        double sum = 0;
        for (int i = 0; i < energies.length; i++) {
            double left = energies[i];
            double before = stopping.protonEnergyMeV(stopping.protonRangeGCm2(left) + depthGCm2);
            if (before > GREATEST_MEV) {
                break;
            }
            double fluence = spectrum.perMeV(before) * stopping.protonMeVPerGCm2(before)
                    / stopping.protonMeVPerGCm2(left) * Math.exp(lossDepthAt(left) - lossDepthAt(before));
            sum += fluence * left * FluenceCoefficients.proton(left) * step;
        }
        return sum;
    }

    private double lossDepthAt(double energyMeV) {
        double place = Math.log(energyMeV / LEAST_MEV) / step;
        int i = Math.min((int) place, energies.length - 2);
        return lossDepth[i] + (place - i) * (lossDepth[i + 1] - lossDepth[i]);
    }

    private static ModelNote note(Material soil, EventSpectrum spectrum) {
        return new ModelNote("event-response",
                "effective dose of the primary protons of " + spectrum.name() + " through " + soil.name()
                        + " soil by stopping and nuclear loss, isotropic fluence-to-dose coefficients",
                "spectrum fitted from " + spectrum.range().fromMeV() + " to " + spectrum.range().toMeV()
                        + " MeV and continued beyond; particles made by reactions left out",
                "30 % to 50 g/cm2, 50 % at 150, a factor two from 300; the choice of event another factor three",
                ModelNote.Status.COMPUTED, spectrum.source() + "; ICRP Publication 116 (2010)");
    }
}
