package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.flexwright.testing.motion.ImpactFinder.Impact;

/**
 * The impacts of one drop: each flight is shorter than the one before, by about the same share. Other sounds of the room lie between
 * and around them.
 *
 * @param impacts by time, two at least
 */
public record BounceSeries(List<Impact> impacts) {
    /** A flight is this share of the one before, at least and at most. */
    private static final double LEAST_SHARE = 0.1;
    private static final double MOST_SHARE = 0.98;
    /** The next flight is foretold to within this share of it, as the share changes with the speed ... */
    private static final double SHARE_CHANGES = 0.12;
    /** ... and this, s. */
    private static final double TIMES_DIFFER = 0.003;
    /** So many sounds of the room may lie within a flight. */
    private static final int BETWEEN = 12;
    private static final int LONGEST = 200;
    /** s: no drop in a workshop flies longer than from 10 m. */
    private static final double LONGEST_FLIGHT = 2.86;
    /** A further drop in the same recording is at least so good as the best one. */
    private static final double AS_GOOD = 0.5;
    /** What a sound within the series that does not belong to it counts against it. */
    private static final double STRANGER = 0.6;

    public BounceSeries {
        impacts = List.copyOf(impacts);
        if (impacts.size() < 2) {
            throw new IllegalArgumentException("A series of bounces has two impacts at least.");
        }
    }

    /** Flight times, s. */
    public double[] flights() {
        double[] t = new double[impacts.size() - 1];
        for (int i = 0; i < t.length; i++) {
            t[i] = impacts.get(i + 1).time() - impacts.get(i).time();
        }
        return t;
    }

    /**
     * The drops in a recording, by time.
     *
     * @param sounds impacts and other sounds, by time
     * @param quiet  s: a flight is longer
     */
    public static List<BounceSeries> among(List<Impact> sounds, double quiet) {
        if (sounds.size() == 2) {
            double flight = sounds.get(1).time() - sounds.get(0).time();
            return flight > quiet && flight <= LONGEST_FLIGHT ? List.of(new BounceSeries(sounds)) : List.of();
        }
        List<Scored> best = new ArrayList<>();
        for (int i = 0; i < sounds.size(); i++) {
            best(sounds, i, quiet).ifPresent(best::add);
        }
        best.sort(Comparator.comparingDouble(Scored::score).reversed());
        List<BounceSeries> drops = new ArrayList<>();
        for (Scored next : best) {
            boolean asGood = next.score >= AS_GOOD * best.get(0).score;
            if (asGood && drops.stream().noneMatch(d -> next.series.first() <= d.last() + quiet && next.series.last() >= d.first() - quiet)) {
                drops.add(next.series);
            }
        }
        drops.sort(Comparator.comparingDouble(BounceSeries::first));
        return drops;
    }

    private double first() {
        return impacts.get(0).time();
    }

    private double last() {
        return impacts.get(impacts.size() - 1).time();
    }

    private record Scored(BounceSeries series, double score) {
    }

    /** The best series that begins with sound {@code i}. */
    private static Optional<Scored> best(List<Impact> sounds, int i, double quiet) {
        Scored best = null;
        for (int j = i + 1; j < Math.min(sounds.size(), i + BETWEEN); j++) {
            double flight = sounds.get(j).time() - sounds.get(i).time();
            for (int k = j + 1; flight > quiet && flight <= LONGEST_FLIGHT && k < Math.min(sounds.size(), j + BETWEEN); k++) {
                double share = (sounds.get(k).time() - sounds.get(j).time()) / flight;
                if (share >= LEAST_SHARE && share <= MOST_SHARE && share * flight > quiet) {
                    Scored next = follow(sounds, i, j, k, quiet);
                    best = best == null || next.score > best.score ? next : best;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The series that begins with three sounds, as far as it can be followed. */
    private static Scored follow(List<Impact> sounds, int i, int j, int k, double quiet) {
        List<Integer> taken = new ArrayList<>(List.of(i, j, k));
        double misfit = 0;
        while (taken.size() < LONGEST) {
            int last = taken.size() - 1;
            double before = time(sounds, taken, last - 1) - time(sounds, taken, last - 2);
            double flight = time(sounds, taken, last) - time(sounds, taken, last - 1);
            double next = flight * flight / before;
            double tolerance = SHARE_CHANGES * next + TIMES_DIFFER;
            int at = nearest(sounds, taken.get(last), time(sounds, taken, last) + next, tolerance);
            if (next <= quiet || at < 0 || sounds.get(at).time() - time(sounds, taken, last) >= flight) {
                break;
            }
            double off = (sounds.get(at).time() - time(sounds, taken, last) - next) / tolerance;
            misfit += off * off / 2;
            taken.add(at);
        }
        Set<Integer> members = new HashSet<>(taken);
        double score = -misfit;
        for (int s = i; s <= taken.get(taken.size() - 1); s++) {
            score += members.contains(s) ? weight(sounds.get(s)) : -STRANGER * weight(sounds.get(s));
        }
        return new Scored(new BounceSeries(taken.stream().map(sounds::get).toList()), score);
    }

    private static double time(List<Impact> sounds, List<Integer> taken, int at) {
        return sounds.get(taken.get(at)).time();
    }

    /** Loud sounds count more, not in proportion. */
    private static double weight(Impact impact) {
        return 1 + Math.log(Math.max(1, impact.above()));
    }

    private static int nearest(List<Impact> sounds, int after, double time, double tolerance) {
        int best = -1;
        for (int s = after + 1; s < sounds.size() && sounds.get(s).time() <= time + tolerance; s++) {
            double off = Math.abs(sounds.get(s).time() - time);
            if (off <= tolerance && (best < 0 || off < Math.abs(sounds.get(best).time() - time))) {
                best = s;
            }
        }
        return best;
    }
}
