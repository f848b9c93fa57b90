// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.site.footprint.Shape;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Outlines that change together, those of one hull or those of the site, in a spatial index. */
final class OutlinedGroup {
    private final List<Outlined> outlines;
    private final STRtree index = new STRtree();
    private final Envelope box = new Envelope();

    OutlinedGroup(List<Shape> shapes) {
        this.outlines = shapes.stream().map(Outlined::new).toList();
        for (int i = 0; i < outlines.size(); i++) {
            index.insert(outlines.get(i).box(), i);
            box.expandToInclude(outlines.get(i).box());
        }
        index.build();
    }

    List<Outlined> outlines() {
        return outlines;
    }

    /** Which outlines come within a reach (projected m) of one by their boxes, in order. */
    List<Integer> near(Outlined one, double reach) {
        Envelope search = new Envelope(one.box());
        search.expandBy(reach);
        if (!search.intersects(box)) {
            return List.of();
        }
        List<Integer> near = new ArrayList<>();
        index.query(search, found -> near.add((Integer) found));
        near.sort(null);
        return near;
    }
}
