/** The visits of a case and the review, where symptoms, outcomes, work place, programme and cautions meet in one note. */
package org.steadwork.review;
