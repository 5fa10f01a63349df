package org.flexwright.report.doc;

import java.util.Base64;
import java.util.List;
import java.util.Locale;

/** A document as one HTML file: every text escaped, pictures inside, nothing loaded from elsewhere, no script; prints on A4. */
public final class HtmlFile {
    /** Side of a QR code in CSS pixels: 24 mm on paper, read by a phone at arm's length. */
    private static final double CODE = 92;
    /** A single word up to that length, such as a day or a code, is not broken at its dashes. */
    private static final int SHORT = 16;
    private static final String CSS = """
            body{font:15px/1.45 system-ui,sans-serif;color:#1B2126;background:#FFF;max-width:62rem;margin:1.5rem auto;padding:0 1.5rem}
            body.broad{max-width:76rem}
            h1{font-size:1.8em;line-height:1.2;margin:0 0 .2em}h2{font-size:1.35em;margin:1.8em 0 .4em;border-bottom:1px solid #C9CED3}h3{margin:1.4em 0 .3em}
            p,li{max-width:80ch;overflow-wrap:anywhere}p,td,th,li,figcaption{white-space:pre-line}table{border-collapse:collapse;margin:.5em 0 1em;font-size:.93em}
            th,td{border:1px solid #C9CED3;padding:.3em .55em;vertical-align:top;text-align:left;overflow-wrap:break-word}th{background:#F4F5F6}
            td.n{text-align:right;white-space:nowrap}.quiet,figcaption{color:#59636C}.banner{border:2px solid #8A5A00;padding:.5em .8em;font-weight:600}
            .strong{font-weight:600}.stop{color:#A3123A;font-weight:600}.caution{color:#8A5A00;font-weight:600}
            figure{display:inline-block;margin:.4em 1em .8em 0;vertical-align:top;max-width:100%}figure img{max-width:min(100%,400px);max-height:420px}
            td svg{max-width:none}td.w{white-space:nowrap}figcaption{max-width:400px}.scroll{overflow-x:auto}svg{max-width:100%}
            .step{border-left:4px solid #005A91;padding:.1em 0 .2em 1em;margin:1.1em 0}.step h3{margin:.1em 0 .4em}
            .step h3 .number{display:inline-block;min-width:1.7em;color:#005A91}.step h3 .clock{float:right;font-variant-numeric:tabular-nums}
            .label{display:inline-flex;align-items:center;gap:.5em;width:18rem;margin:.2em .4em .2em 0;border:1px dashed #C9CED3;padding:.2em;vertical-align:top;
            break-inside:avoid}.label svg{flex:none}.label span{display:block;overflow-wrap:anywhere}
            @media print{body{margin:0;padding:0;max-width:none;font-size:11px}h1,h2,h3{break-after:avoid}tr,figure,svg{break-inside:avoid}thead{display:table-header-group}
            .scroll{overflow:visible}}
            """ + Drawing.Style.sheet();

    private final Html html = new Html();

    private HtmlFile() {
    }

    /** The file's text. */
    public static String write(Document document) {
        return new HtmlFile().all(document);
    }

    private String all(Document document) {
        html.doctype().open("html", "lang", "en").open("head").open("meta", "charset", "utf-8").open("meta", "name", "viewport", "content",
                "width=device-width,initial-scale=1").element("title", document.title()).style(CSS + "@page{size:A4" + (document.wide() ? " landscape" : "")
                        + ";margin:14mm}").close("head");
        if (document.wide()) {
            html.open("body", "class", "broad");
        } else {
            html.open("body");
        }
        blocks(document.blocks());
        return html.close("body").close("html").toString();
    }

    private void blocks(List<Block> blocks) {
        blocks.forEach(this::block);
    }

    private void block(Block block) {
        switch (block) {
            case Block.Heading h -> html.element("h" + h.level(), h.text());
            case Block.Paragraph p -> toned("p", p.text(), p.tone());
            case Block.Items i -> {
                html.open("ul");
                i.items().forEach(item -> toned("li", item.text(), item.tone()));
                html.close("ul");
            }
            case Block.NumberedStep s -> step(s);
            case Block.Table t -> table(t);
            case Block.Figure f -> figure(f);
            case Block.Code c -> label(c);
            case Drawing d -> html.open("figure").drawing(d).close("figure");
        }
    }

    private void toned(String tag, String text, Tone tone) {
        if (tone == Tone.PLAIN) {
            html.element(tag, text);
        } else {
            html.element(tag, text, "class", tone.name().toLowerCase(Locale.ROOT));
        }
    }

    private void step(Block.NumberedStep step) {
        html.open("div", "class", "step").open("h3").open("span", "class", "number").text(step.number() + ".").close("span").text(step.title());
        if (!step.clock().isEmpty()) {
            html.open("span", "class", "clock").text(step.clock()).close("span");
        }
        html.close("h3");
        blocks(step.content());
        html.close("div");
    }

    private void table(Block.Table table) {
        html.open("div", "class", "scroll").open("table").open("thead").open("tr");
        table.columns().forEach(c -> html.element("th", c.title()));
        html.close("tr").close("thead").open("tbody");
        for (List<Block.Cell> row : table.rows()) {
            html.open("tr");
            for (int i = 0; i < row.size(); i++) {
                cell(row.get(i), table.columns().get(i).number());
            }
            html.close("tr");
        }
        html.close("tbody").close("table").close("div");
    }

    private void cell(Block.Cell cell, boolean number) {
        boolean oneWord = cell.text().length() <= SHORT && cell.text().chars().noneMatch(Character::isWhitespace);
        String style = ((number ? "n " : oneWord && !cell.text().isEmpty() ? "w " : "") + (cell.tone() == Tone.PLAIN ? "" : cell.tone().name().toLowerCase(Locale.ROOT))).strip();
        if (style.isEmpty()) {
            html.open("td");
        } else {
            html.open("td", "class", style);
        }
        if (cell.drawing() != null) {
            html.drawing(cell.drawing());
            if (!cell.text().isEmpty()) {
                html.open("br");
            }
        }
        html.text(cell.text()).close("td");
    }

    private void figure(Block.Figure figure) {
        html.open("figure");
        if (figure.picture() != null) {
            html.open("img", "src", "data:" + figure.picture().type() + ";base64," + Base64.getEncoder().encodeToString(figure.picture().bytes()), "alt", figure
                    .caption());
        }
        html.element("figcaption", figure.caption()).close("figure");
    }

    private void label(Block.Code label) {
        html.open("div", "class", "label").drawing(QrDrawing.of(label.code(), CODE)).open("div");
        for (int i = 0; i < label.words().size(); i++) {
            html.element("span", label.words().get(i), "class", i == 0 ? "strong" : "plain");
        }
        html.element("span", label.code(), "class", "quiet").close("div").close("div");
    }
}
