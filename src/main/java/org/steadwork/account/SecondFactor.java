package org.steadwork.account;

/** Whether one-time codes are each person's choice or asked of everybody. */
enum SecondFactor {
    OPTIONAL, REQUIRED
}
