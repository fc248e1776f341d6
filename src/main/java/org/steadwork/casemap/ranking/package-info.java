/** Orders the pairs of a complaint and a finding that may go together, for a clinician to confirm or reject. Plain Java. */
package org.steadwork.casemap.ranking;
