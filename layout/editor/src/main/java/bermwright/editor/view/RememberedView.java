// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.MapCamera;
import bermwright.editor.model.ReliefLook;
import bermwright.editor.model.Settings;
import bermwright.foundation.Point;
import java.nio.file.Path;

/** Keeps which columns are seen, what the map shows, and which part of which plan, from one run to the next. */
final class RememberedView {
    /** Whether list and form are seen. */
    static final String LIST = "column.list";
    /** Whether the answers are seen. */
    static final String ANSWERS = "column.answers";

    private RememberedView() {
    }

    static void keep(SitePane pane, Settings settings) {
        ReliefLook relief = pane.relief();
        settings.put("layer.shade", relief.isShaded());
        settings.put("layer.contours", relief.hasContours());
        settings.put("layer.slopes", relief.hasSlopeBands());
        MapLook look = pane.map().dress();
        settings.put("layer.gear", look.hasGear());
        settings.put("layer.sweeps", look.hasSweeps());
        settings.put("layer.toes", look.hasCover());
        settings.put("layer.findings", look.hasMarks());
        settings.put(LIST, pane.hasList());
        settings.put(ANSWERS, pane.hasAnswers());
        MapCamera camera = pane.map().camera();
        settings.put("view.plan", name(pane.bench().document().file()));
        settings.put("view.east_m", camera.centre().east());
        settings.put("view.north_m", camera.centre().north());
        settings.put("view.m_a_pixel", camera.metresPerPixel());
    }

    /** Shows columns and layers as they were and, where it is the same plan, the same part of it. */
    static void restore(SitePane pane, Settings settings, Dress dress) {
        if (!settings.flag(LIST, true) || !settings.flag(ANSWERS, true)) {
            pane.showColumns(settings.flag(LIST, true), settings.flag(ANSWERS, true), dress);
        }
        ReliefLook relief = pane.relief();
        pane.relief(new ReliefLook(settings.flag("layer.shade", true), settings.flag("layer.contours", true),
                settings.flag("layer.slopes", false), relief.isDark(), relief.contourInterval()));
        MapLook look = pane.map().dress();
        pane.map().dress(new MapLook(look.isDark(), look.textSize(), settings.flag("layer.gear", true),
                settings.flag("layer.sweeps", true), settings.flag("layer.toes", true),
                settings.flag("layer.findings", true)));
        double east = settings.number("view.east_m", Double.NaN);
        double north = settings.number("view.north_m", Double.NaN);
        double scale = settings.number("view.m_a_pixel", Double.NaN);
        boolean isSame = settings.text("view.plan").filter(name(pane.bench().document().file())::equals).isPresent();
        if (isSame && Double.isFinite(east) && Double.isFinite(north) && scale > 0) {
            MapCamera now = pane.map().camera();
            pane.lookAtOnce(new MapCamera(new Point(east, north), scale, now.width(), now.height()));
        }
    }

    private static String name(Path file) {
        return file.toAbsolutePath().normalize().toString();
    }
}
