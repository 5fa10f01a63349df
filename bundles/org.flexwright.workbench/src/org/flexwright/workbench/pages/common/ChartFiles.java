package org.flexwright.workbench.pages.common;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.flexwright.report.PlotFile;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.pages.PageContext;

/** The three ways a plot is saved: as a picture, as a drawing, as numbers. */
public final class ChartFiles {

    private final PageContext context;
    private final ChartPane chart;
    private final Consumer<String> notice;

    /** Writes the chart into a file. */
    private interface Writer {
        void write(Path file) throws IOException;
    }

    private ChartFiles(PageContext context, ChartPane chart, Consumer<String> notice) {
        this.context = context;
        this.chart = chart;
        this.notice = notice;
        chart.setSvgWriter(PlotFile::svg);
    }

    /**
     * Puts the three actions into a bar.
     *
     * @param notice is told in one sentence what could not be done; an empty one when it was
     */
    public static void actions(Composite bar, Kit kit, PageContext context, ChartPane chart, Consumer<String> notice) {
        ChartFiles files = new ChartFiles(context, chart, notice);
        kit.action(bar, "Save as &PNG…", () -> files.save("png", chart::exportPng));
        kit.action(bar, "Save as &SVG…", () -> files.save("svg", chart::exportSvg));
        kit.action(bar, "Save as &CSV…", () -> files.save("csv", chart::exportCsv));
    }

    private void save(String ending, Writer writer) {
        if (chart.plot() == null) {
            notice.accept("There is nothing drawn that could be saved.");
            return;
        }
        FileDialog dialog = new FileDialog(chart.getShell(), SWT.SAVE);
        dialog.setFilterExtensions(new String[] {"*." + ending});
        dialog.setFileName("plot." + ending);
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        try {
            writer.write(Path.of(chosen));
            notice.accept("");
            context.status("Saved " + chosen);
        } catch (IOException e) {
            ILog.get().warn("The plot could not be written.", e);
            notice.accept("The plot could not be written to " + chosen + ": the folder must be there and take new files.");
        }
    }
}
