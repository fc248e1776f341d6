/**
 * The fit of a seated work place, as numbers: what a body and its equipment are, how far each setting is from where the
 * body wants it, which settings are best with what is there, and which equipment would remove the rest. Plain Java.
 */
package org.steadwork.workplace.fit;
