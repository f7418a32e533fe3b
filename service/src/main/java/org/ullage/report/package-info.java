/**
 * Answers as a page: a {@link org.ullage.report.Document} of headings, paragraphs, tables, lists, cautions, workings and charts, as
 * plain text, Markdown or HTML; charts as SVG. Ready-made pages are {@link org.ullage.report.SizingReport},
 * {@link org.ullage.report.ComparisonReport} and {@link org.ullage.report.FluidReport}; for a chart of your own start at
 * {@link org.ullage.report.LineChart} or {@link org.ullage.report.BarChart}.
 *
 * <p>The same document gives the same bytes on every machine. Text that comes from outside is escaped wherever it is written.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.report;

import org.jspecify.annotations.NullMarked;
