// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static bermwright.site.answer.Figure.flag;
import static bermwright.site.answer.Figure.maybe;
import static bermwright.site.answer.Figure.of;
import static bermwright.site.answer.Figure.words;

import bermwright.shielding.cover.CoverThickness;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.sizing.SizedCover;
import bermwright.site.sizing.SizedCover.Interval;
import bermwright.site.sizing.SizedCover.LimitShare;
import bermwright.site.sizing.SizedCover.StationShare;
import bermwright.site.sizing.TradePoint;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The search for the least cover that meets the limits. */
public final class SizingAnswers {
    private static final String MODEL = "cover-surface";

    /** The thicknesses found, a hull a line. */
    public static final AnswerTable<Thickness> COVERS = new AnswerTable<>("hulls[]", "The cover found for a hull.",
            MODEL, List.of(
            words("id", "hull", Thickness::hull),
            of("cover.crown_m", "crown", "Thickness over the crown.", Unit.M, (Thickness t) -> t.parts.crown()),
            of("cover.flank_m", "flanks", "Thickness at the flanks.", Unit.M, (Thickness t) -> t.parts.flank()),
            of("cover.base_end_m", "base end", "Thickness before the base end; left out where that is not covered.",
                    Unit.M, (Thickness t) -> t.covered(CoverPlan::baseEnd) ? t.parts.baseEnd() : Double.NaN),
            words("cover.base_end", "base end is", t -> t.end(CoverPlan::baseEnd).word()),
            of("cover.far_end_m", "far end", "Thickness before the far end; left out where that is not covered.",
                    Unit.M, (Thickness t) -> t.covered(CoverPlan::farEnd) ? t.parts.farEnd() : Double.NaN),
            words("cover.far_end", "far end is", t -> t.end(CoverPlan::farEnd).word())));
    /** Doses under them. */
    public static final AnswerTable<StationShare> STATIONS = new AnswerTable<>("stations[]", "Dose under the covers"
            + " found, of somebody who never leaves the station.", "dose-particles", List.of(
            words("station", "station", StationShare::station),
            of("covered_mSv", "best", "Dose, best value.", Unit.MSV, (StationShare s) -> s.dose().best()).digits(1),
            of("high_mSv", "high", "Its 84th percentile.", Unit.MSV, (StationShare s) -> s.dose().high()).digits(1),
            of("share_of_limit", "share of limit", "84th percentile over the limit, hours outside counted; the greatest"
                    + " of all limits.", Unit.PERCENT, StationShare::used).digits(0)));
    /** Dose against soil. */
    public static final AnswerTable<TradePoint> TRADE = new AnswerTable<>("trade[]", "Dose against soil, all hulls"
            + " under one thickness.", MODEL, List.of(
            of("thickness_m", "thickness", Unit.M, TradePoint::thickness),
            of("volume_m3", "soil", "Soil placed.", Unit.M3, TradePoint::volume),
            words("station", "worst station", "Station that is farthest from its limit.", TradePoint::station),
            of("covered_mSv", "best", "Dose there, best value.", Unit.MSV, TradePoint::best).digits(1),
            of("high_mSv", "high", "Its 84th percentile.", Unit.MSV, TradePoint::high).digits(1),
            of("share_of_limit", "share of limit there", "84th percentile over the limit for somebody who stays at"
                    + " that station; the greatest of all limits.", Unit.PERCENT, TradePoint::used).digits(0),
            of("people_share_of_limit", "share, crew and persons", "The same for the crew, sharing its time as"
                    + " planned, and each named person; the greatest.", Unit.PERCENT, TradePoint::people).digits(0)));
    /** What is used of each limit. */
    public static final AnswerTable<LimitShare> USES = new AnswerTable<>("uses[]", "What is used of each limit under"
            + " the covers found, the most used first: it decides how thick they are.", "dose-particles", List.of(
            words("who", "who", LimitShare::who),
            words("limit", "limit on", (LimitShare u) -> u.limit().words()),
            of("limit_mSv", "limit", "The limit.", Unit.MSV, (LimitShare u) -> u.limit().limit()),
            of("best_mSv", "best", "Dose that counts against it, best value.", Unit.MSV, (LimitShare u) ->
                    u.dose().best()).digits(1),
            of("high_mSv", "high", "Its 84th percentile.", Unit.MSV, (LimitShare u) -> u.dose().high()).digits(1),
            of("share_of_limit", "share of limit", "84th percentile over the limit.", Unit.PERCENT, LimitShare::used)
                    .digits(0)));
    /** Thicknesses that meet every limit. */
    public static final AnswerTable<Interval> INTERVALS = new AnswerTable<>("intervals[]", "Thicknesses, the same all"
            + " over a hull, that meet every limit.", MODEL, List.of(
            words("hull", "hull", Interval::hull),
            of("from_m", "from", Unit.M, Interval::from),
            of("to_m", "to", Unit.M, Interval::to)));
    /** Soil placed. */
    public static final Figure<SizedCover> PLACED = of("volume_m3", "to be placed", "Soil placed.", Unit.M3,
            SizedCover::volume);
    /** Soil placed under one thickness for each hull. */
    public static final Figure<SizedCover> UNIFORM = maybe("uniform_volume_m3", "placed, one thickness a hull", "Soil"
            + " that the same thickness all over each hull would take.", Unit.M3, SizedCover::uniformVolume);
    /** Soil dug. */
    public static final Figure<SizedCover> BANK = of("bank_m3", "to be dug", "Soil to be dug, in place.", Unit.M3,
            SizedCover::bankVolume);
    /** Soil that can be dug. */
    public static final Figure<SizedCover> AVAILABLE = maybe("bank_available_m3", "borrow grounds give", "Soil that the"
            + " borrow grounds give, in place.", Unit.M3, SizedCover::bankAvailable);
    /** Where more soil stops paying. */
    public static final Figure<SizedCover> STOPS_PAYING = maybe("stops_paying_m", "more soil stops paying from",
            "Thickness from which on a share more soil takes off less than half such a share of the dose.", Unit.M,
            SizedCover::stopsPaying);
    /** All of it. */
    public static final AnswerTable<SizedCover> SIZED = new AnswerTable<>("", "What size-cover answers.", MODEL,
            List.of(flag("is_met", "every limit met at every station", SizedCover::isMet), PLACED, UNIFORM, BANK,
                    AVAILABLE, STOPS_PAYING),
            List.of(AnswerTable.Part.all("hulls", COVERS, Thickness::of),
                    AnswerTable.Part.all("stations", STATIONS, SizedCover::stations),
                    AnswerTable.Part.all("uses", USES, SizedCover::uses),
                    AnswerTable.Part.all("trade", TRADE, SizedCover::trade),
                    AnswerTable.Part.all("intervals", INTERVALS, SizedCover::intervals)));

    private SizingAnswers() {
    }

    /**
     * The cover found for a hull.
     *
     * @param hull  the hull
     * @param parts thickness of each part
     * @param cover what the plan says of its cover; empty where it has none
     */
    public record Thickness(String hull, CoverThickness parts, Optional<CoverPlan> cover) {
        /**
         * Those of a search.
         *
         * @param sized the search
         * @return a line a hull, by name
         */
        public static List<Thickness> of(SizedCover sized) {
            return sized.thickness().entrySet().stream().sorted(Map.Entry.comparingByKey()).map(e -> new Thickness(
                    e.getKey(), e.getValue(), sized.plan().hull(e.getKey()).flatMap(Hull::cover))).toList();
        }

        private CoverPlan.End end(Function<CoverPlan, CoverPlan.End> which) {
            return cover.map(which).orElse(CoverPlan.End.COVERED);
        }

        private boolean covered(Function<CoverPlan, CoverPlan.End> which) {
            return end(which) == CoverPlan.End.COVERED;
        }
    }
}
