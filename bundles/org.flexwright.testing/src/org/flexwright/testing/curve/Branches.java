package org.flexwright.testing.curve;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.recording.CurvePlot.Curve;
import org.flexwright.testing.Say;

/** Branches of a curve as they are drawn and named. */
final class Branches {
    /** More loops are drawn as first, last and those between. */
    private static final int MOST = 6;

    private Branches() {
    }

    /** One curve a branch; of many branches the first two, all between, and the last two. */
    static List<Curve> curves(List<Trace.Branch> branches, double[] x, double[] y) {
        List<Curve> curves = new ArrayList<>();
        if (branches.isEmpty()) {
            curves.add(new Curve(Say.message("curve.branch.all").text(), x, y));
        } else if (branches.size() <= MOST) {
            for (int i = 0; i < branches.size(); i++) {
                int end = i == branches.size() - 1 ? x.length : branches.get(i).to() + 1;
                curves.add(new Curve(name(branches, i), x, y, branches.get(i).from(), end));
            }
        } else {
            int n = branches.size();
            curves.add(new Curve(name(branches, 0), x, y, branches.get(0).from(), branches.get(0).to() + 1));
            curves.add(new Curve(name(branches, 1), x, y, branches.get(1).from(), branches.get(1).to() + 1));
            curves.add(new Curve(Say.message("curve.branch.between").text(), x, y, branches.get(2).from(), branches.get(n - 3).to() + 1));
            curves.add(new Curve(name(branches, n - 2), x, y, branches.get(n - 2).from(), branches.get(n - 2).to() + 1));
            curves.add(new Curve(name(branches, n - 1), x, y, branches.get(n - 1).from(), x.length));
        }
        return curves;
    }

    private static String name(List<Trace.Branch> branches, int i) {
        boolean out = branches.get(i).out();
        long count = branches.subList(0, i + 1).stream().filter(b -> b.out() == out).count();
        return branches.size() <= 2 ? Say.message(out ? "curve.branch.out" : "curve.branch.back").text() : Say.message(out ? "curve.branch.outs" : "curve.branch.backs", count).text();
    }
}
