package org.ullage.reference;

import java.util.List;

/** The published trials, run once for all tests that look at them. */
final class PublishedTrials {

    static final List<FaultTrial> ALL = FaultTrial.published();

    private PublishedTrials() {}
}
