/** The arithmetic of going back to work in steps. Plain Java, whole minutes. */
package org.steadwork.casefile.workplan;
