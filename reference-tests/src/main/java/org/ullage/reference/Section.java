package org.ullage.reference;

import java.util.List;

/** One part of a report before it is set as text, Markdown or HTML: a title, a line and a table, which may have no rows. */
record Section(String title, String text, List<String> header, List<List<String>> rows) {}
