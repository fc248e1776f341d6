/** What leaves or enters in formats of other programs: calendars. */
package org.steadwork.exchange;
