/**
 * Which cases belong before the review meeting, and why. Plain Java; the criteria and their numbers are content. A criterion
 * holds, does not hold, or cannot be judged: what is not known is said and never counts as fine.
 */
package org.steadwork.meeting.agenda;
