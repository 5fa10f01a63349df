package org.flexwright.workbench.pages.trial;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Mark;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;

/** The time line of a trial: its steps on a line, each with its time from contact. Arrow keys go along it. */
final class StepRail extends Composite {

    private static final String LONGEST_TIME = "−239:59";

    private final Kit kit;
    private final Consumer<Step> chosen;
    private final List<Stop> stops = new ArrayList<>();
    private Step selected;
    private Trial trial;
    private TimeLine times = new TimeLine(null, "", List.of());

    StepRail(Composite parent, Kit kit, Consumer<Step> chosen) {
        super(parent, SWT.NONE);
        this.kit = kit;
        this.chosen = chosen;
        kit.columns(this, 1, Spacing.NONE);
        kit.dress(this, Ink.INK, Ink.PANEL, Role.BODY);
        Kit.name(this, "Steps, times from contact");
    }

    /** Shows the steps of a trial; what is chosen stays. */
    void show(Trial trial) {
        this.trial = trial;
        List<Step> steps = List.copyOf(trial.getSteps());
        if (!steps.equals(stops.stream().map(stop -> stop.step).toList())) {
            boolean focused = stops.stream().anyMatch(Stop::isFocusControl);
            stops.forEach(Stop::dispose);
            stops.clear();
            steps.forEach(step -> stops.add(new Stop(step)));
            layout();
            if (focused) {
                setFocus();
            }
        }
        refresh();
    }

    /** Times and states as they are now. */
    void refresh() {
        if (trial != null) {
            times = TimeLine.of(trial, Instant.now());
            stops.stream().filter(stop -> stop.step.eContainer() == trial).forEach(Stop::refresh);
        }
    }

    /** Shows a step as chosen without telling anybody. */
    void select(Step step) {
        selected = step;
        refresh();
    }

    @Override
    public boolean setFocus() {
        return stops.stream().filter(stop -> !stop.isDisposed() && stop.step == selected).findFirst().map(Stop::forceFocus).orElse(false);
    }

    private void choose(Stop stop) {
        select(stop.step);
        chosen.accept(stop.step);
    }

    private void along(Stop from, int by) {
        int to = Math.clamp(stops.indexOf(from) + by, 0, stops.size() - 1);
        stops.get(to).forceFocus();
        choose(stops.get(to));
    }

    /** One step. */
    private final class Stop extends Canvas {
        private final Step step;

        Stop(Step step) {
            super(StepRail.this, SWT.DOUBLE_BUFFERED);
            this.step = step;
            kit.dress(this, Ink.INK, Ink.PANEL, Role.BODY);
            setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
            getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
                @Override
                public void getRole(AccessibleControlEvent event) {
                    event.detail = ACC.ROLE_LISTITEM;
                }

                @Override
                public void getState(AccessibleControlEvent event) {
                    event.detail = ACC.STATE_FOCUSABLE | ACC.STATE_SELECTABLE | (step == selected ? ACC.STATE_SELECTED : 0);
                }
            });
            addListener(SWT.Paint, event -> paint(event.gc));
            addListener(SWT.MouseDown, event -> {
                forceFocus();
                choose(this);
            });
            addListener(SWT.FocusIn, event -> redraw());
            addListener(SWT.FocusOut, event -> redraw());
            addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_ARROW_NEXT && event.detail != SWT.TRAVERSE_ARROW_PREVIOUS
                    && event.detail != SWT.TRAVERSE_RETURN);
            addListener(SWT.KeyDown, this::key);
        }

        private void key(Event event) {
            switch (event.keyCode) {
                case SWT.ARROW_UP -> along(this, -1);
                case SWT.ARROW_DOWN -> along(this, 1);
                case SWT.HOME -> along(this, -stops.size());
                case SWT.END -> along(this, stops.size());
                case SWT.CR, SWT.KEYPAD_CR, ' ' -> choose(this);
                default -> {
                    // not ours
                }
            }
        }

        private TimeLine.Line line() {
            return StepWords.of(step, times);
        }

        private void refresh() {
            String time = StepWords.when(step, line());
            Kit.name(this, StepWords.title(step) + ", " + StepWords.line(step, line()) + (time.isEmpty() ? "" : ", at " + time));
            setToolTipText(StepWords.title(step) + ": " + StepWords.line(step, line()));
            redraw();
        }

        @Override
        public Point computeSize(int wHint, int hHint, boolean changed) {
            int height = 2 * kit.type().lineHeight(Role.BODY) + kit.grid().steps(3);
            return new Point(wHint == SWT.DEFAULT ? kit.type().chars(Role.BODY, 26) : wHint, height);
        }

        private void paint(GC gc) {
            if (step.eContainer() != trial) {
                return;
            }
            Point size = getSize();
            int unit = kit.grid().steps(1);
            boolean on = step == selected;
            gc.setAntialias(SWT.ON);
            gc.setBackground(kit.color(on ? Ink.PAPER : Ink.PANEL));
            gc.fillRectangle(0, 0, size.x, size.y);
            gc.setFont(kit.type().font(Role.BODY));
            int height = gc.getFontMetrics().getHeight();
            int time = gc.textExtent(LONGEST_TIME).x;
            int top = (size.y - 2 * height) / 2;
            int dot = time + 5 * unit;
            rail(gc, dot, top + height / 2, unit);
            gc.setForeground(kit.color(step.getStartedAt() == null ? Ink.QUIET : Ink.INK));
            String when = StepWords.when(step, line());
            gc.drawText(when, 2 * unit + time - gc.textExtent(when).x, top, true);
            int text = dot + 4 * unit;
            gc.setFont(kit.type().font(on ? Role.STRONG : Role.BODY));
            gc.setForeground(kit.color(Ink.INK));
            gc.drawText(fitted(gc, StepWords.title(step), size.x - text - unit), text, top, true);
            gc.setFont(kit.type().font(Role.BODY));
            gc.setForeground(kit.color(step.isUnconfirmed() || line().late() ? Ink.CAUTION : Ink.QUIET));
            gc.drawText(fitted(gc, StepWords.line(step, line()), size.x - text - unit), text, top + height, true);
            if (on) {
                gc.setBackground(kit.color(Ink.ACCENT));
                gc.fillRectangle(0, 0, Math.max(3, unit * 3 / 4), size.y);
            }
            if (isFocusControl()) {
                gc.setForeground(kit.color(Ink.ACCENT));
                gc.setLineWidth(2);
                gc.drawRectangle(1, 1, size.x - 2, size.y - 2);
            }
        }

        /** The line through all stops and this one's shape on it. */
        private void rail(GC gc, int x, int y, int unit) {
            int index = stops.indexOf(this);
            gc.setForeground(kit.color(Ink.LINE));
            gc.setLineWidth(2);
            gc.drawLine(x, index == 0 ? y : 0, x, index == stops.size() - 1 ? y : getSize().y);
            Mark mark = StepWords.mark(step);
            StepState state = StepWords.state(step);
            int r = unit * 3 / 2;
            gc.setBackground(kit.color(state == StepState.PLANNED || state == StepState.SKIPPED ? step == selected ? Ink.PAPER : Ink.PANEL : mark.ink()));
            gc.setForeground(kit.color(mark.ink()));
            gc.fillOval(x - r, y - r, 2 * r, 2 * r);
            gc.drawOval(x - r, y - r, 2 * r, 2 * r);
            if (state == StepState.DONE) {
                gc.setForeground(kit.color(Ink.PAPER));
                gc.drawPolyline(new int[] {x - r / 2, y, x - r / 8, y + r / 2, x + r / 2, y - r / 2});
            } else if (state == StepState.SKIPPED) {
                gc.drawLine(x - r / 2, y, x + r / 2, y);
            }
        }

        private String fitted(GC gc, String words, int width) {
            if (gc.textExtent(words).x <= width) {
                return words;
            }
            int length = words.length();
            while (length > 1 && gc.textExtent(words.substring(0, length) + "…").x > width) {
                length--;
            }
            return words.substring(0, length).strip() + "…";
        }
    }
}
