/** The diary: when a visit takes place, with whom and in which room; the waiting list, reminders, and what follows a missed visit. */
package org.steadwork.diary;
