// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import bermwright.foundation.Require;
import bermwright.numeric.Bracket;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The lying hull as a beam on rigid supports that stand level and do not clamp it.
 *
 * <p>Two supports bear what balance asks of them, whatever the beam. More share the load as a straight beam of even
 * stiffness does that bends little; a support that sinks more than its neighbours bears less than here and they more.
 * Supports hold both ways: where one would have to pull the hull down its reaction is below zero.
 *
 * @param load      what is borne
 * @param supports  where the supports are from the base (m), at least two, rising, on the hull
 * @param reactions what each support bears (N); below zero where the hull would lift off it
 * @see "Macaulay (1919), Note on the deflection of beams, Messenger of Mathematics 48, 129-130"
 */
public record SupportedBeam(BeamLoad load, List<Double> supports, List<Double> reactions) {
    private static final int HALVINGS = 60;

    /** Copies the lists. */
    public SupportedBeam {
        supports = List.copyOf(supports);
        reactions = List.copyOf(reactions);
        Require.that(supports.size() == reactions.size(), "%s supports bear %s reactions.", supports.size(),
                reactions.size());
    }

    /**
     * A hull on supports.
     *
     * @param load     what is borne
     * @param supports where the supports are from the base (m), at least two, rising, on the hull
     * @return what they bear and how the hull bends
     */
    public static SupportedBeam on(BeamLoad load, List<Double> supports) {
        Require.that(supports.size() >= 2, "%s supports; at least two are needed.", supports.size());
        for (int i = 0; i < supports.size(); i++) {
            Require.within("support from the base", supports.get(i), 0, load.length(), "m");
            Require.that(i == 0 || supports.get(i) > supports.get(i - 1), "supports must stand one after another.");
        }
        return new SupportedBeam(load, supports, reactions(load, supports));
    }

    /**
     * A hull on supports that can only push. Where one would have to pull, the hull rises off it and it is left out,
     * the worst first; of the last two both stay, and a pull there says that the hull tips.
     *
     * @param load     what is borne
     * @param supports where the supports are from the base (m), at least two, rising, on the hull
     * @return the supports that bear, what they bear and how the hull bends
     */
    public static SupportedBeam resting(BeamLoad load, List<Double> supports) {
        SupportedBeam beam = on(load, supports);
        double least = beam.reactions.stream().mapToDouble(r -> r).min().orElseThrow();
        if (!(least < 0) || supports.size() == 2) {
            return beam;
        }
        List<Double> left = new ArrayList<>(supports);
        left.remove(beam.reactions.indexOf(least));
        return resting(load, left);
    }

    /**
     * Forces and moments in balance, and no support moved: sum of R (x - s)^3 / 6 over supports before x, less the
     * load's share, plus a straight line is nothing at each support. Lengths are taken over the hull's.
     */
    private static List<Double> reactions(BeamLoad load, List<Double> supports) {
        int count = supports.size();
        double length = load.length();
        double weight = load.total();
        RealMatrix sums = new Array2DRowRealMatrix(count + 2, count + 2);
        RealVector known = new ArrayRealVector(count + 2);
        for (int i = 0; i < count; i++) {
            double place = supports.get(i) / length;
            for (int j = 0; j < i; j++) {
                sums.setEntry(i, j, Math.pow(place - supports.get(j) / length, 3) / 6);
            }
            sums.setEntry(i, count, 1);
            sums.setEntry(i, count + 1, place);
            known.setEntry(i, load.sagging(supports.get(i)) / (weight * Math.pow(length, 3)));
            sums.setEntry(count, i, 1);
            sums.setEntry(count + 1, i, place);
        }
        known.setEntry(count, 1);
        known.setEntry(count + 1, load.centre() / length);
        RealVector solved = new LUDecomposition(sums, 1e-30).getSolver().solve(known);
        return IntStream.range(0, count).mapToObj(i -> solved.getEntry(i) * weight).toList();
    }

    /**
     * The shear just beyond a place: what the supports up to there push up less what lies before it.
     *
     * @param place from the base (m), 0 to the length
     * @return the shear (N)
     */
    public double shearBeyond(double place) {
        return shear(place, true);
    }

    /**
     * The shear just before a place.
     *
     * @param place from the base (m), 0 to the length
     * @return the shear (N)
     */
    public double shearBefore(double place) {
        return shear(place, false);
    }

    private double shear(double place, boolean beyond) {
        double shear = -load.before(place);
        for (int i = 0; i < supports.size(); i++) {
            shear += supports.get(i) < place || beyond && supports.get(i) == place ? reactions.get(i) : 0;
        }
        return shear;
    }

    /**
     * The bending at a place.
     *
     * @param place from the base (m), 0 to the length
     * @return the moment (N m), positive where the lay-down side is pulled, negative where the crown side is
     */
    public double moment(double place) {
        double moment = -load.turn(place);
        for (int i = 0; i < supports.size(); i++) {
            moment += reactions.get(i) * Math.max(0, place - supports.get(i));
        }
        return moment;
    }

    /**
     * Greatest moment over a support, the crown side pulled.
     *
     * @return the moment (N m), zero or more
     */
    public double hogging() {
        return supports.stream().mapToDouble(s -> -moment(s)).reduce(0, Math::max);
    }

    /**
     * Greatest moment between supports or at one that lifts, the lay-down side pulled.
     *
     * @return the moment (N m), zero or more
     */
    public double sagging() {
        double greatest = 0;
        for (int i = 0; i < supports.size(); i++) {
            greatest = Math.max(greatest, moment(supports.get(i)));
            greatest = i == 0 ? greatest : Math.max(greatest, moment(turn(supports.get(i - 1), supports.get(i))));
        }
        return greatest;
    }

    /** Where shear, which only falls between supports, is nothing; the nearer end where it keeps its sign (m). */
    private double turn(double from, double to) {
        return Bracket.halved(from, to, HALVINGS, along -> shearBeyond(along) > 0).middle();
    }

    /**
     * Greatest shear, which is beside a support.
     *
     * @return the shear without its sign (N), zero or more
     */
    public double greatestShear() {
        return supports.stream().mapToDouble(s -> Math.max(Math.abs(shearBefore(s)), Math.abs(shearBeyond(s))))
                .reduce(0, Math::max);
    }

    /**
     * Places from end to end at which to show shear and bending: even steps and the supports.
     *
     * @param steps even steps along the hull (1), positive
     * @return distances from the base (m), rising
     */
    public List<Double> shown(int steps) {
        Require.positive("steps along the hull", steps, "1");
        return Stream.concat(supports.stream(), IntStream.rangeClosed(0, steps).mapToObj(i ->
                load.length() * i / steps)).distinct().sorted().toList();
    }
}
