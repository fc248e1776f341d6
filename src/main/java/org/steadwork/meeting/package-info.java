/** The review meeting: its agenda filled by criteria, one page a case, decisions and actions, minutes that stay as they were closed. */
package org.steadwork.meeting;
