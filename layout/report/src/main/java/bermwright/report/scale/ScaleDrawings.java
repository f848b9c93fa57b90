// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.report.drawing.Drawing;
import bermwright.report.paper.Paper;
import bermwright.report.paper.PdfPaper;
import bermwright.report.paper.SvgPaper;
import bermwright.report.sheet.CoverSheets;
import bermwright.report.sheet.WorkGround;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.exposure.SiteCover;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.haulage.DugGround;
import bermwright.site.plan.BorrowGround;
import bermwright.site.stages.SettingOutPoint;
import bermwright.terrain.grid.ElevationGrid;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The sheets of a plan: site, hulls with their sections, contours, borrow pits and setting-out. */
public final class ScaleDrawings {
    private static final double DUG = 0.01;

    private final Assessment assessment;
    private final SheetInfo info;
    private final Optional<ElevationGrid> fine;
    private final Optional<ElevationGrid> coarse;

    private ScaleDrawings(Assessment assessment, SheetInfo.Issue issue) {
        this.assessment = assessment;
        this.info = SheetInfo.of(assessment, issue);
        Optional<SiteCover> cover = assessment.cover().filter(c -> !c.hulls().isEmpty());
        this.fine = cover.map(this::ground);
        this.coarse = cover.map(this::whole);
    }

    private ElevationGrid ground(SiteCover cover) {
        WorkGround work = WorkGround.of(assessment, cover);
        return ElevationGrid.of(work.frame(), work.finished()).withMetreScale(assessment.ground().grid().metreScale());
    }

    private ElevationGrid whole(SiteCover cover) {
        ElevationGrid ground = cover.finished().withPatches(List.of());
        for (DugGround pit : assessment.earthworks().map(e -> e.dug()).orElse(List.of())) {
            ground = pit.dugIn(ground);
        }
        return ground;
    }

    /**
     * A sheet that is drawn.
     *
     * @param name  file-safe name, with its number before it
     * @param title what it shows
     * @param scale its scale: metres that a metre on paper stands for (1)
     * @param paper the sheet
     */
    public record ScaleSheet(String name, String title, int scale, Paper paper) {
    }

    /**
     * The sheets of a plan.
     *
     * @param assessment the assessment they show
     * @param revision   letter or number of the revision; empty for none
     * @param date       date as it is to stand on them; empty for none
     * @return draws them in any size
     */
    public static ScaleDrawings of(Assessment assessment, String revision, String date) {
        return new ScaleDrawings(assessment, new SheetInfo.Issue(revision, date));
    }

    /**
     * Draws the sheets.
     *
     * @param size     their size
     * @param progress may cancel the work between two sheets
     * @return the sheets in their order
     */
    public List<ScaleSheet> sheets(SheetSize size, Progress progress) {
        List<Draft> drafts = drafts(size);
        List<ScaleSheet> sheets = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            progress.check();
            Draft draft = drafts.get(i);
            Sheet sheet = new Sheet(size);
            Draft.Drawn drawn = draft.draw().apply(sheet);
            new SheetPanel(sheet, info, new SheetPanel.Head(i + 1, drafts.size(), draft.title(), drawn.scale(), size))
                    .draw(drawn.right());
            sheets.add(new ScaleSheet(String.format(Locale.ROOT, "%02d-%s", i + 1, draft.name()), draft.title(),
                    drawn.scale(), sheet.paper()));
        }
        return sheets;
    }

    private List<Draft> drafts(SheetSize size) {
        PlanDrafts plans = new PlanDrafts(assessment, fine, coarse);
        List<Draft> drafts = new ArrayList<>(List.of(plans.site()));
        for (HullShapes shapes : assessment.shapes().hulls()) {
            drafts.add(plans.hull(shapes));
            assessment.hull(shapes.hull().id()).ifPresent(hull -> sections(hull, drafts));
        }
        if (fine.isPresent()) {
            drafts.add(plans.contours("contours", "Finished contours: site", List.of()));
            Map<List<Point>, List<String>> mounds = new LinkedHashMap<>();
            for (HullShapes shapes : assessment.shapes().hulls()) {
                List<Point> toes = shapes.shapes().stream().filter(s -> s.kind() == ShapeKind.COVER_TOE)
                        .flatMap(s -> s.outline().corners().stream()).toList();
                if (!toes.isEmpty()) {
                    mounds.computeIfAbsent(toes, t -> new ArrayList<>()).add(shapes.hull().id());
                }
            }
            mounds.forEach((toes, ids) -> drafts.add(plans.contours(Drawing.name("contours", String.join("-", ids)),
                    "Finished contours: " + (ids.size() > 1 ? "hulls " : "hull ") + String.join(", ", ids), toes)));
        }
        borrows(drafts);
        settingOut(drafts, size);
        return drafts;
    }

    private void sections(HullAssessment hull, List<Draft> drafts) {
        if (hull.lying().isPresent() && assessment.cover().isPresent()) {
            SectionDrafts sections = new SectionDrafts(hull.hull(), hull.lying().get(), new CoverSheets(hull.hull(),
                    hull.lying().get(), assessment.cover().get(), assessment.plan().walls()));
            drafts.add(sections.along());
            drafts.add(sections.across());
        }
    }

    private void borrows(List<Draft> drafts) {
        double lift = assessment.plan().hulls().stream().flatMap(h -> h.cover().stream()).mapToDouble(c -> c.lift())
                .min().orElse(1);
        for (DugGround dug : assessment.earthworks().map(e -> e.dug()).orElse(List.of())) {
            Optional<BorrowGround> borrow = assessment.plan().borrowGrounds().stream()
                    .filter(b -> b.id().equals(dug.from())).findFirst();
            if (borrow.isPresent() && dug.depth() > DUG) {
                BorrowDrafts pit = new BorrowDrafts(assessment, borrow.get(), dug, lift);
                drafts.add(pit.plan());
                drafts.add(pit.sections());
            }
        }
    }

    private void settingOut(List<Draft> drafts, SheetSize size) {
        SettingOutDrafts points = new SettingOutDrafts(assessment);
        List<SettingOutPoint> left = new ArrayList<>(assessment.settingOut());
        for (HullShapes shapes : assessment.shapes().hulls()) {
            String id = shapes.hull().id();
            List<SettingOutPoint> own = left.stream().filter(p -> p.subject().equals(id)).toList();
            left.removeAll(own);
            drafts.addAll(points.of(id, "Setting-out: hull " + id, own, shapes.hull().layDownAzimuth(), size));
        }
        drafts.addAll(points.of("site", "Setting-out: site", left, PlanView.EAST, size));
    }

    /**
     * Writes the sheets of a size: one PDF of them all, and each as SVG.
     *
     * @param folder   where to; must be there
     * @param size     their size
     * @param progress may cancel the work between two sheets
     * @throws IOException if they cannot be written
     */
    public void write(Path folder, SheetSize size, Progress progress) throws IOException {
        List<ScaleSheet> sheets = sheets(size, progress);
        Path each = Files.createDirectories(folder.resolve("sheets-" + size));
        for (ScaleSheet sheet : sheets) {
            Files.writeString(each.resolve(sheet.name() + ".svg"), SvgPaper.of(sheet.paper(), sheet.title() + ", "
                    + Scales.words(sheet.scale()) + " at " + size), StandardCharsets.UTF_8);
        }
        Files.write(folder.resolve("sheets-" + size + ".pdf"), PdfPaper.of(sheets.stream().map(ScaleSheet::paper)
                .toList(), info.title() + ": drawings to scale, " + size));
    }
}
