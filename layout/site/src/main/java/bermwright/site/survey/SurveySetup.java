// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.terrain.gridfile.GroundFiles;
import bermwright.terrain.gridfile.GroundSource;
import java.io.Closeable;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** A survey made ready: the open elevation file and the group that is placed on it. */
final class SurveySetup implements Closeable {
    private static final int WIDEST_MARGIN = 4096;
    private static final double CELLS_ACROSS = 2;

    private final SurveyOrder order;
    private final GroundSource ground;
    private final Plan plan;
    private final LaidGroup group;
    private final SiteBounds bounds;
    private final SurveySquares squares;
    private final int margin;

    private SurveySetup(SurveyOrder order, GroundSource ground, Plan plan) {
        this.order = order;
        this.ground = ground;
        this.plan = plan;
        group = LaidGroup.of(plan, ground.metreScale());
        bounds = new SiteBounds(order.isOwnGround() ? Optional.of(plan) : Optional.empty(), ground.metreScale());
        squares = SurveySquares.of(ground.trueSpacing());
        double spacing = ground.trueSpacing();
        if (spacing * CELLS_ACROSS > group.narrowest()) {
            throw InputException.badValue(new InputException.Place(order.elevationFile(), 0, "cell size"),
                    String.format(Locale.ROOT, "%.2f m", spacing), String.format(Locale.ROOT, "at most %.2f m, half the"
                    + " width of the narrowest hull; what is smaller than the cell is not known",
                    group.narrowest() / CELLS_ACROSS));
        }
        if (soil().isAsked() && !(soil().shortest() < order.limits().soilReach())) {
            throw InputException.badValue(new InputException.Place(order.planName(), 0, "--soil-reach"),
                    String.format(Locale.ROOT, "%.0f m, within which even gentle ground all around does not give the"
                    + " %.0f m3 that the covers need", order.limits().soilReach(), soil().volume()),
                    "a longer reach or a deeper borrow (--borrow)");
        }
        double cells = Math.max(group.radius() / spacing + 4, soil().margin()) + SurveyGround.gearCells(spacing);
        if (cells > WIDEST_MARGIN) {
            throw InputException.badValue(new InputException.Place(order.elevationFile(), 0, "cell size"),
                    String.format(Locale.ROOT, "%.3f m, %.0f cells around a place", spacing, cells),
                    "wider cells (gdalwarp -tr), or a shorter reach for soil");
        }
        margin = (int) Math.ceil(cells);
    }

    /**
     * Opens the elevation file and lays the group out.
     *
     * @param order    the survey
     * @param progress told how far the reading of a text has come
     * @return the setup, to be closed
     */
    static SurveySetup open(SurveyOrder order, Progress progress) {
        Plan plan = PlanFiles.read(order.planText(), order.planName());
        GroundSource ground = GroundFiles.open(Path.of(order.elevationFile()),
                new GroundFiles.Knowledge(plan.ground().referenceSystem(), Optional.empty()), progress);
        try {
            return new SurveySetup(order, ground, plan);
        } catch (RuntimeException e) {
            ground.close();
            throw e;
        }
    }

    SurveyLimits limits() {
        return order.limits();
    }

    GroundSource ground() {
        return ground;
    }

    Plan plan() {
        return plan;
    }

    LaidGroup group() {
        return group;
    }

    SiteBounds bounds() {
        return bounds;
    }

    NearSoil soil() {
        return new NearSoil(group, plan, order.limits(), squares);
    }

    FarSight sight() {
        return new FarSight(ground, order.limits(), squares);
    }

    /** Nodes about a cell on which its score may hang (1). */
    int margin() {
        return margin;
    }

    @Override
    public void close() {
        ground.close();
    }
}
