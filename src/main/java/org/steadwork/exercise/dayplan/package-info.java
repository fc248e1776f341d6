/** Doses, cautions, adherence and the arithmetic of the working day: plain Java. */
package org.steadwork.exercise.dayplan;
