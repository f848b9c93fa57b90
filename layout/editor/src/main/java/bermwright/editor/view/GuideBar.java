// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.Guide;
import bermwright.editor.model.Settings;
import bermwright.site.plan.Hull;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The guided path as notices over the map; it can be left at any stop. */
final class GuideBar {
    private final SitePane site;
    private final Guide guide = new Guide();
    private final Settings settings;

    private GuideBar(SitePane site, Settings settings) {
        this.site = site;
        this.settings = settings;
    }

    static void start(SitePane site, Settings settings) {
        new GuideBar(site, settings).show();
    }

    private void show() {
        Guide.Stop stop = guide.stop();
        site.answers().show(stop.heading());
        if (stop.hasHull()) {
            site.bench().plan().hulls().stream().filter(h -> h.arrival() == Hull.Arrival.LOWERED).findFirst()
                    .ifPresent(hull -> site.bench().pick(Optional.of(Part.hull(hull.id()))));
        }
        List<Notices.Choice> choices = new ArrayList<>();
        if (guide.isLast()) {
            choices.add(new Notices.Choice("Done", this::end));
        } else {
            choices.add(new Notices.Choice("Next", () -> {
                guide.next();
                show();
            }));
            choices.add(new Notices.Choice("Leave", this::end));
        }
        site.notices().show("guide", guide.place() + ".  " + stop.words(), choices);
    }

    private void end() {
        settings.put("guided", true);
        settings.keep();
        site.map().requestFocus();
    }
}
