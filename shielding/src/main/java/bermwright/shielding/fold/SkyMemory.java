// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.foundation.Vec3;
import bermwright.shielding.dose.Response;
import bermwright.shielding.raycast.SceneChange;
import bermwright.shielding.raycast.SceneRays;
import bermwright.shielding.raycast.SkyChange;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Remembers what stations saw, so that after a change only the azimuths are looked along again whose rays meet what
 * changed. Two scenes are compared by the value of all that rays can meet; views are the same, number by number, as
 * without a memory. Safe to share between threads.
 */
public final class SkyMemory {
    /** Scenes that are kept at most. */
    private static final int SCENES = 96;
    /** Numbers that a panel of elevation takes up, with what it gave when it was folded. */
    private static final long PANEL = 150;
    private static final int BYTES = 8;
    /** Share of the memory of the machine's program that it may take up. */
    private static final int PART = 4;

    private final long most;
    private final Deque<Kept> kept = new ArrayDeque<>();

    /** A memory that takes up at most a quarter of what this program may. */
    public SkyMemory() {
        this(Runtime.getRuntime().maxMemory() / PART / BYTES);
    }

    /** A memory of at most so many numbers. */
    SkyMemory(long most) {
        this.most = most;
    }

    /** A station and what its view has to settle for. */
    private record Place(Vec3 station, List<Response> responses, double tolerance) {
    }

    /** A scene, what was seen in it, and how it differs from scenes before it. */
    private static final class Kept {
        private final SceneRays scene;
        private final Map<Place, KnownSky> skies = new HashMap<>();
        private final Map<Kept, SceneChange> since = new IdentityHashMap<>();
        private long panels;

        Kept(SceneRays scene) {
            this.scene = scene;
        }

        SkyChange change(Kept before, Vec3 station) {
            return since.computeIfAbsent(before, b -> SceneChange.between(b.scene, scene)).from(station);
        }

        long size() {
            return scene.size() + panels * PANEL;
        }
    }

    /**
     * Looks at the sky until the doses are settled, as {@link SkyView#settled} does.
     *
     * @param scene     the scene, ready for rays
     * @param station   where to look from
     * @param responses the responses that have to settle, at least one
     * @param tolerance share of each dose that may stay open (1), such as 0.005
     * @return the view
     */
    public SkyView settled(SceneRays scene, Vec3 station, List<Response> responses, double tolerance) {
        Place place = new Place(station, List.copyOf(responses), tolerance);
        KnownSky known = known(scene, place);
        SkyView view = SkyView.settled(scene, station, responses, tolerance, known);
        known.settled();
        keep(scene, place, known);
        return view;
    }

    /** What is known of a station: of the scene before that differs least. */
    private synchronized KnownSky known(SceneRays scene, Place place) {
        Kept own = kept.stream().filter(k -> k.scene == scene).findFirst().orElse(null);
        if (own == null) {
            own = new Kept(scene);
            kept.addFirst(own);
        }
        KnownSky seen = own.skies.get(place);
        if (seen != null) {
            return seen;
        }
        KnownSky nearest = null;
        SkyChange least = null;
        for (Kept before : kept) {
            KnownSky sky = before.skies.get(place);
            if (sky != null && (least == null || !least.isNone())) {
                SkyChange change = own.change(before, place.station);
                if (least == null || change.isNone() || change.share() < least.share()) {
                    least = change;
                    nearest = sky;
                }
            }
        }
        return least == null ? KnownSky.nothing() : KnownSky.of(nearest, least);
    }

    private synchronized void keep(SceneRays scene, Place place, KnownSky known) {
        kept.stream().filter(k -> k.scene == scene).findFirst().ifPresent(own -> {
            own.skies.put(place, known);
            own.panels = own.skies.values().stream().mapToLong(KnownSky::size).sum();
            kept.remove(own);
            kept.addFirst(own);
        });
        long all = 0;
        for (Kept one : kept) {
            all += one.size();
        }
        while (!kept.isEmpty() && (all > most || kept.size() > SCENES)) {
            Kept last = kept.removeLast();
            all -= last.size();
            kept.forEach(k -> k.since.remove(last));
        }
    }
}
