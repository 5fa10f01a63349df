package org.flexwright.workbench.decide;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.flexwright.core.view.Comparison;
import org.flexwright.core.view.Comparison.Cell;
import org.flexwright.core.view.Comparison.Column;
import org.flexwright.core.view.Comparison.FactorValue;
import org.flexwright.core.view.Comparison.Group;
import org.flexwright.core.view.Comparison.Row;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Mark;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.StripPainter;
import org.flexwright.workbench.kit.Type.Role;

/** Draws what is in sight of the comparison; headings stay while the cells scroll. */
final class ComparePainter {

    private final GC gc;
    private final Kit kit;
    private final CompareState state;
    private final CompareGeometry at;
    private final Rectangle window;
    private final int scrollX;
    private final int scrollY;
    private final boolean focused;

    ComparePainter(GC gc, Kit kit, CompareState state, CompareGeometry at, Rectangle window, int scrollX, int scrollY, boolean focused) {
        this.gc = gc;
        this.kit = kit;
        this.state = state;
        this.at = at;
        this.window = window;
        this.scrollX = scrollX;
        this.scrollY = scrollY;
        this.focused = focused;
    }

    void paint() {
        gc.setBackground(kit.color(Ink.PAPER));
        gc.fillRectangle(window);
        Comparison shown = state.shown();
        int hidden = at.frozen() ? scrollY : scrollY - at.headHeight();
        int firstRow = Math.max(0, hidden / at.rowHeight());
        int lastRow = Math.min(at.rows() - 1, (scrollY + window.height - at.headHeight()) / at.rowHeight());
        int firstColumn = Math.max(0, scrollX / at.columnWidth());
        int lastColumn = Math.min(at.columns() - 1, (scrollX + window.width - at.left()) / at.columnWidth());
        for (int row = firstRow; row <= lastRow; row++) {
            for (int column = firstColumn; column <= lastColumn; column++) {
                clip(at.left(), at.stays());
                cell(shown.cell(row, column), moved(at.cell(row, column), true, true), row, column);
            }
        }
        for (int row = firstRow; row <= lastRow; row++) {
            clip(0, at.stays());
            rowHead(shown.rows().get(row), moved(at.cell(row, -1), false, true), row);
        }
        clip(at.left(), 0);
        gc.setBackground(kit.color(Ink.PANEL));
        gc.fillRectangle(at.left(), top(), window.width, at.headHeight());
        for (Group group : shown.groups()) {
            group(group, shown.columns());
        }
        for (int column = firstColumn; column <= lastColumn; column++) {
            columnHead(shown.columns().get(column), moved(at.cell(-1, column), true, !at.frozen()), column);
        }
        corner(shown);
    }

    /** Where the headings begin. */
    private int top() {
        return at.frozen() ? 0 : -scrollY;
    }

    private void clip(int left, int top) {
        gc.setClipping(left, top, Math.max(0, window.width - left), Math.max(0, window.height - top));
    }

    private Rectangle moved(Rectangle r, boolean across, boolean down) {
        return new Rectangle(r.x - (across ? scrollX : 0), r.y - (down ? scrollY : 0), r.width, r.height);
    }

    private void corner(Comparison shown) {
        gc.setClipping(0, top(), at.left(), at.headHeight());
        gc.setBackground(kit.color(Ink.PANEL));
        gc.fillRectangle(0, top(), at.left(), at.headHeight());
        text("Target sheet v" + shown.sheetVersion(), 6 * at.unit(), top() + at.groupHeight() + at.unit(), at.left() - 8 * at.unit(), Ink.INK, Role.STRONG);
        gc.setClipping(window);
        hairline(0, top() + at.headHeight() - 1, window.width, top() + at.headHeight() - 1);
        hairline(at.left() - 1, 0, at.left() - 1, Math.min(window.height, at.height() - scrollY));
    }

    private void hairline(int x1, int y1, int x2, int y2) {
        gc.setForeground(kit.color(Ink.LINE));
        gc.setLineWidth(1);
        gc.drawLine(x1, y1, x2, y2);
    }

    private void group(Group group, List<Column> columns) {
        int[] span = CompareGeometry.span(columns, group);
        if (span[0] < 0) {
            return;
        }
        int x1 = at.x(span[0]) - scrollX;
        int x2 = at.x(span[1] + 1) - scrollX;
        int x = Math.max(x1, at.left()) + 2 * at.unit();
        int width = Math.min(x2, window.width) - x - at.unit();
        if (width < 4 * at.unit()) {
            return;
        }
        hairline(x1, top(), x1, top() + at.headHeight());
        String fold = group.unchanged().isEmpty() ? "" : state.isUnfolded(group.route()) ? "   ▾ unchanged" : "   ▸ " + group.unchanged().size() + " unchanged";
        int drawn = text(group.title(), x, top() + at.unit(), width, Ink.INK, Role.STRONG);
        text(fold, x + drawn, top() + at.unit(), width - drawn, Ink.ACCENT, Role.BODY);
        if (state.isUnfolded(group.route())) {
            int y = top() + at.unit() + at.line();
            for (FactorValue value : group.unchanged()) {
                text(value.label() + "  " + value.value(), x, y, width, Ink.QUIET, Role.BODY);
                y += at.line();
            }
        }
    }

    private void columnHead(Column column, Rectangle r, int index) {
        int x = r.x + 2 * at.unit();
        int width = r.width - 3 * at.unit();
        int y = r.y + at.unit();
        int drawn = text(column.reference() ? "◇ reference" : column.code(), x, y, width, Ink.INK, Role.STRONG);
        text(column.summary().isEmpty() ? "" : "   " + column.summary(), x + drawn, y, width - drawn, Ink.QUIET, Role.BODY);
        y += at.line();
        lines(column.title(), x, y, width, at.titles(), Ink.QUIET, Role.BODY);
        y += at.titles() * at.line() + at.unit();
        int more = column.differing().size() - CompareGeometry.MOST_FACTORS;
        for (int i = 0; i < column.differing().size() && i < Math.min(at.factors(), CompareGeometry.MOST_FACTORS); i++) {
            FactorValue value = column.differing().get(i);
            gc.setFont(kit.type().font(Role.STRONG));
            int needed = Math.min(gc.textExtent(value.value()).x, width * 2 / 3); // what it was matters more than what it is called
            int after = text(value.label(), x, y, width - needed - 2 * at.unit(), Ink.QUIET, Role.BODY) + 2 * at.unit();
            text(value.value(), x + after, y, width - after, Ink.INK, Role.STRONG);
            y += at.line();
        }
        if (more > 0 && at.factors() > CompareGeometry.MOST_FACTORS) {
            text("and " + more + " more", x, y, width, Ink.QUIET, Role.BODY);
        }
        hairline(r.x, r.y, r.x, r.y + r.height);
        focus(r, -1, index);
    }

    /** Words in up to that many lines, broken between words; tells how many lines it took. */
    private int lines(String words, int x, int y, int width, int most, Ink ink, Role role) {
        gc.setFont(kit.type().font(role));
        String rest = words;
        int line = 0;
        while (line < most - 1 && gc.textExtent(rest).x > width) {
            int cut = rest.length();
            while (cut > 0 && gc.textExtent(rest.substring(0, cut)).x > width) {
                int space = rest.lastIndexOf(' ', cut - 1);
                cut = space > 0 ? space : cut - 1;
            }
            text(rest.substring(0, cut), x, y + line * at.line(), width, ink, role);
            rest = rest.substring(cut).strip();
            line++;
        }
        text(rest, x, y + line * at.line(), width, ink, role);
        return line + 1;
    }

    private void rowHead(Row row, Rectangle r, int index) {
        gc.setBackground(kit.color(Ink.PANEL));
        gc.fillRectangle(r);
        int x = r.x + 6 * at.unit();
        int width = r.width - 8 * at.unit();
        int y = r.y + 2 * at.unit();
        String sign = state.sortSign(index);
        int room = sign.isEmpty() ? width : width - 5 * at.unit();
        int taken = lines(row.title(), x, y, room, at.strips() ? 3 : 1, Ink.INK, Role.STRONG);
        text(sign, r.x + r.width - 6 * at.unit(), y, 5 * at.unit(), Ink.ACCENT, Role.STRONG);
        text(row.limits(), x, y + at.line() * taken, width, Ink.QUIET, Role.BODY);
        hairline(r.x, r.y + r.height - 1, r.x + r.width, r.y + r.height - 1);
        focus(r, index, -1);
    }

    private void cell(Cell cell, Rectangle r, int row, int column) {
        boolean looked = state.row() == row && state.column() == column;
        gc.setBackground(kit.color(looked ? Ink.PANEL : Ink.PAPER));
        gc.fillRectangle(r);
        int x = r.x + 2 * at.unit();
        int width = r.width - 4 * at.unit();
        int y = r.y + 2 * at.unit();
        boolean reference = cell.judgement() == null;
        text(cell.value().isEmpty() ? reference ? "" : "–" : cell.value(), x, y, width, Ink.INK, Role.STRONG);
        Ink ink = reference ? Ink.QUIET : Mark.of(cell.judgement().verdict()).ink();
        text(cell.word(), x, y + at.line(), width, ink, Role.BODY);
        if (at.strips() && cell.strip() != null) {
            Rectangle strip = new Rectangle(r.x + at.unit(), y + 2 * at.line() + at.unit(), r.width - 2 * at.unit(), kit.grid().steps(6));
            StripPainter.paint(gc, strip, cell.strip(), reference ? Ink.QUIET : ink, kit);
        }
        hairline(r.x, r.y + r.height - 1, r.x + r.width, r.y + r.height - 1);
        hairline(r.x, r.y, r.x, r.y + r.height);
        focus(r, row, column);
    }

    private void focus(Rectangle r, int row, int column) {
        if (focused && state.row() == row && state.column() == column) {
            gc.setForeground(kit.color(Ink.ACCENT));
            gc.setLineWidth(2);
            gc.drawRectangle(r.x + 1, r.y + 1, r.width - 3, r.height - 3);
        }
    }

    /** Draws words that are cut with an ellipsis where they do not fit; tells the width they took. */
    private int text(String words, int x, int y, int width, Ink ink, Role role) {
        if (words.isEmpty() || width <= 0) {
            return 0;
        }
        gc.setFont(kit.type().font(role));
        gc.setForeground(kit.color(ink));
        String fitting = words;
        int taken = gc.textExtent(fitting, SWT.DRAW_TRANSPARENT).x;
        while (taken > width && fitting.length() > 1) {
            words = words.substring(0, words.length() - 1);
            fitting = words.stripTrailing() + "…";
            taken = gc.textExtent(fitting, SWT.DRAW_TRANSPARENT).x;
            if (words.isEmpty()) {
                break;
            }
        }
        gc.drawText(fitting, x, y, true);
        return taken;
    }
}
