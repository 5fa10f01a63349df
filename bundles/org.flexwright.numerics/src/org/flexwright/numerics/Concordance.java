package org.flexwright.numerics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * How far several people put the same things in one order: Kendall's W, 0 for no agreement and 1 when all orders are alike, corrected for
 * things that share a place (Kendall and Babington Smith 1939, Ann. Math. Stat. 10, 275; Kendall, Rank Correlation Methods).
 *
 * @param w     the coefficient
 * @param sums  sum of the places of each thing; things alike share the mean of their places
 * @param p     the chance of such agreement or a better one when everybody orders at random
 * @param exact whether p was counted out over all orders; else it is that of the F distribution of (m - 1) W / (1 - W)
 */
public record Concordance(double w, double[] sums, double p, boolean exact) {
	private static final int MOST_THINGS = 6;
	private static final int MOST_STATES = 60_000;
	private static final double ROUNDING = 1e-9;

	/**
	 * Compares the orders.
	 *
	 * @param places by person, then by thing: 1 is first; alike is the same number
	 * @return empty for one person, one thing, or when everybody found everything alike
	 */
	public static Optional<Concordance> of(double[][] places) {
		int m = places.length;
		if (m < 2 || places[0].length < 2) {
			return Optional.empty();
		}
		int n = places[0].length;
		double[][] ranks = new double[m][];
		double ties = 0;
		for (int i = 0; i < m; i++) {
			Require.sameLength(places[i].length, n, "things for each person");
			ranks[i] = ranks(Require.finite(places[i], "places"));
			ties += ties(ranks[i]);
		}
		double most = (double) m * m * (n * (double) n * n - n) - m * ties;
		if (most <= ROUNDING) {
			return Optional.empty();
		}
		double[] sums = new double[n];
		for (double[] rank : ranks) {
			for (int j = 0; j < n; j++) {
				sums[j] += rank[j];
			}
		}
		double w = Math.min(1, 12 * Descriptive.sumOfSquares(sums) / most);
		double counted = n <= MOST_THINGS ? counted(ranks, Descriptive.sumOfSquares(sums)) : Double.NaN;
		boolean exact = !Double.isNaN(counted);
		return Optional.of(new Concordance(w, sums, exact ? counted : approximate(w, m, n), exact));
	}

	/** Places with things alike at the mean of the places they share. */
	public static double[] ranks(double[] places) {
		double[] ranks = new double[places.length];
		for (int i = 0; i < places.length; i++) {
			int before = 0;
			int same = 0;
			for (double other : places) {
				before += other < places[i] ? 1 : 0;
				same += other == places[i] ? 1 : 0;
			}
			ranks[i] = before + (same + 1) / 2.0;
		}
		return ranks;
	}

	private static double ties(double[] ranks) {
		return Arrays.stream(ranks).boxed().collect(Collectors.groupingBy(r -> r, Collectors.counting())).values().stream().mapToDouble(t -> (double) t * t * t - t).sum();
	}

	private static double approximate(double w, int m, int n) {
		if (w >= 1) {
			return 0;
		}
		double df1 = n - 1 - 2.0 / m;
		return df1 <= 0 ? Double.NaN : FisherF.upper((m - 1) * w / (1 - w), df1, (m - 1) * df1);
	}

	/** Counts over all orders of each person's own places how often the sums scatter as much; NaN when that would be too many. */
	private static double counted(double[][] ranks, double seen) {
		Map<List<Integer>, Double> states = new HashMap<>();
		states.put(sorted(twice(ranks[0])), 1.0);
		for (int i = 1; i < ranks.length; i++) {
			List<int[]> orders = new ArrayList<>();
			permute(twice(ranks[i]), 0, orders);
			Map<List<Integer>, Double> next = new HashMap<>();
			for (Map.Entry<List<Integer>, Double> state : states.entrySet()) {
				double share = state.getValue() / orders.size();
				for (int[] order : orders) {
					int[] sums = new int[order.length];
					for (int j = 0; j < sums.length; j++) {
						sums[j] = state.getKey().get(j) + order[j];
					}
					next.merge(sorted(sums), share, Double::sum);
				}
			}
			if (next.size() * (double) orders.size() > MOST_STATES * 60.0) {
				return Double.NaN;
			}
			states = next;
		}
		double p = 0;
		for (Map.Entry<List<Integer>, Double> state : states.entrySet()) {
			double[] sums = state.getKey().stream().mapToDouble(s -> s / 2.0).toArray();
			p += Descriptive.sumOfSquares(sums) >= seen - ROUNDING ? state.getValue() : 0;
		}
		return Math.min(1, p);
	}

	/** Halves do not come up among doubled places. */
	private static int[] twice(double[] ranks) {
		return Arrays.stream(ranks).mapToInt(r -> (int) Math.rint(2 * r)).toArray();
	}

	private static List<Integer> sorted(int[] sums) {
		return IntStream.of(sums).sorted().boxed().toList();
	}

	private static void permute(int[] values, int from, List<int[]> out) {
		if (from == values.length) {
			out.add(values.clone());
			return;
		}
		for (int i = from; i < values.length; i++) {
			swap(values, from, i);
			permute(values, from + 1, out);
			swap(values, from, i);
		}
	}

	private static void swap(int[] values, int a, int b) {
		int kept = values[a];
		values[a] = values[b];
		values[b] = kept;
	}
}
