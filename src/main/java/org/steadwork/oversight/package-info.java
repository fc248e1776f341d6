/** What the lead looks over: the audit trail and its check, cases opened from outside their care team, and who reads a patient's record. */
package org.steadwork.oversight;
