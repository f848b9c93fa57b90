// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.site.ground.GroundLines;
import bermwright.site.ground.GroundWork;
import bermwright.terrain.gridfile.GeographicPlace;
import bermwright.terrain.gridfile.GroundSource;
import bermwright.terrain.relief.AspectSurface;
import bermwright.terrain.relief.CurvatureSurface;
import bermwright.terrain.relief.FootprintSurface;
import bermwright.terrain.relief.GradientMethod;
import bermwright.terrain.relief.HillshadeSurface;
import bermwright.terrain.relief.Light;
import bermwright.terrain.relief.LightSurface;
import bermwright.terrain.relief.PlaneSurface;
import bermwright.terrain.relief.RoughnessSurface;
import bermwright.terrain.relief.SlopeSurface;
import bermwright.terrain.relief.Surface;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The surfaces of an elevation file that are asked for, and how they are to be worked out. */
final class GroundOptions {
    @Option(names = "--slope", paramLabel = "FILE", description = "Writes the slope at each node, degrees.")
    private Optional<Path> slope = Optional.empty();
    @Option(names = "--aspect", paramLabel = "FILE", description = "Writes the direction of steepest descent, degrees"
            + " clockwise from grid north.")
    private Optional<Path> aspect = Optional.empty();
    @Option(names = "--roughness", paramLabel = "FILE", description = "Writes how uneven the ground is, metres.")
    private Optional<Path> roughness = Optional.empty();
    @Option(names = "--curvature", paramLabel = "FILE", description = "Writes how the ground bends, 1/m.")
    private Optional<Path> curvature = Optional.empty();
    @Option(names = "--hillshade", paramLabel = "FILE", description = "Writes the ground as a picture under a light.")
    private Optional<Path> hillshade = Optional.empty();
    @Option(names = "--footprint", paramLabel = "FILE", description = "Writes the highest ground over the best plane"
            + " under a rectangle (--rectangle) laid about each node, metres.")
    private Optional<Path> footprint = Optional.empty();
    @Option(names = "--contours", paramLabel = "FILE", description = "Writes contour lines as GeoJSON.")
    private Optional<Path> contours = Optional.empty();
    @Option(names = "--horizon", paramLabel = "FILE", description = "Writes the horizon around a place (--at) as a"
            + " table.")
    private Optional<Path> horizon = Optional.empty();
    @Option(names = "--light", paramLabel = "FILE", description = "Writes hours of sunlight between two days (--from,"
            + " --to).")
    private Optional<Path> light = Optional.empty();
    @Option(names = "--compress", description = "Packs files by deflate in tiles, with overviews.")
    private boolean compress;
    @Option(names = "--method", paramLabel = "M", defaultValue = "HORN", description = "Slope and aspect by HORN (eight"
            + " neighbours) or ZEVENBERGEN_THORNE (four).")
    private GradientMethod method = GradientMethod.HORN;
    @Option(names = "--baseline", paramLabel = "M", description = "Slope and roughness of the plane that fits a square"
            + " of this side best, metres.")
    private Optional<Double> baseline = Optional.empty();
    @Option(names = "--measure", paramLabel = "M", defaultValue = "RANGE", description = "Roughness as RANGE, RILEY,"
            + " WILSON or POSITION.")
    private RoughnessSurface.Measure measure = RoughnessSurface.Measure.RANGE;
    @Option(names = "--bend", paramLabel = "B", defaultValue = "PROFILE", description = "Curvature PROFILE, PLAN or"
            + " TOTAL.")
    private CurvatureSurface.Kind bend = CurvatureSurface.Kind.PROFILE;
    @Option(names = "--sun", paramLabel = "AZIMUTH,ELEVATION", split = ",", description = "Light of the picture,"
            + " degrees; 315,45.")
    private List<Double> sun = List.of(315.0, 45.0);
    @Option(names = "--rectangle", paramLabel = "LENGTH,WIDTH,HEADING", split = ",", description = "The rectangle of"
            + " --footprint: metres, metres, degrees from grid north.")
    private List<Double> rectangle = List.of();
    @Option(names = "--interval", paramLabel = "M", defaultValue = "10", description = "Height between contours,"
            + " metres; 10.")
    private double interval = 10;
    @Option(names = "--at", paramLabel = "EAST,NORTH", split = ",", description = "Where the horizon is looked at,"
            + " projected metres; the middle of the file.")
    private List<Double> at = List.of();
    @Option(names = "--eye", paramLabel = "M", defaultValue = "2", description = "Height of the eye, metres; 2.")
    private double eye = 2;
    @Option(names = "--reach", paramLabel = "M", defaultValue = "10000", description = "How far ground is looked at for"
            + " horizon and light, metres; 10000.")
    private double reach = 10_000;
    @Option(names = "--from", paramLabel = "DATE", description = "First day of --light.")
    private Optional<LocalDate> from = Optional.empty();
    @Option(names = "--to", paramLabel = "DATE", description = "Day after the last of --light.")
    private Optional<LocalDate> to = Optional.empty();

    boolean packed() {
        return compress;
    }

    boolean any() {
        return java.util.stream.Stream.of(slope, aspect, roughness, curvature, hillshade, footprint, contours, horizon,
                light).anyMatch(Optional::isPresent);
    }

    /** A surface that was asked for. */
    private record Asked(String title, Path file, Surface surface) {
    }

    void write(GroundWork work, Progress progress) {
        List<Asked> asked = asked(work.ground());
        int all = asked.size() + (contours.isPresent() ? 1 : 0) + (horizon.isPresent() ? 1 : 0);
        int done = 0;
        for (Asked a : asked) {
            work.write(a.title, a.surface, a.file, progress.part((double) done / all, (done + 1.0) / all));
            done++;
        }
        if (contours.isPresent()) {
            Progress part = progress.part((double) done / all, (done + 1.0) / all);
            Options.checked("--interval", () -> {
                GroundLines.contours(work, interval, contours.get(), part);
                return true;
            });
            done++;
        }
        if (horizon.isPresent()) {
            Progress part = progress.part((double) done / all, 1);
            GroundLines.View view = Options.checked("--at, --eye, --reach", () -> new GroundLines.View(
                    place(work.ground()), eye, reach, 360));
            GroundLines.horizon(work, view, horizon.get(), part);
        }
    }

    private Point place(GroundSource ground) {
        if (at.isEmpty()) {
            return ground.frame().centre();
        }
        List<Double> two = numbers("--at", at, 2);
        return new Point(two.get(0), two.get(1));
    }

    private List<Asked> asked(GroundSource ground) {
        double spacing = ground.trueSpacing();
        List<Asked> list = new ArrayList<>();
        slope.ifPresent(f -> list.add(baseline.map(b -> new Asked("slope over " + b + " m", f,
                Options.checked("--baseline", () -> PlaneSurface.over(PlaneSurface.Quantity.SLOPE, b, spacing))))
                        .orElseGet(() -> new Asked("slope", f,
                new SlopeSurface(method)))));
        aspect.ifPresent(f -> list.add(new Asked("aspect", f, new AspectSurface(method))));
        roughness.ifPresent(f -> list.add(baseline.map(b -> new Asked("roughness over " + b + " m", f,
                Options.checked("--baseline", () -> PlaneSurface.over(PlaneSurface.Quantity.ROUGHNESS, b, spacing))))
                .orElseGet(() -> new Asked("roughness", f, new RoughnessSurface(measure)))));
        curvature.ifPresent(f -> list.add(new Asked("curvature", f, new CurvatureSurface(bend))));
        hillshade.ifPresent(f -> list.add(new Asked("hillshade", f, new HillshadeSurface(Options.checked("--sun", () ->
                new Light(Azimuth.ofDegrees(numbers("--sun", sun, 2).get(0)), Math.toRadians(sun.get(1)))), 1))));
        footprint.ifPresent(f -> list.add(new Asked("high spot under the footprint", f,
                Options.checked("--rectangle", () -> underFootprint(spacing)))));
        light.ifPresent(f -> list.add(new Asked("hours of sunlight", f, Options.checked("--from, --to, --reach",
                () -> new LightSurface(stay(ground), reach, spacing)))));
        return list;
    }

    private Surface underFootprint(double spacing) {
        List<Double> three = numbers("--rectangle", rectangle, 3);
        return new FootprintSurface(FootprintSurface.Quantity.HIGH_SPOT, new FootprintSurface.Rectangle(three.get(0),
                three.get(1), Azimuth.ofDegrees(three.get(2))), spacing);
    }

    private LightSurface.Stay stay(GroundSource ground) {
        LocalDate first = from.orElseThrow(() -> Options.bad("--from", "not given", "a day such as 2030-01-01"));
        LocalDate last = to.orElseThrow(() -> Options.bad("--to", "not given", "a day such as 2031-01-01"));
        GeographicPlace middle = ground.referenceSystem().map(s -> s.geographic(ground.frame().centre()))
                .orElseThrow(() -> Options.bad("--light", "a file without reference system",
                        "a file that says where it lies"));
        return new LightSurface.Stay(Math.toRadians(middle.latitudeDeg()), Math.toRadians(middle.longitudeDeg()),
                ground.scale().trueNorth().orElse(new Azimuth(0)), first.atStartOfDay().toInstant(ZoneOffset.UTC),
                last.atStartOfDay().toInstant(ZoneOffset.UTC));
    }

    private static List<Double> numbers(String option, List<Double> numbers, int count) {
        if (numbers.size() != count) {
            throw Options.bad(option, numbers.toString(), count + " numbers, with commas between them");
        }
        return numbers;
    }
}
