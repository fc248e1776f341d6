/** The arithmetic of times: spans of a day, free slots, notice given, and the step after a missed visit. Plain Java. */
package org.steadwork.diary.rules;
