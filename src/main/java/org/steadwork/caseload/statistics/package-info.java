/**
 * The figures of a group: proportions, exact tests, effect sizes, times to an event, and tables fit to leave the clinic. Plain Java with
 * the distributions of commons-math: no framework, no clock, no storage.
 */
package org.steadwork.caseload.statistics;
