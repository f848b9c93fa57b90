// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.site.doubt.FigureDoubt.GroupShare;
import bermwright.site.doubt.FigureDoubt.Worth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;

/** Says what decides a figure, from samples of it. */
final class Decider {
    private static final int DEGREE = 3;
    private static final int TOGETHER = 2;
    private static final int OUTER = 48;
    private static final int INNER = 400;
    private static final double PIECES = 10;
    /** Left-out error above which a surrogate says too little to value finding out (1). */
    private static final double TRUSTED = 0.3;
    private static final double STILL = 1e-9;

    private final List<UncertainInput> inputs;
    private final double[][] off;
    private final double[][] outer;
    private final double[][] inner;
    private final double[] rest;

    Decider(List<UncertainInput> inputs, double[][] off, long seed) {
        this.inputs = inputs;
        this.off = off;
        outer = QuasiRandom.normal(inputs.size(), OUTER, seed + 1);
        inner = QuasiRandom.normal(inputs.size() + 1, INNER, seed + 2);
        rest = Arrays.stream(inner).mapToDouble(p -> p[inputs.size()]).toArray();
    }

    FigureDoubt of(Figure figure, double best, double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        List<Double> all = Arrays.stream(sorted).boxed().toList();
        double kept = figure.limit().isEmpty() ? Double.NaN
                : Arrays.stream(values).filter(figure::keeps).count() / (double) values.length;
        double size = Math.max(Math.abs(sorted[0]), Math.abs(sorted[sorted.length - 1]));
        if (!(sorted[sorted.length - 1] - sorted[0] > STILL * Math.max(size, STILL))) {
            return new FigureDoubt(figure, best, all, kept, List.of(), 0, List.of());
        }
        ChaosExpansion fit = ChaosExpansion.fit(off, values, new ChaosExpansion.Shape(ChaosExpansion.Family.HERMITE,
                DEGREE, TOGETHER));
        boolean inDoubt = kept > 0 && kept < 1;
        double left = Math.sqrt(ChaosExpansion.variance(values) * Math.min(1, fit.error()));
        List<GroupShare> shares = shares(fit);
        return new FigureDoubt(figure, best, all, kept, shares, fit.error(), inDoubt && fit.error() < TRUSTED
                ? worth(figure, fit, left, shares.stream().map(GroupShare::group).toList()) : List.of());
    }

    private List<String> groups() {
        return new ArrayList<>(new LinkedHashSet<>(inputs.stream().map(UncertainInput::group).toList()));
    }

    private boolean[] members(String group) {
        boolean[] members = new boolean[inputs.size()];
        for (int i = 0; i < members.length; i++) {
            members[i] = inputs.get(i).group().equals(group);
        }
        return members;
    }

    private List<GroupShare> shares(ChaosExpansion fit) {
        List<GroupShare> shares = new ArrayList<>();
        for (String group : groups()) {
            ChaosExpansion.Share share = fit.share(members(group));
            shares.add(new GroupShare(group, share.first(), share.total(), share.error()));
        }
        shares.sort(Comparator.comparingDouble(GroupShare::total).reversed());
        return shares;
    }

    /** With the surrogate and what it leaves: the likelier verdict is right as often as it is likely. */
    private List<Worth> worth(Figure figure, ChaosExpansion fit, double left, List<String> greatestFirst) {
        List<Worth> worth = new ArrayList<>();
        double now = right(figure, fit, left, new boolean[inputs.size()], 0);
        for (String group : greatestFirst) {
            UncertainInput.FindingOut finding = inputs.stream().filter(i -> i.group().equals(group)).findFirst()
                    .orElseThrow().finding();
            double known = finding.isSampled() ? PIECES / (PIECES + 1) : 1;
            String words = finding.words().startsWith("ten ") ? finding.words() + " (" + group + ")" : finding.words();
            worth.add(new Worth(words, now, Math.max(now, right(figure, fit, left, members(group), known))));
        }
        worth.sort(Comparator.comparingDouble(Worth::then).reversed());
        return worth;
    }

    private double right(Figure figure, ChaosExpansion fit, double left, boolean[] group, double known) {
        double sum = 0;
        int times = known > 0 ? OUTER : 1;
        for (int j = 0; j < times; j++) {
            int kept = 0;
            for (int n = 0; n < INNER; n++) {
                double[] at = Arrays.copyOf(inner[n], group.length);
                for (int i = 0; i < group.length; i++) {
                    at[i] = group[i] ? Math.sqrt(known) * outer[j][i] + Math.sqrt(1 - known) * at[i] : at[i];
                }
                kept += figure.keeps(fit.at(at) + left * rest[n]) ? 1 : 0;
            }
            double share = kept / (double) INNER;
            sum += Math.max(share, 1 - share) / times;
        }
        return sum;
    }
}
