package org.flexwright.report;

import org.flexwright.core.view.PlotModel;
import org.flexwright.report.doc.Drawings;
import org.flexwright.report.doc.Svg;

/** A plot as a file of its own. */
public final class PlotFile {
    private PlotFile() {
    }

    /** The plot as a scalable drawing that needs no style from elsewhere. */
    public static String svg(PlotModel plot) {
        return Svg.file(Drawings.plot(plot));
    }
}
