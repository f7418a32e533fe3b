/**
 * Answers as a page: start at {@link org.ullage.report.Document}, made of headings, paragraphs, tables, lists, cautions, workings and charts, as
 * plain text, Markdown or HTML; charts as SVG. Ready-made pages are {@link org.ullage.report.SizingReport},
 * {@link org.ullage.report.ComparisonReport} and {@link org.ullage.report.FluidReport}; for a chart of your own start at
 * {@link org.ullage.report.LineChart} or {@link org.ullage.report.BarChart}.
 *
 * <p>The same document gives the same bytes on every machine. Text that comes from outside is escaped wherever it is written.
 *
 * <p>Around it: the top floor: it reads the other packages, and none of them knows it.
 *
 * @serial exclude
 */
@NullMarked
package org.ullage.report;

import org.jspecify.annotations.NullMarked;
