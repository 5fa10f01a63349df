package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.recording.Thinning;
import org.flexwright.core.view.Axis;
import org.flexwright.core.view.PlotModel;
import org.flexwright.core.view.PlotModel.Point;
import org.flexwright.core.view.PlotModel.Series;
import org.flexwright.core.view.PlotModel.Style;

/**
 * A sound over time, full scale being 1.
 *
 * @param sound not copied, not to be changed
 * @param rate  samples a second
 */
record SoundPlot(double[] sound, double rate) implements RecordingPlot {

    @Override
    public String id() {
        return "sound";
    }

    @Override
    public String title() {
        return "Sound";
    }

    @Override
    public boolean marksAcross() {
        return true;
    }

    @Override
    public PlotModel whole(int points) {
        return drawn(0, sound.length, Axis.over("Time", "s", 0, Math.max(1, sound.length - 1) / rate), points);
    }

    @Override
    public PlotModel part(double from, double to, int points) {
        if (!(from < to)) {
            throw new IllegalArgumentException("A stretch from " + from + " to " + to + ".");
        }
        int first = (int) Math.clamp(Math.ceil(from * rate), 0, sound.length);
        int last = (int) Math.clamp(Math.floor(to * rate) + 1, first, sound.length);
        Axis round = Axis.over("Time", "s", from, to);
        return drawn(first, last, new Axis(round.title(), from, to, round.ticks().stream().filter(t -> t.value() >= from && t.value() <= to).toList()), points);
    }

    private PlotModel drawn(int from, int to, Axis across, int points) {
        List<Point> list = new ArrayList<>();
        double most = 0;
        for (int row : Thinning.rows(sound, from, to, Math.max(2, points))) {
            list.add(Point.of(row / rate, sound[row]));
            most = Math.max(most, Math.abs(sound[row]));
        }
        return new PlotModel(title(), across, Axis.over("Sound, share of full scale", "", most > 0 ? -most : -1, most > 0 ? most : 1), List.of(new Series("sound", Style.LINE, list)),
                List.of(), List.of());
    }
}
