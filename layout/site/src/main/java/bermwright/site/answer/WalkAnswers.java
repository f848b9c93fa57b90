// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static bermwright.site.answer.Figure.flag;
import static bermwright.site.answer.Figure.of;
import static bermwright.site.answer.Figure.words;

import bermwright.site.exposure.WalkedDose;
import java.util.List;

/** Doses by particles that are followed by chance, beside those that are shown. */
public final class WalkAnswers {
    /** One line for each station and source. */
    public static final AnswerTable<WalkedDose> WALKS = new AnswerTable<>("walks[]",
            "Doses by particles followed by chance; with --walk alone.", WalkedDose.MODEL, List.of(
            words("station", "station", (WalkedDose w) -> w.hull() + "/" + w.station()),
            words("source", "from", WalkedDose::source),
            of("walk_mSv", "by walks", Unit.MSV, WalkedDose::total),
            of("walk_error_mSv", "standard error of the walks", Unit.MSV, (WalkedDose w) -> w.found().error()),
            of("shown_mSv", "shown", Unit.MSV, (WalkedDose w) -> w.shown().best()),
            of("shown_low_mSv", "its low, 16th percentile", Unit.MSV, (WalkedDose w) -> w.shown().low()),
            of("shown_high_mSv", "its high, 84th percentile", Unit.MSV, (WalkedDose w) -> w.shown().high()),
            of("ratio", "walks over shown", Unit.ONE, WalkedDose::ratio),
            words("verdict", "verdict", (WalkedDose w) -> w.verdict().word()),
            of("straight_mSv", "of it straight", Unit.MSV, WalkedDose::straight),
            of("made_mSv", "made on the way, fast", Unit.MSV, (WalkedDose w) -> w.found().fast()),
            of("slow_neutrons_mSv", "neutrons below 20 MeV", Unit.MSV, (WalkedDose w) -> w.found().slow()),
            of("ground_mSv", "gammas of the ground", Unit.MSV, WalkedDose::ground),
            of("walks", "walks", Unit.ONE, (WalkedDose w) -> w.found().walks()).digits(0),
            flag("reached", "stated error reached", (WalkedDose w) -> w.found().reached())));

    private WalkAnswers() {
    }
}
