package org.steadwork.demo;

/** Loads what one feature records at a visit. Each feature of a case has one such bean. */
public interface DemoVisitPart {

    /** Where it stands in the way through a visit: symptoms 10, red flags 20, work place 30, and so on; lowest first. */
    int order();

    void load(DemoVisit visit);
}
