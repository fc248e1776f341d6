package org.steadwork.workplace.fit;

/** The measures of a person that settings rest on, as plain numbers in mm for the inner loops; NaN where not looked at. */
record Body(double popliteal, double shoe, double elbow, double eye, double thighLength, double thigh, double reach) {

    /** @param usualShoe taken where the heel was not measured */
    static Body of(Person person, double usualShoe) {
        double shoe = person.value(BodyMeasure.SHOE);
        return new Body(person.value(BodyMeasure.POPLITEAL_HEIGHT), Double.isNaN(shoe) ? usualShoe : shoe,
                person.value(BodyMeasure.ELBOW_REST_HEIGHT), person.value(BodyMeasure.EYE_HEIGHT_SITTING),
                person.value(BodyMeasure.BUTTOCK_POPLITEAL_LENGTH), person.value(BodyMeasure.THIGH_CLEARANCE),
                person.value(BodyMeasure.ARM_REACH));
    }

    /** Returns popliteal height + shoe: where the feet want the seat. */
    double feetHeight() {
        return popliteal + shoe;
    }
}
