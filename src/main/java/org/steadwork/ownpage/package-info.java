/** The patient's own page: a private link to the programme of one case, and what the patient reports through it. */
package org.steadwork.ownpage;
