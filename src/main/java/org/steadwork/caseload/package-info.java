/**
 * Figures of groups: the caseload page, and what an employer may be told of its people. Every case is summed up in one narrow row
 * ({@code case_outcome}) in the transaction of each change; the figures read those rows and nothing else where they can.
 */
package org.steadwork.caseload;
