package org.flexwright.workbench.pages.recording;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.view.Overlay;
import org.flexwright.core.view.PlotModel;
import org.flexwright.workbench.kit.ChartWindow;

/** Makes what is to be drawn off the screen's thread. While one drawing is made only the newest wish waits: the hand is never behind. */
final class PlotFeed {

    private final Display display;
    private final AtomicReference<Wish> wish = new AtomicReference<>();
    private final Job job = Job.createSystem("Drawing", this::work);

    /**
     * A plot to lay over the others.
     *
     * @param name what it is of
     * @param plot draws it
     */
    record Curve(String name, RecordingPlot plot) {
    }

    private record Wish(List<Curve> curves, ChartWindow window, int points, Consumer<PlotModel> drawn) {
    }

    PlotFeed(Display display) {
        this.display = display;
        job.setPriority(Job.INTERACTIVE);
    }

    /**
     * Draws all curves over each other.
     *
     * @param window what is looked at; null for everything
     * @param points about so many across
     * @param drawn  takes the drawing on the screen's thread, unless something else was wished since
     */
    void draw(List<Curve> curves, ChartWindow window, int points, Consumer<PlotModel> drawn) {
        wish.set(curves.isEmpty() ? null : new Wish(List.copyOf(curves), window, points, drawn));
        job.schedule();
    }

    /** All curves over each other in a window, at once, in about so many points each; empty without curves. */
    static Optional<PlotModel> now(List<Curve> curves, ChartWindow window, int points) {
        return curves.isEmpty() ? Optional.empty() : Optional.of(plot(curves, window, points));
    }

    private static PlotModel plot(List<Curve> curves, ChartWindow window, int points) {
        return Overlay.of(curves.stream().map(curve -> new Overlay.Layer(curve.name(), window == null ? curve.plot().whole(points)
                : curve.plot().part(window.left(), window.right(), points))).toList());
    }

    /** Draws nothing any more. */
    void close() {
        wish.set(null);
        job.cancel();
    }

    private IStatus work(IProgressMonitor monitor) {
        Wish now = wish.get();
        if (now == null) {
            return Status.OK_STATUS;
        }
        try {
            PlotModel plot = plot(now.curves, now.window, now.points);
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    if (wish.get() == now) {
                        now.drawn.accept(plot);
                    }
                });
            }
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException e) {
            ILog.get().error("A recording could not be drawn.", e);
        }
        if (wish.get() != now) {
            job.schedule();
        }
        return Status.OK_STATUS;
    }
}
