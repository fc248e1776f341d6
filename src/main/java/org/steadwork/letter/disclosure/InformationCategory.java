package org.steadwork.letter.disclosure;

/** A class of information about a worker; consent to disclose is given, and checked, one category at a time. */
public enum InformationCategory {
    IDENTITY, ATTENDANCE, FUNCTIONAL_CAPACITY, WORK_MODIFICATIONS, WORKSTATION_FINDINGS, SYMPTOMS, PAIN_SCORES,
    OUTCOME_SCORES, DIAGNOSIS, RED_FLAG_RESULT, MEDICAL_HISTORY, PSYCHOSOCIAL_NOTES, EXERCISE_PROGRAMME
}
