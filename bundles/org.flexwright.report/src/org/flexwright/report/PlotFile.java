package org.flexwright.report;

import org.flexwright.core.view.PlotModel;

/** A plot as a file of its own. */
public final class PlotFile {
    private static final String STYLE = "<style>text{font:13px sans-serif;fill:#1b2126}.label{fill:#59636c}.band{fill:#cfe5f3}.axis{stroke:#59636c;stroke-width:1}"
            + ".level{stroke:#1b2126;stroke-width:1;stroke-dasharray:6 4}.interval{stroke:#0072b2;stroke-width:2}.dot{fill:#0072b2}</style>"
            + "<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>";
    private static final String AFTER = "</title>";

    private PlotFile() {
    }

    /** The plot as a scalable drawing that needs no style from elsewhere. */
    public static String svg(PlotModel plot) {
        String drawing = Drawings.plot(plot).toString();
        int at = drawing.indexOf(AFTER) + AFTER.length();
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + drawing.substring(0, at) + STYLE + drawing.substring(at) + "\n";
    }
}
