// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.foundation.Require;
import bermwright.shielding.material.Layer;
import bermwright.shielding.material.Shield;
import bermwright.shielding.spectrum.EventSpectrum;
import bermwright.shielding.spectrum.Sun;
import bermwright.shielding.transport.Stopping;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;

/**
 * Where responses come from: built for a shield and a sun, kept in a directory between runs, or handed over as a table.
 *
 * <p>A caller does this:
 * <pre>{@code
 * Responses responses = Responses.standard();
 * Shield shield = Shield.of("highland", List.of(new Layer(Materials.named("steel"), 39.5)));   // kg/m2
 * Response cosmic = responses.cosmic(shield, 10, progress);                                    // W 10: solar minimum
 * Response event = responses.event(shield, EventSpectra.named("august 1972"), progress);
 * Response reviewed = Responses.fromTable(Path.of("response.csv"));
 * }</pre>
 */
public final class Responses {
    /** Modulation of a solar minimum (1). */
    public static final double MINIMUM_W = 10;
    /** Modulation of a solar maximum (1). */
    public static final double MAXIMUM_W = 100;
    /** Energy at which the stopping of skin and soil is compared (MeV). */
    private static final double COMPARED_AT_MEV = 100;
    private static final double KG_M2 = 10;

    private final Path cacheDirectory;

    /**
     * Responses kept in a directory.
     *
     * @param cacheDirectory directory in which built responses are kept; made when it is first needed
     */
    public Responses(Path cacheDirectory) {
        this.cacheDirectory = Objects.requireNonNull(cacheDirectory, "cache directory");
    }

    /**
     * Responses kept in the user's own cache directory.
     *
     * @return the source of responses
     */
    public static Responses standard() {
        String named = System.getenv("XDG_CACHE_HOME");
        Path caches = named == null || named.isBlank() ? Path.of(System.getProperty("user.home"), ".cache")
                : Path.of(named);
        return new Responses(caches.resolve("bermwright").resolve("responses"));
    }

    /**
     * Response to galactic cosmic rays, a day's dose.
     *
     * @param shield      soil and skin
     * @param modulationW solar modulation W (1), -20 to 200: 10 at solar minimum, 100 at maximum
     * @param progress    told how far the work has come
     * @return the response
     * @throws IllegalArgumentException if the modulation is outside the range of the model
     */
    public Response cosmic(Shield shield, double modulationW, Progress progress) {
        return cosmic(shield, Sun.of(modulationW), progress);
    }

    /**
     * Response to galactic cosmic rays under a sun that is known more or less well, a day's dose.
     *
     * @param shield   soil and skin
     * @param sun      the sun, with how far it may be off
     * @param progress told how far the work has come
     * @return the response
     */
    public Response cosmic(Shield shield, Sun sun, Progress progress) {
        return transport(shield).cosmic(sun, progress);
    }

    /**
     * Dose of cosmic rays against areal density, by particle, beside published figures.
     *
     * @param shield   soil and skin
     * @param sun      the sun, with how far it may be off
     * @param progress told how far the work has come
     * @return the curve, a day's doses
     */
    public DoseCurve cosmicCurve(Shield shield, Sun sun, Progress progress) {
        return transport(shield).cosmicCurve(sun, progress);
    }

    /**
     * Dose of a solar particle event against areal density, by particle.
     *
     * @param shield   soil and skin
     * @param spectrum protons of the event
     * @param progress told how far the work has come
     * @return the curve, doses of the whole event
     */
    public DoseCurve eventCurve(Shield shield, EventSpectrum spectrum, Progress progress) {
        return transport(shield).eventCurve(spectrum, progress);
    }

    /**
     * Response to a solar particle event, the dose of the whole event.
     *
     * @param shield   soil and skin
     * @param spectrum protons of the event, named in {@code EventSpectra} or the user's own
     * @param progress told how far the work has come
     * @return the response
     */
    public Response event(Shield shield, EventSpectrum spectrum, Progress progress) {
        return transport(shield).event(spectrum, progress);
    }

    /**
     * Gray equivalent of an organ by galactic cosmic rays, a day's.
     *
     * @param shield   soil and skin
     * @param sun      the sun, with how far it may be off
     * @param organ    the organ
     * @param progress told how far the work has come
     * @return the response, counted in Gy-Eq
     */
    public Response cosmicOrgan(Shield shield, Sun sun, OrganDose.Organ organ, Progress progress) {
        return transport(shield).cosmicOrgan(sun, organ, progress);
    }

    /**
     * Gray equivalent of an organ by a solar particle event.
     *
     * @param shield   soil and skin
     * @param spectrum protons of the event
     * @param organ    the organ
     * @param progress told how far the work has come
     * @return the response, counted in Gy-Eq
     */
    public Response eventOrgan(Shield shield, EventSpectrum spectrum, OrganDose.Organ organ, Progress progress) {
        return transport(shield).eventOrgan(spectrum, organ, progress);
    }

    /**
     * Doses of organs by a solar particle event in the room behind soil and skin, as under a dome on the ground.
     *
     * @param shield       soil and skin
     * @param spectrum     protons of the event
     * @param arealDensity soil along the ray plus the skin as soil (kg/m2), 0 to 15 000
     * @param progress     told how far the work has come
     * @return doses of the whole event by organ, skin first
     * @throws IllegalArgumentException if the areal density is outside its range
     */
    Map<OrganDose.Organ, OrganDose> eventOrgans(Shield shield, EventSpectrum spectrum, double arealDensity,
            Progress progress) {
        return transport(shield).organs(new TransportResponse.Source.Event(spectrum), arealDensity, progress);
    }

    /**
     * What walks by chance go by that follow cosmic rays back from a station; a day's doses.
     *
     * @param shield   soil and skin
     * @param sun      the sun
     * @param depth    areal density by whose particles walks are drawn (kg/m2), 50 to 8000; answers do not hang on it
     * @param progress told how far the work has come
     * @return reactions, sources and doses
     */
    public WalkSource cosmicWalk(Shield shield, Sun sun, double depth, Progress progress) {
        return transport(shield).cosmicWalk(sun, guided(depth), progress);
    }

    /**
     * The same for a solar particle event; doses of the whole event.
     *
     * @param shield   soil and skin
     * @param spectrum protons of the event
     * @param depth    areal density by whose particles walks are drawn (kg/m2), 50 to 8000; answers do not hang on it
     * @param progress told how far the work has come
     * @return reactions, sources and doses
     */
    public WalkSource eventWalk(Shield shield, EventSpectrum spectrum, double depth, Progress progress) {
        return transport(shield).eventWalk(spectrum, guided(depth), progress);
    }

    private static double guided(double depth) {
        Require.within("areal density by which walks are drawn", depth, 50, 8000, "kg/m2");
        return depth / KG_M2;
    }

    private TransportResponse transport(Shield shield) {
        return new TransportResponse(shield, skinEquivalence(shield), new ResponseCache(cacheDirectory));
    }

    /**
     * A response that a reviewer hands over in place of the built-in one: CSV with the columns
     * {@code areal_density_g_cm2,isotropic_dose_mSv,low_mSv,high_mSv}, areal densities rising from 0, and the notes
     * {@code # per: day} (or event), {@code # open_ground_return_mSv: 0.05}, {@code # skin_equivalence: 0.95} and
     * {@code # source: …}; {@code # quantity: effective dose} may be left out.
     *
     * @param file the file
     * @return the response, an effective dose
     * @throws InputException if the file cannot be read, a value is missing, out of order or out of range, or its
     *     quantity is another one; with the line
     */
    public static Response fromTable(Path file) {
        HandedOver table = handedOver(file);
        if (!table.quantity().equals(HandedOver.EFFECTIVE_DOSE)) {
            throw InputException.badValue(table.place(), table.quantity(), HandedOver.EFFECTIVE_DOSE
                    + " in place of the built-in response; a table of an organ stands in more_responses");
        }
        return table.response();
    }

    /**
     * A response of any quantity that a reviewer hands over: a file as in {@link #fromTable}, with the note
     * {@code # quantity: gray equivalent, skin} (or another organ) where it is not the effective dose; its mSv are then
     * read as mGy-Eq.
     *
     * @param file the file
     * @return the response and its quantity
     * @throws InputException if the file cannot be read, or a value is missing, out of order or out of range; with the
     *     line
     */
    public static HandedOver handedOver(Path file) {
        return ReviewersTable.read(file);
    }

    /**
     * What one unit of a skin's areal density counts as in soil: the ratio of the stopping of 100 MeV protons.
     *
     * @param shield soil and skin
     * @return equivalence (1), positive; 1 where there is no skin
     */
    public static double skinEquivalence(Shield shield) {
        double mass = shield.skinArealDensity();
        if (mass <= 0) {
            return 1;
        }
        double sum = 0;
        for (Layer layer : shield.skin()) {
            sum += layer.arealDensity() * Stopping.in(layer.material()).protonMeVPerGCm2(COMPARED_AT_MEV);
        }
        return sum / mass / Stopping.in(shield.soil()).protonMeVPerGCm2(COMPARED_AT_MEV);
    }
}
