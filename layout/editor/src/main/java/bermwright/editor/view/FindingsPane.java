// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.Acceptance;
import bermwright.editor.model.FindingBoard;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The findings, filtered and put together as asked, the worst first; picking one goes there and says how to mend. */
final class FindingsPane extends VBox {
    /** Least height of the list of findings (pixels). */
    private static final double LEAST_TREE = 110;
    private final Workbench bench;
    private final PartActions actions;
    private final Acceptance acceptance;
    private final Label summary = new Label();
    private final FindingFilter filter = new FindingFilter();
    private final FindingDetail detail;
    private final TreeView<FindingRow> tree = new TreeView<>(new TreeItem<>(FindingRow.ROOT));
    private final Map<String, Boolean> opened = new HashMap<>();
    private List<FindingBoard.Group> shown = List.of();
    private Dress dress;
    private Plan shownPlan;
    private Map<String, String> accepted = Map.of();
    private Set<Finding> stale = Set.of();
    private boolean isFollowing;

    FindingsPane(Workbench bench, PartActions actions, Background background, Dress dress) {
        this.bench = bench;
        this.actions = actions;
        this.dress = dress;
        this.acceptance = new Acceptance(bench.document().file());
        this.detail = new FindingDetail(bench, background, acceptance, this::again);
        summary.setId("finding-summary");
        summary.setWrapText(true);
        summary.getStyleClass().add("heading");
        tree.setId("findings");
        tree.setAccessibleText("Findings, the worst first");
        tree.setShowRoot(false);
        tree.setCellFactory(view -> new FindingCell(tree, () -> this.dress, id -> accepted.containsKey(id),
                this::isStale));
        tree.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> picked(now));
        tree.setOnMouseClicked(event -> {
            if (event.getClickCount() == 2) {
                goAgain();
            }
        });
        tree.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                goAgain();
            }
        });
        summary.setMinHeight(USE_PREF_SIZE);
        tree.setMinHeight(LEAST_TREE);
        VBox.setVgrow(tree, Priority.ALWAYS);
        filter.brief(dress.scale() > SitePane.LARGE);
        getChildren().addAll(summary, filter, tree, detail);
        getStyleClass().add("answer");
        filter.onChange(this::again);
        bench.calm().listen(this::refresh);
        bench.pickedChanged().listen(this::followPicked);
        refresh();
    }

    /** Dresses the list for another window. */
    void dress(Dress changed) {
        boolean isOther = changed.scale() != dress.scale();
        dress = changed;
        if (isOther) {
            filter.brief(dress.scale() > SitePane.LARGE);
        }
        tree.refresh();
    }

    /** Picks the first finding shown that is wanted, as a click would. */
    boolean pick(Predicate<Finding> wanted) {
        Optional<TreeItem<FindingRow>> item = items().filter(i -> i.getValue().finding()
                .filter(n -> wanted.test(n.finding())).isPresent()).findFirst();
        item.ifPresent(i -> {
            Optional.ofNullable(i.getParent()).ifPresent(group -> group.setExpanded(true));
            tree.getSelectionModel().select(i);
        });
        return item.isPresent();
    }

    FindingDetail detail() {
        return detail;
    }

    private void picked(TreeItem<FindingRow> now) {
        Optional<Numbered> finding = Optional.ofNullable(now).flatMap(item -> item.getValue().finding());
        if (!isFollowing) {
            finding.ifPresent(this::go);
        }
        detail.show(finding);
    }

    private void goAgain() {
        Optional.ofNullable(tree.getSelectionModel().getSelectedItem()).flatMap(i -> i.getValue().finding())
                .ifPresent(this::go);
    }

    private void go(Numbered finding) {
        bench.pickFinding(finding);
        bench.place(finding.finding()).ifPresent(actions::flyTo);
    }

    /** A finding picked on the map is picked here too. */
    private void followPicked() {
        bench.pickedFinding().flatMap(number -> items().filter(i -> i.getValue().finding()
                .filter(n -> n.number().equals(number)).isPresent()).findFirst()).ifPresent(item -> {
                    if (tree.getSelectionModel().getSelectedItem() != item) {
                        isFollowing = true;
                        Optional.ofNullable(item.getParent()).ifPresent(group -> group.setExpanded(true));
                        tree.getSelectionModel().select(item);
                        tree.scrollTo(Math.max(0, tree.getRow(item) - 1));
                        isFollowing = false;
                    }
                });
    }

    private Stream<TreeItem<FindingRow>> items() {
        return tree.getRoot().getChildren().stream().flatMap(group -> Stream.concat(
                Stream.of(group), group.getChildren().stream()));
    }

    private void again() {
        shownPlan = null;
        refresh();
    }

    private void refresh() {
        acceptance.follow(bench.document().file());
        List<Numbered> findings = bench.findings();
        Plan plan = bench.plan();
        List<Finding> plain = findings.stream().map(Numbered::finding).toList();
        accepted = acceptance.accepted(plain);
        detail.known(accepted, acceptance.outdated(plain));
        filter.offer(findings.stream().map(n -> FindingBoard.about(plan, n.finding())).distinct().sorted().toList(),
                plain, accepted.size());
        FindingBoard.Filter asked = filter.asked(accepted.keySet());
        List<FindingBoard.Group> groups = FindingBoard.groups(plan, findings, asked, filter.grouping());
        if (!groups.equals(shown) || shownPlan == null) {
            boolean isOther = shownPlan == null;
            shown = groups;
            shownPlan = plan;
            fill(groups);
            if (isOther) {
                Set<String> seen = groups.stream().flatMap(g -> g.members().stream()).map(n -> n.finding().id())
                        .collect(Collectors.toCollection(HashSet::new));
                Set<String> all = plain.stream().map(Finding::id).collect(Collectors.toSet());
                bench.showFindings(f -> seen.contains(f.id()) || !all.contains(f.id()));
            }
        }
        Set<Finding> old = plain.stream().filter(this::isStale).collect(Collectors.toSet());
        if (!old.equals(stale)) {
            stale = old;
            tree.refresh();
        }
        summary.setText(summary(findings, bench.answers().unchecked(bench.document().plan()))
                + acceptance.trouble().map(t -> ". What was accepted is not known: " + t).orElse(""));
    }

    private boolean isStale(Finding finding) {
        return bench.answers().isStale(bench.plan(), finding);
    }

    private void fill(List<FindingBoard.Group> groups) {
        isFollowing = true;
        Optional<String> kept = Optional.ofNullable(tree.getSelectionModel().getSelectedItem())
                .map(TreeItem::getValue).map(FindingRow::key);
        List<TreeItem<FindingRow>> items = new ArrayList<>();
        for (FindingBoard.Group group : groups) {
            if (group.members().size() == 1 || group.heading().isEmpty()) {
                group.members().forEach(n -> items.add(new TreeItem<>(FindingRow.of(n, false))));
                continue;
            }
            TreeItem<FindingRow> head = new TreeItem<>(FindingRow.of(group));
            group.members().forEach(n -> head.getChildren().add(new TreeItem<>(FindingRow.of(n, true))));
            head.setExpanded(opened.getOrDefault(group.key(), group.worst() == Finding.Level.REFUSE));
            head.expandedProperty().addListener((observed, before, now) -> opened.put(group.key(), now));
            items.add(head);
        }
        tree.getRoot().getChildren().setAll(items);
        kept.flatMap(key -> items().filter(i -> i.getValue().key().equals(key)).findFirst())
                .ifPresentOrElse(tree.getSelectionModel()::select, tree.getSelectionModel()::clearSelection);
        isFollowing = false;
        detail.show(Optional.ofNullable(tree.getSelectionModel().getSelectedItem())
                .flatMap(i -> i.getValue().finding()));
    }

    static String summary(List<Numbered> findings, Optional<String> unchecked) {
        String counts = List.of(Finding.Level.values()).stream().map(level -> {
            long count = findings.stream().filter(f -> f.finding().level() == level).count();
            return count + " " + level.word();
        }).collect(Collectors.joining(" \u00b7 "));
        String found = findings.isEmpty() ? unchecked.isPresent() ? "" : "Nothing found against this plan" : counts;
        return unchecked.map(u -> found.isEmpty() ? u : found + ". " + u).orElse(found);
    }
}
