package org.flexwright.workbench.calculate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.Manual;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;

/** The manual page of a calculation in the window: the same page the manual has, read from its few tags. */
final class ManualPage {

    private static final Pattern PART = Pattern.compile("<(h1|h2|p|table)>(.*?)</\\1>", Pattern.DOTALL);
    private static final Pattern ROW = Pattern.compile("<tr>(.*?)</tr>", Pattern.DOTALL);
    private static final Pattern CELL = Pattern.compile("<(th|td)>(.*?)</\\1>", Pattern.DOTALL);

    private final Kit kit;

    ManualPage(Composite parent, Kit kit, Calculation<?, ?> calculation) {
        this.kit = kit;
        Matcher part = PART.matcher(Manual.page(calculation));
        while (part.find()) {
            String inner = part.group(2);
            switch (part.group(1)) {
                case "h1" -> new Prose(parent, kit, words(inner), Ink.INK, Role.HEADING).setLayoutData(Grid.wide());
                case "h2" -> new Prose(parent, kit, words(inner), Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
                case "p" -> Prose.text(parent, kit, words(inner)).setLayoutData(Grid.wide());
                default -> table(parent, inner);
            }
        }
    }

    private void table(Composite parent, String html) {
        List<List<String>> rows = new ArrayList<>();
        Matcher row = ROW.matcher(html);
        while (row.find()) {
            List<String> cells = new ArrayList<>();
            Matcher cell = CELL.matcher(row.group(1));
            while (cell.find()) {
                cells.add(words(cell.group(2)));
            }
            rows.add(cells);
        }
        if (rows.isEmpty()) {
            return;
        }
        List<String> titles = rows.getFirst();
        for (List<String> cells : rows.subList(1, rows.size())) {
            Composite entry = kit.pane(parent, 1, Spacing.NONE, Ink.PANEL);
            entry.setLayoutData(Grid.wide());
            new Prose(entry, kit, cells.getFirst(), Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
            new Prose(entry, kit, cells.getLast(), Ink.INK, Role.BODY).setLayoutData(Grid.wide());
            List<String> between = new ArrayList<>();
            for (int c = 1; c < cells.size() - 1; c++) {
                if (!cells.get(c).isBlank()) {
                    between.add(titles.get(c).toLowerCase(Locale.ROOT) + " " + cells.get(c));
                }
            }
            Prose.quiet(entry, kit, String.join(", ", between)).setLayoutData(Grid.wide());
        }
    }

    private static String words(String html) {
        return html.replaceAll("<[^>]*>", "").replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&");
    }
}
