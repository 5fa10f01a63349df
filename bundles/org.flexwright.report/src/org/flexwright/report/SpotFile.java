package org.flexwright.report;

import java.nio.file.Path;

import org.flexwright.core.view.SpotSketch;
import org.flexwright.core.view.SpotView;
import org.flexwright.model.SpotMap;
import org.flexwright.report.doc.Drawing;
import org.flexwright.report.doc.Picture;
import org.flexwright.report.doc.SpotDrawing;
import org.flexwright.report.doc.Svg;
import org.flexwright.report.photo.Photos;

/** A property over the spots of a part as a drawing, and as a file of its own. */
public final class SpotFile {
    private SpotFile() {
    }

    /** The view on the map's photo, or on its sketch when there is none or it cannot be shown. */
    static Drawing drawing(SpotMap map, SpotView view, Path folder) {
        Picture picture = map.getPicture() == null ? null : new Photos(folder).figure(map.getPicture()).picture();
        return SpotDrawing.of(view, SpotSketch.orSheet(map.getSketch()), picture);
    }

    /** A scalable drawing that needs no style and no file from elsewhere. */
    public static String svg(SpotMap map, SpotView view, Path folder) {
        return Svg.file(drawing(map, view, folder));
    }
}
