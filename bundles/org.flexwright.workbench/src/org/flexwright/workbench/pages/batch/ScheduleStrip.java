package org.flexwright.workbench.pages.batch;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.batch.Schedule;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Type.Role;

/** The order of work drawn to scale: one row a pot, time to the right; work of hands as full blocks, what passes by itself as pale ones. */
final class ScheduleStrip extends Canvas {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final int LEAST_DAY_STEPS = 18;

    private final Kit kit;
    private final ZoneId zone = ZoneId.systemDefault();
    private Schedule schedule = new Schedule(List.of());
    private String word = "pot";

    ScheduleStrip(Composite parent, Kit kit) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.kit = kit;
        kit.dress(this, Ink.INK, Ink.PAPER, Role.BODY);
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseMove, event -> setToolTipText(hint(event.x, event.y)));
    }

    void show(Schedule shown, String pot) {
        schedule = shown;
        word = pot;
        Kit.name(this, shown.items().isEmpty() ? "Order of work: nothing is planned" : "Order of work: " + runs() + " rows, from " + MOMENT.format(shown.begin().atZone(zone)) + " to "
                + MOMENT.format(shown.ready().atZone(zone)));
        requestLayout();
        redraw();
    }

    private int runs() {
        return schedule.items().stream().mapToInt(Schedule.Item::run).max().orElse(0);
    }

    private int row() {
        return kit.type().lineHeight(Role.BODY) + kit.grid().steps(2);
    }

    private int left() {
        return kit.type().chars(Role.BODY, word.length() + 4);
    }

    private Instant from() {
        return schedule.begin().atZone(zone).toLocalDate().atStartOfDay(zone).toInstant();
    }

    private Instant until() {
        return schedule.ready().atZone(zone).toLocalDate().plusDays(1).atStartOfDay(zone).toInstant();
    }

    private int at(Instant moment) {
        double share = (double) Duration.between(from(), moment).toMillis() / Duration.between(from(), until()).toMillis();
        return left() + (int) Math.round(share * (getSize().x - left() - 2));
    }

    private void paint(GC gc) {
        if (schedule.items().isEmpty()) {
            return;
        }
        gc.setFont(kit.type().font(Role.BODY));
        days(gc);
        int head = row();
        for (int run = 1; run <= runs(); run++) {
            gc.setForeground(kit.color(Ink.QUIET));
            gc.drawText(word + " " + run, 0, head + (run - 1) * row() + kit.grid().steps(1), true);
        }
        for (Schedule.Item item : schedule.items()) {
            int x1 = at(item.start());
            int x2 = Math.max(x1 + 2, at(item.end()));
            int top = head + (item.run() - 1) * row() + kit.grid().steps(1);
            int high = row() - kit.grid().steps(2);
            gc.setBackground(kit.color(item.kind() == Schedule.Kind.HANDS ? Ink.ACCENT : Ink.BAND));
            if (item.kind() == Schedule.Kind.HANDS) {
                gc.fillRectangle(x1, top, x2 - x1, high);
            } else {
                gc.fillRectangle(x1, top + high / 4, x2 - x1, high / 2);
            }
        }
    }

    private void days(GC gc) {
        int bottom = row() * (runs() + 1);
        int next = 0;
        for (LocalDate day = from().atZone(zone).toLocalDate(); day.atStartOfDay(zone).toInstant().isBefore(until()); day = day.plusDays(1)) {
            int x = at(day.atStartOfDay(zone).toInstant());
            gc.setForeground(kit.color(Ink.LINE));
            gc.drawLine(x, 0, x, bottom);
            if (x >= next) {
                gc.setForeground(kit.color(Ink.QUIET));
                gc.drawText(DAY.format(day), x + kit.grid().steps(1), 0, true);
                next = x + kit.grid().steps(LEAST_DAY_STEPS);
            }
        }
    }

    private String hint(int x, int y) {
        int run = (y - row()) / Math.max(1, row()) + 1;
        return schedule.items().stream().filter(item -> item.run() == run && x >= at(item.start()) - 2 && x <= at(item.end()) + 2).findFirst()
                .map(item -> item.title() + ", " + MOMENT.format(item.start().atZone(zone)) + " to " + MOMENT.format(item.end().atZone(zone))).orElse(null);
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(wHint == SWT.DEFAULT ? kit.grid().steps(120) : wHint, hHint == SWT.DEFAULT ? row() * (Math.max(1, runs()) + 1) : hHint);
    }
}
