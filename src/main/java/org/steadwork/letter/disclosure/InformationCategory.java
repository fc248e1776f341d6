package org.steadwork.letter.disclosure;

/**
 * A class of information about a worker; consent to disclose is given, and checked, one category at a time. Pregnancy is medical
 * history with a tick of its own: it may be the one thing of it that the worker wants the employer to read.
 */
public enum InformationCategory {
    IDENTITY, ATTENDANCE, FUNCTIONAL_CAPACITY, WORK_MODIFICATIONS, WORKSTATION_FINDINGS, SYMPTOMS, PAIN_SCORES,
    OUTCOME_SCORES, DIAGNOSIS, RED_FLAG_RESULT, MEDICAL_HISTORY, PREGNANCY, PSYCHOSOCIAL_NOTES, EXERCISE_PROGRAMME
}
