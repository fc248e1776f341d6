/**
 * Who may be told what: a gate, then a matrix. Plain Java; the matrix itself is content.
 *
 * <p>What is not ticked is no. What is not known is no. Reasons are for the clinician and never part of a letter.
 */
package org.steadwork.letter.disclosure;
