package org.flexwright.workbench.pages.recording;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.flexwright.model.Recording;
import org.flexwright.model.Specimen;
import org.flexwright.workbench.pages.PageContext;

/** Takes a file of an instrument in: asks for it, then for what it means. */
final class TakeIn {

    private TakeIn() {
    }

    /** Asks for a file and takes it in; {@code made} hears of the recording. */
    static void ask(Shell shell, PageContext context, List<? extends Specimen> pieces, Specimen first, Consumer<Recording> made) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText("Take in a recording");
        dialog.setFilterExtensions(new String[] {"*.csv;*.txt;*.tsv;*.dat;*.wav", "*.*"});
        dialog.setFilterNames(new String[] {"Tables and sounds (csv, txt, tsv, dat, wav)", "All files"});
        String chosen = dialog.open();
        if (chosen != null) {
            new TakeInDialog(shell, context, Path.of(chosen), pieces, first, made).open();
        }
    }
}
