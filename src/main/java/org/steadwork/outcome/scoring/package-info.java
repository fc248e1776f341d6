/** Scores questionnaires and judges change. Plain Java: no framework, no clock, no storage. */
package org.steadwork.outcome.scoring;
