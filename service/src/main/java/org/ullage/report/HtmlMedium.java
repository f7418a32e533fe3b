package org.ullage.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** HTML that is XHTML too. Not for many threads. */
final class HtmlMedium implements Medium {

    private final StringBuilder body = new StringBuilder();
    private String title = "";

    String page() {
        return """
                <!DOCTYPE html>
                <html xmlns="http://www.w3.org/1999/xhtml" lang="en" xml:lang="en" dir="ltr">
                <head>
                <meta charset="utf-8"/>
                <meta name="viewport" content="width=device-width, initial-scale=1"/>
                <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'"/>
                <title>""" + title + "</title>\n<style>\n" + HtmlStyle.CSS + "</style>\n</head>\n<body>\n<main>\n" + body
                + "</main>\n</body>\n</html>\n";
    }

    @Override
    public void title(String words) {
        title = Xml.line(words);
        element("h1", title);
    }

    @Override
    public void heading(Heading heading) {
        element(heading.isSubsection() ? "h3" : "h2", Xml.line(heading.text()));
    }

    @Override
    public void paragraph(Paragraph paragraph) {
        element("p", Xml.line(paragraph.text()));
    }

    @Override
    public void list(BulletList list) {
        bullets("<ul>", list.items().stream().map(Xml::line).toList());
    }

    /** A list without items is no valid HTML. */
    private void bullets(String open, List<String> items) {
        if (!items.isEmpty()) {
            body.append(open).append('\n');
            items.forEach(item -> element("li", item));
            body.append("</ul>\n");
        }
    }

    @Override
    public void table(Table table) {
        String label = Xml.line(table.title());
        body.append("<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"")
                .append(label)
                .append("\">\n<table>\n<caption>")
                .append(label)
                .append("</caption>\n<thead>\n<tr>");
        table.columns().forEach(column -> cell("th scope=\"col\"", "th", column, column.header()));
        body.append("</tr>\n</thead>\n<tbody>\n");
        table.rows().forEach(row -> row(table.columns(), row));
        body.append("</tbody>\n</table>\n</div>\n");
    }

    private void row(List<Column> columns, List<String> cells) {
        body.append("<tr>");
        cell("th scope=\"row\"", "th", columns.get(0), cells.get(0));
        IntStream.range(1, cells.size()).forEach(i -> cell("td", "td", columns.get(i), cells.get(i)));
        body.append("</tr>\n");
    }

    private void cell(String open, String close, Column column, String text) {
        body.append('<')
                .append(open)
                .append(column.isNumeric() ? " class=\"number\">" : ">")
                .append(Xml.line(text))
                .append("</")
                .append(close)
                .append('>');
    }

    @Override
    public void cautions(CautionList cautions) {
        bullets(
                "<ul class=\"cautions\">",
                cautions.cautions().stream()
                        .map(caution -> Xml.line(caution.text()) + " <small>"
                                + Xml.line(caution.source().toString()) + "</small>")
                        .toList());
        if (cautions.cautions().isEmpty()) {
            element("p", CautionList.NONE);
        }
    }

    /** Each line hangs by its own indent, so that it wraps readably on a narrow page. */
    @Override
    public void preformatted(Preformatted preformatted) {
        body.append("<div class=\"lines\">\n")
                .append(VisibleText.lines(preformatted.text())
                        .lines()
                        .map(line -> "<p style=\"--indent:" + WrappedText.leadingBlanks(line) + "ch\">"
                                + Xml.escaped(line.strip()) + "</p>\n")
                        .collect(Collectors.joining()))
                .append("</div>\n");
    }

    @Override
    public void chart(Chart chart) {
        body.append("<figure>\n<div class=\"desk\">\n")
                .append(chart.svg(ChartWidth.WIDE))
                .append("</div>\n<div class=\"telephone\">\n")
                .append(chart.svg(ChartWidth.NARROW))
                .append("</div>\n</figure>\n");
    }

    private void element(String name, String content) {
        body.append('<')
                .append(name)
                .append('>')
                .append(content)
                .append("</")
                .append(name)
                .append(">\n");
    }
}
