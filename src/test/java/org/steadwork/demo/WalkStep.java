package org.steadwork.demo;

/** What is done on one page of a case at a visit, and what that page must say afterwards. */
interface WalkStep {

    void walk(WalkedVisit visit);
}
