/** Psychosocial and work flags: obstacles to work round, with what each changes in the plan; for clinicians only. */
package org.steadwork.obstacle;
