package org.ullage.examples.demo;

/** A part of the page under a heading of its own. */
interface Section {

    void print(Page page);
}
