// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.mend.CoverOffer;
import bermwright.editor.mend.MendingField;
import bermwright.editor.mend.Offer;
import bermwright.editor.mend.Remedies;
import bermwright.editor.model.Acceptance;
import bermwright.editor.model.Answers;
import bermwright.editor.model.FormModel;
import bermwright.editor.model.Plainly;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.InputException;
import bermwright.site.assessment.CoverSearch;
import bermwright.site.assessment.SiteGround;
import bermwright.site.judgement.Judgement;
import bermwright.site.plan.Plan;
import bermwright.site.sizing.SizedCover;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The picked finding: what it says, what to do, the field that mends it, values that do, and who accepted it. */
final class FindingDetail extends VBox {
    private static final String LANE = "remedy";
    private static final String SIZING = "size covers";

    private final Workbench bench;
    private final Background background;
    private final Acceptance acceptance;
    private final Runnable judged;
    private final Label words = new Label();
    private final Label judgement = new Label();
    private final Label search = new Label();
    private final Button field = new Button();
    private final Button accept = new Button();
    private final Button size = new Button("Size the covers for the dose limits\u2026");
    private final FlowPane offers = new FlowPane(6, 4);
    private Consumer<MendingField> opener = opened -> { };
    private Map<String, String> accepted = Map.of();
    private Map<String, String> outdated = Map.of();
    private Optional<Numbered> shown = Optional.empty();
    private Optional<Plan> searched = Optional.empty();

    FindingDetail(Workbench bench, Background background, Acceptance acceptance, Runnable judged) {
        this.bench = bench;
        this.background = background;
        this.acceptance = acceptance;
        this.judged = judged;
        setId("finding-detail");
        getStyleClass().add("finding-detail");
        words.setId("finding-words");
        search.setId("finding-mending");
        field.setId("finding-field");
        accept.setId("finding-accept");
        judgement.setId("finding-judgement");
        List.of(words, judgement, search).forEach(label -> {
            label.setWrapText(true);
            label.setMinHeight(USE_PREF_SIZE);
        });
        search.getStyleClass().add("hint");
        field.setOnAction(event -> shown.flatMap(n -> MendingField.of(bench.document().plan(), n.finding()))
                .ifPresent(to -> opener.accept(to)));
        size.setId("finding-size-cover");
        size.setTooltip(Hint.of("Looks for the least covers of all hulls that meet the plan's dose limits."));
        size.setOnAction(event -> sizeCovers());
        accept.setOnAction(event -> shown.ifPresent(n -> judge(n.finding())));
        getChildren().addAll(words, judgement, offers, search, new FlowPane(6, 4, size, field, accept));
        show(Optional.empty());
    }

    /** Asks to be told which field is to be opened. */
    void onField(Consumer<MendingField> listener) {
        opener = listener;
    }

    /** What was judged, by id of the finding. */
    void known(Map<String, String> standing, Map<String, String> before) {
        accepted = standing;
        outdated = before;
    }

    void show(Optional<Numbered> finding) {
        setVisible(finding.isPresent());
        setManaged(finding.isPresent());
        Plan plan = bench.document().plan();
        boolean isSame = finding.isPresent() && finding.map(Numbered::finding).equals(shown.map(Numbered::finding))
                && searched.filter(plan::equals).isPresent();
        shown = finding;
        if (finding.isEmpty()) {
            background.cancel(LANE);
            searched = Optional.empty();
            return;
        }
        Finding now = finding.get().finding();
        words.setText(finding.get().number() + "  " + now.text() + "\nTo do: " + now.todo());
        Optional<MendingField> mending = MendingField.of(plan, now);
        field.setText(mending.map(m -> "Open " + m.part().words() + ": " + FormModel.nameOf(m.path())).orElse(""));
        field.setVisible(mending.isPresent());
        field.setManaged(mending.isPresent());
        size.setVisible(CoverOffer.isFor(now) && bench.answers().ground().isPresent());
        size.setManaged(size.isVisible());
        String told = Optional.ofNullable(accepted.get(now.id())).map(w -> "\u2714 " + w).or(() -> Optional.ofNullable(
                outdated.get(now.id())).map(w -> "Was " + w + "; it says something else since, so judge it anew."))
                .orElse("");
        judgement.setText(told);
        judgement.setVisible(!told.isEmpty());
        judgement.setManaged(!told.isEmpty());
        accept.setText(accepted.containsKey(now.id()) ? "Take the acceptance back\u2026" : "Accept\u2026");
        if (!isSame) {
            lookForOffers(plan, now);
        }
    }

    private void lookForOffers(Plan plan, Finding finding) {
        searched = Optional.of(plan);
        offers.getChildren().clear();
        say("");
        Answers answers = bench.answers();
        if (answers.ground().isEmpty() || bench.isTrying()) {
            searched = Optional.empty();
            background.cancel(LANE);
            return;
        }
        say("Looking for values that mend it \u2026");
        background.start(LANE, progress -> Remedies.of(plan, answers.ground().get().grid(), answers.assessment(),
                finding, progress), new Background.Listener<>(this::offer,
                        failure -> say("Values that mend it could not be looked for. " + Plainly.words(failure)),
                        step -> { }, () -> say("")));
    }

    /** Sizes the covers beside the screen's work; what is found is offered while the plan is still the same. */
    private void sizeCovers() {
        Plan plan = bench.document().plan();
        SiteGround ground = bench.answers().ground().orElseThrow();
        size.setDisable(true);
        say("Sizing the covers \u2026");
        background.start(SIZING, progress -> CoverSearch.least(plan, ground, progress), new Background.Listener<>(
                sized -> sized(plan, sized),
                failure -> sizingEnded("The covers could not be sized. " + Plainly.words(failure)),
                step -> say(String.format(Locale.ROOT, "Sizing the covers: %s, %.0f %%", step.words(),
                        100 * step.share())), () -> sizingEnded("")));
    }

    private void sized(Plan plan, SizedCover sized) {
        sizingEnded("");
        if (!plan.equals(bench.document().plan())) {
            say("The plan was changed while its covers were sized; size them again.");
            return;
        }
        Optional<Offer> found = CoverOffer.of(plan, sized);
        if (found.isEmpty()) {
            say("No cover was found that meets the limits. " + sized.findings().stream().map(Finding::text)
                    .collect(Collectors.joining(" ")));
            return;
        }
        offers.getChildren().clear();
        offer(List.of(found.get()));
        say("The least covers found that meet every limit of the plan, by trials on a coarser mound: the next answers"
                + " show it. It can be undone.");
    }

    private void sizingEnded(String said) {
        size.setDisable(false);
        say(said);
    }

    private void offer(List<Offer> found) {
        say(found.isEmpty() ? "" : found.stream().allMatch(Offer::isTried)
                ? "Tried with the check that found it: it is not found at this level any more, and that check refuses"
                + " no more than before. The next answers show the rest. Each can be undone."
                : "By the finding's own figures; the next answers show it. It can be undone.");
        for (int i = 0; i < found.size(); i++) {
            Offer offer = found.get(i);
            Button button = new Button(offer.words());
            button.setId("finding-mend-" + i);
            button.getStyleClass().add("mend");
            button.setOnAction(event -> bench.make(offer.edit()));
            offers.getChildren().add(button);
        }
        offers.setVisible(!found.isEmpty());
        offers.setManaged(!found.isEmpty());
    }

    private void say(String what) {
        search.setText(what);
        search.setVisible(!what.isEmpty());
        search.setManaged(!what.isEmpty());
        offers.setVisible(!offers.getChildren().isEmpty());
        offers.setManaged(!offers.getChildren().isEmpty());
    }

    private void judge(Finding finding) {
        boolean isBack = accepted.containsKey(finding.id());
        JudgeDialog.ask(getScene().getWindow(), finding, isBack).ifPresent(answer -> {
            try {
                acceptance.judge(finding, isBack ? Judgement.Decision.REFUSED : Judgement.Decision.ACCEPTED,
                        answer.name(), answer.reason());
                judged.run();
            } catch (InputException refused) {
                bench.tell("The judgement was not kept. " + refused.getMessage());
            }
        });
    }
}
